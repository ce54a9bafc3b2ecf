// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/due_list.h"

#include <algorithm>
#include <map>

namespace hangbook::desk {
namespace {

using Key = std::pair<QString, QString>;

std::map<Key, QDate> latest(const std::vector<fleet::Examination>& examinations) {
  std::map<Key, QDate> dates;
  for (const fleet::Examination& each : examinations) {
    if (each.result == fleet::ExaminationResult::fail) {
      continue;
    }
    QDate& date = dates[{each.serial, each.rule}];
    if (!date.isValid() || each.date > date) {
      date = each.date;
    }
  }
  return dates;
}

QString stopBefore(const std::vector<calendar::Show>& shows, QDate due, QDate today) {
  QString stop;
  for (const calendar::Show& show : shows) {
    if (show.from.isValid() && show.from >= today && show.from <= due) {
      stop = show.venue;
    }
  }
  return stop;
}

} // namespace

QDate dueDay(QDate last, int months) {
  return last.isValid() ? last.addMonths(months) : QDate();
}

std::vector<DueLine> dueLines(const Overview& overview) {
  const auto dates = latest(overview.examinations);
  std::vector<DueLine> lines;
  for (const fleet::Unit& unit : overview.units) {
    if (unit.state == fleet::UnitState::writtenOff) {
      continue;
    }
    for (const fleet::ExaminationRule& rule : overview.rules) {
      if (rule.kind != unit.kind || (!rule.type.isEmpty() && rule.type != unit.type)) {
        continue;
      }
      DueLine line{.serial = unit.serial,
                   .type = unit.type,
                   .kind = unit.kind,
                   .rule = rule.name,
                   .last = {},
                   .due = {},
                   .place = unit.place,
                   .stop = {}};
      if (const auto found = dates.find({unit.serial, rule.name}); found != dates.end()) {
        line.last = found->second;
        line.due = dueDay(line.last, rule.months);
        line.stop = stopBefore(overview.shows, line.due, overview.today);
      }
      lines.push_back(std::move(line));
    }
  }
  std::stable_sort(lines.begin(), lines.end(), [](const DueLine& a, const DueLine& b) {
    return a.neverExamined() != b.neverExamined() ? a.neverExamined() : a.due < b.due;
  });
  return lines;
}

std::optional<DueLine> nextDue(const std::vector<DueLine>& lines, const QString& serial) {
  const auto found =
      std::find_if(lines.begin(), lines.end(), [&](const DueLine& each) { return each.serial == serial; });
  return found == lines.end() ? std::nullopt : std::optional(*found);
}

} // namespace hangbook::desk
