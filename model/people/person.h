// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QUuid>

namespace hangbook::people {

/// Somebody who did or signed something.
struct Person {
  QUuid id;
  int revision = 0;
  QString name; ///< unique
  QString role; ///< in plain words: "crew chief"
  bool operator==(const Person&) const = default;
};

} // namespace hangbook::people
