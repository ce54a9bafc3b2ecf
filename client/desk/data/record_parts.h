// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::desk {

/// How the parts of a record are spoken of.
struct PartWords {
  QString object; ///< begins the names of its table's parts
  QString tab;
  QString says;
  QString add;
  QString row; ///< "joint in row %1"
  QString note;
};

/// Of the sort of line that they are: "join", "count", "picks", "socket", "loom end".
PartWords wordsOfPart(const QString& sort);

} // namespace hangbook::desk
