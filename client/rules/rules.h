// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>

/// Rules for examination that come with the program, as files of units that anybody may import and change.
/// They are taken into a store only when asked for, and a house may then change every figure of them.
namespace hangbook::rules {

struct Set {
  QString name;  ///< as it is asked for: "loler"
  QString title; ///< what it is
  QByteArray bytes;
};

const std::vector<Set>& sets();
/// Throws Error (badInput) with the names that there are.
const Set& set(const QString& name);

} // namespace hangbook::rules
