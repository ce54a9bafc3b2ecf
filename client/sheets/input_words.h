// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>
#include <QStringList>

namespace hangbook::sheets {

/// What options are decided from (options::inputsOf) in words, one line for each figure under the names of
/// what it belongs to, with its unit: "cabinets, Marram bass, mass: 92 kg", "fleet, units, MB001, state:
/// quarantined".
QStringList wordsOfInputs(const QJsonObject& inputs);

} // namespace hangbook::sheets
