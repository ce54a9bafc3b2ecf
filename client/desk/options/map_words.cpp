// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "desk/options/option_list_model.h"
#include "desk/options/paint_setting_map.h"
#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

bool isOpen(const options::SettingColumn& column) {
  return !column.stretches.empty();
}

QString rulesInWords(const QStringList& rules) {
  QStringList says;
  for (const QString& each : rules) {
    says << ruleWords(each);
  }
  return says.join(Words::tr(", "));
}

} // namespace

std::vector<EdgeName> edgeNames(const options::SettingMap& map) {
  std::vector<EdgeName> names;
  std::size_t most = 0;
  for (const auto& column : map.columns) {
    most = std::max(most, column.stretches.size());
  }
  for (std::size_t n = 0; n < most; ++n) {
    for (const bool high : {true, false}) {
      std::vector<double> trims;
      bool going = false;
      for (const auto& column : map.columns) {
        if (n >= column.stretches.size()) {
          going = false;
          continue;
        }
        const options::SettingStretch& stretch = column.stretches[n];
        const QString& rule = high ? stretch.highRule : stretch.lowRule;
        const double trim = high ? stretch.highM : stretch.lowM;
        if (!going || names.back().rule != rule) {
          trims.clear();
          names.push_back({rule, high, column.tiltDeg, column.tiltDeg, trim});
          going = true;
        }
        trims.push_back(trim);
        names.back().lastTilt = column.tiltDeg;
        // Clear of the whole of its part of the edge.
        names.back().trimM = high ? std::ranges::max(trims) : std::ranges::min(trims);
      }
    }
  }
  return names;
}

QString sideName(const options::SettingMap& map, bool first) {
  const auto& columns = map.columns;
  std::optional<std::size_t> end;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (isOpen(columns[i]) && (!first || !end)) {
      end = i;
    }
  }
  if (!end) {
    return {};
  }
  if (first ? *end == 0 : *end + 1 == columns.size()) {
    return Words::tr("no further tilt is possible");
  }
  return rulesInWords(columns[first ? *end - 1 : *end + 1].shutBy);
}

QString describeMap(const MapShown& shown, const Figures& figures) {
  const options::SettingMap& map = shown.map;
  QStringList says;
  says << Words::tr("Point at tilt %1, trim %2%3.")
              .arg(figures.angle(shown.at.tiltDeg), figures.length(shown.at.trimM),
                   shown.verdict ? Words::tr(": %1").arg(verdictWord(*shown.verdict)) : QString());
  std::optional<double> first;
  std::optional<double> last;
  for (const auto& column : map.columns) {
    if (!isOpen(column)) {
      continue;
    }
    first = first.value_or(column.tiltDeg);
    last = column.tiltDeg;
    if (column.tiltDeg == shown.at.tiltDeg) {
      for (const auto& stretch : column.stretches) {
        says << Words::tr("At this tilt the trim may lie at %1 %2: below, %3; above, %4.")
                    .arg(windowText(stretch.lowM, stretch.highM, figures),
                         QString::fromUtf8(unitOf<Length>(figures.system())), ruleWords(stretch.lowRule),
                         ruleWords(stretch.highRule));
      }
    }
  }
  if (first) {
    says << Words::tr("Tilts %1 to %2 leave a trim. Lower: %3. Higher: %4.")
                .arg(figures.angle(*first), figures.angle(*last), sideName(map, true), sideName(map, false));
  } else {
    QStringList rules;
    for (const auto& column : map.columns) {
      rules += column.shutBy;
    }
    rules.removeDuplicates();
    says << Words::tr("No tilt of the grid leaves a trim: %1.").arg(rulesInWords(rules));
  }
  QStringList marks;
  for (const auto& line : map.marks) {
    if (!line.at.empty()) {
      marks << QString::number(line.mark);
    }
  }
  if (!marks.isEmpty()) {
    says << Words::tr("Marks that leave a trim at some tilt: %1.").arg(marks.join(Words::tr(", ")));
  }
  return says.join(QLatin1Char(' '));
}

} // namespace hangbook::desk
