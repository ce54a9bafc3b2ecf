// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/side_by_side.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>

namespace hangbook::options {
namespace {

const QString none = QStringLiteral("–");

bool isFigure(std::optional<double> value) {
  return value && std::isfinite(*value);
}

QString inPlaces(std::optional<double> value, int places) {
  return isFigure(value) ? QString::number(*value, 'f', places) : none;
}

/// "2 Marram bass, Marram upper" from the bar down.
QString stackWords(const QStringList& stack) {
  QStringList words;
  for (auto from = stack.begin(); from != stack.end();) {
    const auto to = std::find_if(from, stack.end(), [&](const QString& each) { return each != *from; });
    const auto same = std::distance(from, to);
    words << (same > 1 ? QStringLiteral("%1 %2").arg(same).arg(*from) : *from);
    from = to;
  }
  return words.join(QStringLiteral(", "));
}

class Rows {
public:
  Rows(const std::vector<const Option*>& options, const CompareWords& words)
      : options_(options), words_(words) {}

  QString figure(std::optional<double> value, const char* unit, int places) const {
    return isFigure(value) ? words_.figure(*value, QString::fromUtf8(unit), places) : none;
  }

  /// Verdict, and what was compared with what.
  QString finding(const Finding& finding) const {
    if (!finding.applies) {
      return QStringLiteral("does not apply");
    }
    QString text = wordFor(finding.verdict);
    const QByteArray unit = finding.unit.toUtf8();
    if (isFigure(finding.value)) {
      text += QStringLiteral(", ") + figure(finding.value, unit.constData(), 2);
      if (isFigure(finding.limit)) {
        text += QStringLiteral(" against ") + figure(finding.limit, unit.constData(), 2);
      }
      if (words_.unitInName && !finding.unit.isEmpty()) {
        text += QStringLiteral(" ") + finding.unit;
      }
    }
    return text;
  }

  void add(const char* what, const char* unit, const std::function<QString(const Option&)>& cell) {
    QString name = QString::fromUtf8(what);
    if (words_.unitInName && *unit != 0) {
      name += QLatin1Char(' ') + QString::fromUtf8(unit);
    }
    addRow(name, {}, cell);
  }
  void addRule(const QString& rule, const std::function<QString(const Option&)>& cell) {
    addRow(words_.rule(rule), rule, cell);
  }

  std::vector<CompareRow> done() {
    std::stable_partition(rows_.begin(), rows_.end(), [](const CompareRow& row) { return row.differs; });
    return std::move(rows_);
  }

private:
  void addRow(const QString& what, const QString& rule, const std::function<QString(const Option&)>& cell) {
    CompareRow row{what, rule, {}, {}};
    for (const Option* each : options_) {
      row.cells << cell(*each);
    }
    row.differs = std::any_of(row.cells.begin(), row.cells.end(),
                              [&](const QString& text) { return text != row.cells.front(); });
    rows_.push_back(std::move(row));
  }

  const std::vector<const Option*>& options_;
  const CompareWords& words_;
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

CompareWords plainCompareWords() {
  CompareWords words;
  words.figure = [](double value, const QString&, int places) { return inPlaces(value, places); };
  words.span = [](double low, double high) {
    constexpr double slack = 1e-7; // an end that stands on a centimetre but for its last bits stays on it
    const double from = std::ceil(low * 100.0 - slack) / 100.0;
    const double to = std::floor(high * 100.0 + slack) / 100.0;
    return from <= to ? QStringLiteral("%1 to %2").arg(inPlaces(from, 2), inPlaces(to, 2))
                      : QStringLiteral("%1 to %2").arg(inPlaces(low, 4), inPlaces(high, 4));
  };
  words.rule = [](const QString& rule) { return rule; };
  return words;
}

std::vector<CompareRow> sideBySide(const std::vector<const Option*>& options, const CompareWords& words) {
  Rows rows(options, words);
  rows.add("verdict", "", [](const Option& option) { return wordFor(option.verdict); });
  rows.add("stack", "", [](const Option& option) { return stackWords(option.key.stack); });
  rows.add("cabinets", "", [](const Option& option) { return QString::number(option.key.stack.size()); });
  rows.add("bar", "", [](const Option& option) { return option.key.bar; });
  rows.add("picked up as", "", [](const Option& option) { return wordFor(option.key.picks); });
  rows.add("hoist", "", [](const Option& option) { return option.key.hoist; });
  rows.add("points", "", [](const Option& option) { return option.key.points.join(QStringLiteral(", ")); });
  rows.add("tilt", "°", [&](const Option& option) {
    return ofSetting(option, [&](const Setting& setting) { return rows.figure(setting.tiltDeg, "°", 1); });
  });
  rows.add("trim", "m", [&](const Option& option) {
    return ofSetting(option, [&](const Setting& setting) { return rows.figure(setting.trimM, "m", 2); });
  });
  rows.add("trim may lie", "m", [&](const Option& option) {
    return option.trimWindow ? words.span(option.trimWindow->lowM, option.trimWindow->highM) : none;
  });
  rows.add("chain mark", "", [](const Option& option) {
    return ofSetting(
        option, [](const Setting& setting) { return setting.mark ? QString::number(*setting.mark) : none; });
  });
  rows.add("mass", "kg",
           [&](const Option& option) { return option.setting ? rows.figure(option.massKg, "kg", 0) : none; });
  rows.add("cover", "%", [&](const Option& option) {
    return option.setting ? rows.figure(option.coveredPercent, "%", 1) : none;
  });
  rows.add("build steps", "", [](const Option& option) { return QString::number(option.build.size()); });
  rows.add("points at rest", "kN", [&](const Option& option) {
    QStringList says;
    for (const PointResult& point : option.points) {
      says << QStringLiteral("%1 %2").arg(point.point, rows.figure(point.staticKn, "kN", 2));
    }
    return says.isEmpty() ? none : says.join(QStringLiteral(", "));
  });
  for (const QString& rule : rulesOf(options)) {
    rows.addRule(rule, [&](const Option& option) {
      const auto found = std::find_if(option.findings.begin(), option.findings.end(),
                                      [&](const Finding& finding) { return finding.rule == rule; });
      return found == option.findings.end() ? none : rows.finding(*found);
    });
  }
  return rows.done();
}

} // namespace hangbook::options
