// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/options_table.h"

#include <algorithm>
#include <array>

#include <QSet>

#include "options/ranking.h"
#include "terminal/answers.h"
#include "terminal/both_units.h"
#include "terminal/figures.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

using options::Verdict;

QString mostUsedPoint(const options::Option& option) {
  const auto heaviest =
      std::max_element(option.points.begin(), option.points.end(),
                       [](const auto& one, const auto& other) { return one.staticKn < other.staticKn; });
  return heaviest == option.points.end() ? QString() : shown(heaviest->staticKn, 2);
}

QString shownMark(const std::optional<options::Setting>& setting) {
  return setting && setting->mark ? QString::number(*setting->mark) : QString();
}

QString counted(qint64 count) {
  QString digits = QString::number(count);
  for (qsizetype at = digits.size() - 3; at > 0; at -= 3) {
    digits.insert(at, QLatin1Char(' '));
  }
  return digits;
}

} // namespace

QString shownBar(const options::OptionKey& key) {
  return key.bar + QStringLiteral(", ") + options::wordFor(key.picks);
}

QString countsInWords(const std::vector<options::Option>& options) {
  static constexpr std::array<std::array<const char*, 2>, 4> words{{
      {"holds", "hold"},
      {"is tight", "are tight"},
      {"is unproven", "are unproven"},
      {"fails", "fail"},
  }};
  QStringList parts;
  for (const Verdict verdict : {Verdict::holds, Verdict::tight, Verdict::unproven, Verdict::fails}) {
    const auto count = std::count_if(options.begin(), options.end(), [&](const options::Option& option) {
      return option.verdict == verdict;
    });
    const auto& word = words[static_cast<std::size_t>(verdict)];
    if (count > 0) {
      parts << QStringLiteral("%1 %2").arg(counted(count), QString::fromLatin1(word[count == 1 ? 0 : 1]));
    }
  }
  return parts.isEmpty() ? QStringLiteral("no option") : parts.join(QStringLiteral(", "));
}

QStringList decidingRules(const options::Option& option) {
  QStringList rules;
  if (option.verdict != Verdict::holds) {
    for (const options::Finding& finding : option.findings) {
      if (finding.applies && finding.verdict == option.verdict) {
        rules << finding.rule;
      }
    }
  }
  return rules;
}

int tellingDigits(const std::vector<options::Option>& options) {
  int digits = 8;
  for (; digits < 16; ++digits) {
    QSet<QString> heads;
    for (const options::Option& option : options) {
      heads.insert(option.id.left(digits));
    }
    if (heads.size() == static_cast<qsizetype>(options.size())) {
      break;
    }
  }
  return digits;
}

QString boundInWords(const options::BoundCount& each) {
  const QString settings = counted(each.settings);
  if (each.bound == QLatin1String("best-found")) {
    return settings + QStringLiteral(" since the best there can be was found");
  }
  const QString rule = each.rule.isEmpty() ? QStringLiteral("the trims that the rules leave") : each.rule;
  return each.bound == QLatin1String("no-better")
             ? QStringLiteral("%1 that cannot be better by %2").arg(settings, rule)
             : QStringLiteral("%1 that all fail by %2").arg(settings, rule);
}

void printBounds(const std::vector<options::BoundCount>& bounds, std::ostream& out) {
  QStringList words;
  for (const options::BoundCount& each : bounds) {
    words.append(boundInWords(each));
  }
  if (words.isEmpty()) {
    return;
  }
  for (const QString& line :
       brokenInto(forReaders(out, QStringLiteral("by a bound: ") + words.join(QStringLiteral("; "))), 106)) {
    asIs(out) << "  " << line << '\n';
  }
}

void printHang(const options::HangOptions& hang, std::ostream& out, int most) {
  out << "Hang " << hang.hang << ": " << countsInWords(hang.options) << ". Decided "
      << counted(hang.decided.settings) << " settings, " << counted(hang.decided.byBound)
      << " of them by a bound.\n";
  for (const QString& line : brokenInto(forReaders(out, hang.decided.steps), 106)) {
    asIs(out) << "  " << line << '\n';
  }
  printBounds(hang.decided.bounds, out);
  Table table({{QStringLiteral("option")},
               {QStringLiteral("verdict")},
               {QStringLiteral("stack, bar down"), Column::Kind::text},
               {QStringLiteral("bar"), Column::Kind::text},
               {QStringLiteral("hoist"), Column::Kind::text},
               {QStringLiteral("points"), Column::Kind::text},
               {QStringLiteral("tilt °"), Column::Kind::figure},
               {QStringLiteral("trim m"), Column::Kind::figure},
               {QStringLiteral("mark"), Column::Kind::figure},
               {QStringLiteral("most kN"), Column::Kind::figure},
               {QStringLiteral("cover %"), Column::Kind::figure},
               {QStringLiteral("because of"), Column::Kind::text},
               {QStringLiteral("beaten by")}});
  const QStringList beaten = options::beatenBy(hang);
  const int digits = tellingDigits(hang.options);
  int printed = 0;
  for (const options::Option& option : hang.options) {
    if (most > 0 && printed == most) {
      break;
    }
    ++printed;
    const auto& setting = option.setting;
    table.add({option.id.left(digits), options::wordFor(option.verdict), shownStack(option.key.stack),
               shownBar(option.key), option.key.hoist, option.key.points.join(QLatin1Char(' ')),
               setting ? shownAngle(setting->tiltDeg) : QString(),
               setting ? shown(setting->trimM, 2) : QString(), shownMark(setting), mostUsedPoint(option),
               setting ? shown(option.coveredPercent, 0) : QString(),
               decidingRules(option).join(QStringLiteral(", ")), beaten[printed - 1].left(digits)});
  }
  if (!table.empty()) {
    table.print(out);
  }
  if (printed < static_cast<int>(hang.options.size())) {
    out << "  … and " << counted(static_cast<qint64>(hang.options.size()) - printed) << " more\n";
  }
  out << '\n';
}

} // namespace hangbook::terminal
