// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QHash>

#include "fleet/occurrence.h"
#include "fleet/unit.h"

/// Whether an examination stands: by the calendar, by use, by what happened since.
namespace hangbook::fleet {

/// The newest examination of each unit and rule; those that a later fact corrects do not count. Of two on one
/// day the one recorded later counts.
class LastExaminations {
public:
  explicit LastExaminations(const std::vector<Examination>& examinations);
  /// nullptr: none is recorded.
  const Examination* of(const QString& serial, const QString& rule) const;

private:
  QHash<std::pair<QString, QString>, const Examination*> last_;
};

/// What happened to each unit, without what a later fact corrects. Outings are among it: a use on the day it
/// left
/// (`uses` 1) and one on the day it came back (`uses` 0).
class Happened {
public:
  Happened() = default;
  explicit Happened(const std::vector<Occurrence>& occurrences);
  const std::vector<const Occurrence*>& to(const QString& serial) const;

private:
  QHash<QString, std::vector<const Occurrence*>> of_;
};

struct Standing {
  bool met = false;
  QDate last;      ///< of the examination; null: none is recorded
  QDate until;     ///< last day by the calendar; null: the rule knows no calendar, or it is not met
  QDate idleUntil; ///< last day on which it may leave without another look; null: the rule does not ask
  std::optional<int> usesLeft;
  std::optional<double> hoursLeft;
  QString why; ///< where not met: why not
};

/// A rule that counts months, uses or hours needs a passed examination to begin with; one that only asks for
/// a look after something happened is met until it happens. Hours that nobody recorded for an outing are a
/// missing figure: not met.
Standing standingOf(const ExaminationRule& rule, const Examination* last,
                    const std::vector<const Occurrence*>& happened);

/// Empty where the standing holds from the first to the last day away, else why not. `to` null: the days are
/// not known, and nothing with an end is enough.
QString shortfall(const Standing& standing, QDate from, QDate to);

/// Stands for "by the calendar it never ends".
inline const QDate noEnd(9999, 12, 31);

} // namespace hangbook::fleet
