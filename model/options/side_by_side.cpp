// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/side_by_side.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace hangbook::options {
namespace {

const QString none = QStringLiteral("–");

QString inPlaces(std::optional<double> value, int places) {
  return value && std::isfinite(*value) ? QString::number(*value, 'f', places) : none;
}

/// "2 Marram bass, Marram upper" from the bar down.
QString stackWords(const QStringList& stack) {
  QStringList words;
  for (qsizetype i = 0; i < stack.size();) {
    qsizetype same = 1;
    while (i + same < stack.size() && stack[i + same] == stack[i]) {
      ++same;
    }
    words << (same > 1 ? QStringLiteral("%1 %2").arg(same).arg(stack[i]) : stack[i]);
    i += same;
  }
  return words.join(QStringLiteral(", "));
}

/// Verdict, and what was compared with what.
QString ruleWords(const Finding& finding) {
  if (!finding.applies) {
    return QStringLiteral("does not apply");
  }
  QString words = wordFor(finding.verdict);
  if (finding.value && std::isfinite(*finding.value)) {
    words += QStringLiteral(", ") + inPlaces(finding.value, 2);
    if (finding.limit && std::isfinite(*finding.limit)) {
      words += QStringLiteral(" of ") + inPlaces(finding.limit, 2);
    }
    words += finding.unit.isEmpty() ? QString() : QStringLiteral(" ") + finding.unit;
  }
  return words;
}

class Rows {
public:
  explicit Rows(const std::vector<const Option*>& options) : options_(options) {}

  void add(const QString& what, const std::function<QString(const Option&)>& cell) {
    CompareRow row{what, {}, false};
    for (const Option* each : options_) {
      row.cells << cell(*each);
    }
    row.differs = std::any_of(row.cells.begin(), row.cells.end(),
                              [&](const QString& text) { return text != row.cells.front(); });
    rows_.push_back(std::move(row));
  }

  std::vector<CompareRow> done() {
    std::stable_partition(rows_.begin(), rows_.end(), [](const CompareRow& row) { return row.differs; });
    return std::move(rows_);
  }

private:
  const std::vector<const Option*>& options_;
  std::vector<CompareRow> rows_;
};

QString ofSetting(const Option& option, const std::function<QString(const Setting&)>& cell) {
  return option.setting ? cell(*option.setting) : none;
}

/// Every rule that any of them has, in the order of the first.
QStringList rulesOf(const std::vector<const Option*>& options) {
  QStringList rules;
  for (const Option* each : options) {
    for (const Finding& finding : each->findings) {
      if (!rules.contains(finding.rule)) {
        rules << finding.rule;
      }
    }
  }
  return rules;
}

} // namespace

std::vector<CompareRow> sideBySide(const std::vector<const Option*>& options) {
  Rows rows(options);
  rows.add(QStringLiteral("verdict"), [](const Option& option) { return wordFor(option.verdict); });
  rows.add(QStringLiteral("stack"), [](const Option& option) { return stackWords(option.key.stack); });
  rows.add(QStringLiteral("cabinets"),
           [](const Option& option) { return QString::number(option.key.stack.size()); });
  rows.add(QStringLiteral("bar"), [](const Option& option) { return option.key.bar; });
  rows.add(QStringLiteral("picked up as"), [](const Option& option) { return wordFor(option.key.picks); });
  rows.add(QStringLiteral("hoist"), [](const Option& option) { return option.key.hoist; });
  rows.add(QStringLiteral("points"),
           [](const Option& option) { return option.key.points.join(QStringLiteral(", ")); });
  rows.add(QStringLiteral("tilt °"), [](const Option& option) {
    return ofSetting(option, [](const Setting& setting) { return inPlaces(setting.tiltDeg, 1); });
  });
  rows.add(QStringLiteral("trim m"), [](const Option& option) {
    return ofSetting(option, [](const Setting& setting) { return inPlaces(setting.trimM, 2); });
  });
  rows.add(QStringLiteral("trim may lie m"), [](const Option& option) {
    return option.trimWindow
               ? QStringLiteral("%1 to %2")
                     .arg(inPlaces(option.trimWindow->lowM, 2), inPlaces(option.trimWindow->highM, 2))
               : none;
  });
  rows.add(QStringLiteral("chain mark"), [](const Option& option) {
    return ofSetting(
        option, [](const Setting& setting) { return setting.mark ? QString::number(*setting.mark) : none; });
  });
  rows.add(QStringLiteral("mass kg"),
           [](const Option& option) { return option.setting ? inPlaces(option.massKg, 0) : none; });
  rows.add(QStringLiteral("cover %"),
           [](const Option& option) { return option.setting ? inPlaces(option.coveredPercent, 1) : none; });
  rows.add(QStringLiteral("build steps"),
           [](const Option& option) { return QString::number(option.build.size()); });
  rows.add(QStringLiteral("points at rest kN"), [](const Option& option) {
    QStringList words;
    for (const PointResult& point : option.points) {
      words << QStringLiteral("%1 %2").arg(point.point, inPlaces(point.staticKn, 2));
    }
    return words.isEmpty() ? none : words.join(QStringLiteral(", "));
  });
  for (const QString& rule : rulesOf(options)) {
    rows.add(rule, [&rule](const Option& option) {
      const auto found = std::find_if(option.findings.begin(), option.findings.end(),
                                      [&](const Finding& finding) { return finding.rule == rule; });
      return found == option.findings.end() ? none : ruleWords(*found);
    });
  }
  return rows.done();
}

} // namespace hangbook::options
