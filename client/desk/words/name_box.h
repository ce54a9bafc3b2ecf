// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QStringList>

namespace hangbook::desk {

/// A field for a person's name that offers the known ones and takes any other. `says` names it for screen
/// readers; `first` stands in it to begin with.
QComboBox* nameBox(const QString& name, const QString& says, const QStringList& people, const QString& first,
                   QWidget* parent);

} // namespace hangbook::desk
