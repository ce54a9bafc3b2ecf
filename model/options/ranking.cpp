// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/ranking.h"

#include <algorithm>
#include <array>
#include <map>

namespace hangbook::options {
namespace {

constexpr std::array<RankBy, 5> rankings{RankBy::cover, RankBy::lightest, RankBy::gear, RankBy::changes,
                                         RankBy::build};

template <class Figure>
int by(Figure one, Figure other) {
  return static_cast<int>(other < one) - static_cast<int>(one < other);
}

/// Below 0: `one` comes first. By what was asked for, then by the other figures, then by name, so that the
/// list is the same on every run.
int compare(const Option& one, const Option& other, const Ranking& ranking) {
  const int cover = by(other.coveredPercent, one.coveredPercent);
  const int mass = by(one.massKg, other.massKg);
  const int gear = by(one.key.stack.size(), other.key.stack.size());
  const int build = by(one.build.size(), other.build.size());
  int first = cover;
  switch (ranking.by) {
  case RankBy::cover:
    break;
  case RankBy::lightest:
    first = mass;
    break;
  case RankBy::gear:
    first = gear;
    break;
  case RankBy::changes:
    if (ranking.before) {
      first = by(changesBetween(one.key, *ranking.before), changesBetween(other.key, *ranking.before));
    }
    break;
  case RankBy::build:
    first = build;
    break;
  }
  for (const int each : {first, cover, mass, gear, build, by(one.id, other.id)}) {
    if (each != 0) {
      return each;
    }
  }
  return 0;
}

/// What an option is better or worse by: the lower the better, each.
std::array<double, 6> respectsOf(const Option& option) {
  double use = 0.0;
  for (const Finding& finding : option.findings) {
    use = std::max(use, finding.applies ? finding.usePercent.value_or(0.0) : 0.0);
  }
  const double hoists = option.key.picks == catalogue::Picks::single ? 1.0 : 2.0;
  return {static_cast<double>(option.verdict),
          -option.coveredPercent,
          option.massKg,
          static_cast<double>(option.key.stack.size()) + hoists,
          static_cast<double>(option.build.size()),
          use};
}

} // namespace

std::span<const RankBy> allRankings() {
  return rankings;
}

QString wordFor(RankBy ranking) {
  switch (ranking) {
  case RankBy::cover:
    return QStringLiteral("cover");
  case RankBy::lightest:
    return QStringLiteral("lightest");
  case RankBy::gear:
    return QStringLiteral("gear");
  case RankBy::changes:
    return QStringLiteral("changes");
  case RankBy::build:
    break;
  }
  return QStringLiteral("build");
}

std::optional<RankBy> rankBy(const QString& word) {
  for (const RankBy each : rankings) {
    if (wordFor(each) == word) {
      return each;
    }
  }
  return std::nullopt;
}

void rank(HangOptions& options, const Ranking& ranking) {
  std::stable_sort(
      options.options.begin(), options.options.end(), [&](const Option& one, const Option& other) {
        return one.verdict != other.verdict ? one.verdict < other.verdict : compare(one, other, ranking) < 0;
      });
}

int changesBetween(const OptionKey& one, const OptionKey& other) {
  std::map<QString, int> balance;
  for (const QString& each : one.stack) {
    ++balance[each];
  }
  for (const QString& each : other.stack) {
    --balance[each];
  }
  int changes = 0;
  for (const auto& [type, left] : balance) {
    changes += std::abs(left);
  }
  if (changes == 0 && one.stack != other.stack) {
    changes = 1; // the same cabinets in another order
  }
  return changes + (one.bar != other.bar ? 1 : 0) + (one.picks != other.picks ? 1 : 0) +
         (one.hoist != other.hoist ? 1 : 0);
}

QStringList beatenBy(const HangOptions& options) {
  std::vector<std::array<double, 6>> all;
  for (const Option& each : options.options) {
    all.push_back(respectsOf(each));
  }
  QStringList beaten;
  for (std::size_t i = 0; i < all.size(); ++i) {
    QString by;
    for (std::size_t j = 0; j < all.size() && by.isEmpty(); ++j) {
      const Option& one = options.options[i];
      const Option& other = options.options[j];
      if (!other.setting) {
        continue;
      }
      const bool noWorse = std::equal(all[j].begin(), all[j].end(), all[i].begin(), std::less_equal<>());
      if (!one.setting || (noWorse && all[j] != all[i])) {
        by = other.id;
      }
    }
    beaten.append(by);
  }
  return beaten;
}

} // namespace hangbook::options
