// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>

#include "calendar/where_best.h"

/// How what is due is told: for machines, for people, for calendars.
namespace hangbook::terminal {

struct DueAnswer {
  QDate asOf;
  QDate last;                             ///< last day that was asked for
  std::vector<calendar::Planned> units;   ///< the most pressing first
  std::vector<calendar::Planned> besides; ///< due by then too, but not of what was asked for: never hidden
  QString asked;                          ///< "show Ostrel", "tour …"; empty = the whole fleet
};

QJsonObject dueInJson(const DueAnswer& answer);
void printDue(const DueAnswer& answer, std::ostream& out);

} // namespace hangbook::terminal
