// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/best.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "options/cover.h"
#include "options/load_bounds.h"
#include "options/loads.h"
#include "options/rig_fold.h"
#include "options/room_limits.h"

namespace hangbook::options {
namespace {

constexpr double everywhere = 100.0; // per cent
constexpr double longestChain = -std::numeric_limits<double>::infinity();
/// Aims nearer to each other than this count as one.
constexpr double aimStep = 1e-6;

/// Two settings that differ by less fail alike: which of them is shown must not hang on a last digit.
constexpr double sameBeyond = 1e-9;

/// How far beyond its limit a failing value is, as a part of the limit; both in the rule's own unit.
double beyond(const Use& use) {
  if (std::isnan(use.value) || std::isnan(use.limit)) {
    return 1.0;
  }
  const double by = std::abs(use.value - use.limit);
  return std::min(by / std::max(std::abs(use.limit), 1.0), 1e6);
}

void add(Score& score, const Use& use) {
  score.verdict = std::max(score.verdict, use.verdict);
  score.open += use.verdict == Verdict::unproven ? 1 : 0;
  if (use.verdict == Verdict::fails) {
    ++score.failing;
    score.beyond += beyond(use);
  }
}

/// Topmost cabinet that is there to cover, counted from 0; −1: none.
int topmostCovering(const Case& option) {
  for (std::size_t i = 0; i < option.cabinets.size(); ++i) {
    if (option.cabinets[i]->coversAudience) {
      return static_cast<int>(i);
    }
  }
  return -1;
}

/// The aim wanted of the topmost covering cabinet, from the setting whose own aim is nearest to it.
std::optional<double> wantedAim(const Case& option, const std::vector<Settled>& settings, std::size_t top) {
  std::size_t from = 0;
  std::optional<double> wanted;
  for (int round = 0; round < 3; ++round) {
    const Settled& settled = settings[from];
    const double above = aimAboveWantedDeg(option, settled, middleOf(windowOf(option, settled, false)));
    if (std::isnan(above)) {
      return wanted;
    }
    wanted = settled.statics.joints[top].aimDeg - above;
    for (std::size_t i = 0; i < settings.size(); ++i) {
      if (std::abs(settings[i].statics.joints[top].aimDeg - *wanted) <
          std::abs(settings[from].statics.joints[top].aimDeg - *wanted)) {
        from = i;
      }
    }
  }
  return wanted;
}

/// How far the held cabinet aims from where its upper edge of cover meets the lower edge of the covering
/// cabinet above it; 0 where that says nothing.
double heldOff(const Case& option, const Settled& settled) {
  if (option.held == 0) {
    return 0.0;
  }
  const auto held = static_cast<std::size_t>(option.held) - 1;
  const catalogue::CabinetType& cabinet = *option.cabinets[held];
  if (!cabinet.coversAudience || !cabinet.coverHighest) {
    return 0.0;
  }
  for (std::size_t i = held; i > 0; --i) {
    const catalogue::CabinetType& above = *option.cabinets[i - 1];
    if (above.coversAudience && above.coverLowest) {
      const double wanted = settled.statics.joints[i - 1].aimDeg + inDegrees(*above.coverLowest) -
                            inDegrees(*cabinet.coverHighest);
      return std::abs(settled.statics.joints[held].aimDeg - wanted);
    }
  }
  return 0.0;
}

/// Order in which settings are taken: the nearest to what is wanted first.
std::vector<std::size_t> nearestFirst(const Case& option, const std::vector<Settled>& settings) {
  struct Key {
    double aim;
    double held;
    int mark;
  };
  const int top = topmostCovering(option);
  const std::optional<double> wanted =
      top >= 0 ? wantedAim(option, settings, static_cast<std::size_t>(top)) : std::nullopt;
  std::vector<Key> keys;
  keys.reserve(settings.size());
  for (const Settled& settled : settings) {
    const double off = wanted ? settled.statics.joints[static_cast<std::size_t>(top)].aimDeg - *wanted
                              : settled.setting.tiltDeg;
    keys.push_back({std::round(std::abs(off) / aimStep) * aimStep,
                    std::round(heldOff(option, settled) / aimStep) * aimStep,
                    settled.setting.mark.value_or(0)});
  }
  std::vector<std::size_t> order(settings.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&keys](std::size_t a, std::size_t b) {
    const Key& first = keys[a];
    const Key& second = keys[b];
    if (first.aim != second.aim) {
      return first.aim < second.aim;
    }
    return first.held != second.held ? first.held < second.held : first.mark < second.mark;
  });
  return order;
}

/// Of a bound: one more line, or more settings to a line that there is.
void count(std::vector<BoundCount>& bounds, const char* bound, const char* rule, qint64 settings) {
  for (BoundCount& each : bounds) {
    if (each.bound == QLatin1String(bound) && each.rule == QLatin1String(rule)) {
      each.settings += settings;
      return;
    }
  }
  bounds.push_back({QString::fromLatin1(bound), QString::fromLatin1(rule), settings});
}

class Chooser {
public:
  Chooser(const Case& option, const std::vector<Settled>& settings, CoverRanges& ranges, std::size_t tried)
      : tried_(tried), option_(option), settings_(settings), ranges_(ranges), windows_(settings.size()),
        own_(settings), bounds_(option, option.fold == nullptr ? own_ : *option.fold, settings.size()) {}

  Best choose() {
    if (tried_ == 0) { // what fails at every setting by the corners alone needs no order
      for (std::size_t i = 0; i < weightRules().size(); ++i) {
        if (bounds_.overAll(i).least == Verdict::fails) {
          best_.allFail = true;
          count(best_.bounds, "all-fail", weightRules()[i].id, static_cast<qint64>(settings_.size()));
          return best_;
        }
      }
    }
    const std::vector<std::size_t> order = nearestFirst(option_, settings_);
    Floor least;
    bool leastProven = false;
    for (std::size_t n = 0; n < order.size(); ++n) {
      const auto left = static_cast<qint64>(order.size() - n);
      if (any_ && score_.verdict <= least.verdict && score_.cover >= everywhere) {
        count(best_.bounds, "best-found", "", left);
        break;
      }
      if (n == tried_ && !leastProven) {
        least = leastOverSettings();
        leastProven = true;
      }
      if (n >= tried_ && least.verdict == Verdict::fails) {
        best_.allFail = true;
        count(best_.bounds, "all-fail", least.rule, left);
        break;
      }
      if (const char* rule = any_ ? betterPrevented(order[n]) : nullptr) {
        count(best_.bounds, "no-better", rule, 1);
        continue;
      }
      if (any_ && leastProven && coversNoMore(order[n], least.verdict)) {
        count(best_.bounds, "no-better", coverRule.id, 1);
        continue;
      }
      take(order[n]);
    }
    return best_;
  }

private:
  /// The least verdict that any setting can reach, and the rule that sets it; none where it is the trims that
  /// the rules leave.
  struct Floor {
    Verdict verdict = Verdict::holds;
    const char* rule = "";

    void raise(Verdict by, const char* of) {
      if (by > verdict) {
        verdict = by;
        rule = of;
      }
    }
  };

  /// A bound by the weight rules at the longest chain (least lean, so least load); taken after the best so
  /// far, so of like verdict and full cover it comes second. Names the rule; nullptr: it may be better.
  const char* betterPrevented(std::size_t number) {
    if (score_.verdict == Verdict::fails) {
      return nullptr; // counted by what fails and by how much
    }
    for (std::size_t i = 0; i < weightRules().size(); ++i) {
      const Rule& rule = weightRules()[i];
      if (!rule.needsSetting || bounds_.overAll(i).most <= score_.verdict) {
        continue;
      }
      if (bounds_.overAll(i).least > score_.verdict || leastOf(i, number) > score_.verdict) {
        return rule.id;
      }
    }
    return nullptr;
  }

  /// Where no setting does better by its verdict than the best so far, only more cover would: whether this
  /// one has none, at any trim or else at its own.
  bool coversNoMore(std::size_t number, Verdict least) {
    if (score_.verdict >= Verdict::unproven || score_.verdict > least) {
      return false;
    }
    CoverFold& cover = fold(number);
    return cover.mostPercent(option_) <= score_.cover ||
           cover.percentAt(option_, trimFor(number)) <= score_.cover;
  }

  /// For each rule the best verdict over all settings; the worst of those bounds them all from below.
  Floor leastOverSettings() {
    Floor least;
    for (std::size_t i = 0; i < weightRules().size(); ++i) {
      const Rule& rule = weightRules()[i];
      if (rule.needsSetting) {
        least.raise(bounds_.overAll(i).same() ? bounds_.overAll(i).least : best(i), rule.id);
      }
      if (least.verdict == Verdict::fails) {
        return least;
      }
    }
    for (const Rule& rule : roomRules()) {
      if (rule.needsSetting && rule.trimRange == nullptr && rule.evaluate != levelDropRule.evaluate) {
        least.raise(best(rule), rule.id);
      }
    }
    if (least.verdict == Verdict::fails) {
      return least;
    }
    bool room = false;
    for (std::size_t i = 0; i < settings_.size() && !room; ++i) {
      room = mayHaveRoom(i) && window(i).open();
    }
    bool covered = false;
    for (std::size_t i = 0; i < settings_.size() && room && !covered; ++i) {
      covered = !stretches(i).empty();
    }
    if (!room) {
      least.raise(Verdict::fails, "");
    } else if (!covered) {
      least.raise(Verdict::fails, coverRule.id);
    }
    return least;
  }

  /// Two of the ranges that a window is made of, and the quickest to ask: where they do not meet it is shut.
  bool mayHaveRoom(std::size_t number) const {
    const Settled& settled = settings_[number];
    return !(lowestEdgeRule.trimRange(option_, settled).low > leanRule.trimRange(option_, settled).high);
  }

  /// A weight rule's verdict at the longest chain.
  Verdict leastOf(std::size_t which, std::size_t number) {
    const std::optional<Verdict> known = bounds_.least(which, number);
    return known ? *known : useOf(weightRules()[which], number, longestChain).verdict;
  }

  Verdict best(std::size_t which) {
    Verdict best = Verdict::fails;
    for (std::size_t number = 0; number < settings_.size() && best != Verdict::holds; ++number) {
      best = std::min(best, leastOf(which, number));
    }
    return best;
  }

  Verdict best(const Rule& rule) {
    Verdict best = Verdict::fails;
    for (std::size_t number = 0; number < settings_.size() && best != Verdict::holds; ++number) {
      best = std::min(best, useOf(rule, number, longestChain).verdict);
    }
    return best;
  }

  /// What a rule says; kept where neither trim nor points matter.
  Use useOf(const Rule& rule, std::size_t number, double trimM) {
    const Settled& settled = settings_[number];
    if (rule.evaluate == coverRule.evaluate) {
      return fold(number).at(option_, trimM);
    }
    if (option_.fold == nullptr || !isOfRigAndHoist(rule)) {
      return rule.evaluate(option_, &settled, trimM);
    }
    std::optional<Use>& kept = option_.fold->uses(rule, option_.hoist)[number];
    if (!kept) {
      kept = rule.evaluate(option_, &settled, trimM);
    }
    return *kept;
  }

  CoverFold& fold(std::size_t number) {
    std::optional<CoverFold>& known = ranges_[number];
    if (!known || !known->serves(option_)) {
      known.emplace(option_, settings_[number]);
    }
    return *known;
  }

  const std::vector<TrimRange>& stretches(std::size_t number) { return fold(number).stretches(option_); }

  /// The trims that the rules but cover leave this setting.
  const Window& window(std::size_t number) {
    std::optional<Window>& known = windows_[number];
    if (!known) {
      known = windowOf(option_, settings_[number], false, [&](std::size_t which) {
        const std::optional<Verdict> at = bounds_.most(which, number);
        return !at || *at == Verdict::fails;
      });
    }
    return *known;
  }

  double trimFor(std::size_t number) {
    const Window window = this->window(number);
    const TrimRange cover = widestWithin(stretches(number), {window.low, window.high});
    Window both = window;
    both.low = std::max(both.low, cover.low);
    both.high = std::min(both.high, cover.high);
    if (!window.open() || both.open()) {
      return middleOf(window.open() ? both : window);
    }
    const double middle = middleOf(window);
    if (!std::isfinite(window.low) || !std::isfinite(window.high)) {
      return middle;
    }
    static constexpr std::array<double, 8> places{0.375, 0.625, 0.25, 0.75, 0.125, 0.875, 0.0, 1.0};
    double trim = middle;
    double most = fold(number).percentAt(option_, middle);
    for (const double place : places) {
      const double other = window.low + place * (window.high - window.low);
      const double covered = fold(number).percentAt(option_, other);
      if (covered > most) {
        most = covered;
        trim = other;
      }
    }
    return trim;
  }

  void take(std::size_t number) {
    const Settled& settled = settings_[number];
    const double trim = trimFor(number);
    const bool leans = chainsLean(option_, settled);
    Score score;
    score.verdict = Verdict::holds;
    for (std::size_t i = 0; i < weightRules().size(); ++i) {
      const Rule& rule = weightRules()[i];
      if (!rule.needsSetting) {
        continue;
      }
      const std::optional<Verdict> known = !leans                  ? bounds_.least(i, number)
                                           : window(number).open() ? bounds_.atAnyLean(i, number)
                                                                   : std::nullopt;
      Use proven;
      proven.verdict = known.value_or(Verdict::fails);
      // How far beyond counts only where it fails.
      add(score, proven.verdict < Verdict::fails ? proven : useOf(rule, number, trim));
    }
    for (const Rule& rule : roomRules()) {
      // Advice has no limit: it holds, whatever it says.
      if (rule.needsSetting && rule.evaluate != levelDropRule.evaluate) {
        const Use use = useOf(rule, number, trim);
        add(score, use);
        if (rule.evaluate == coverRule.evaluate && !std::isnan(use.value)) {
          score.cover = use.value;
        }
      }
    }
    if (!any_ || better(score)) {
      any_ = true;
      score_ = score;
      best_.setting = number;
      best_.trimM = trim;
    }
  }

  bool better(const Score& score) const {
    if (score.verdict != score_.verdict) {
      return score.verdict < score_.verdict;
    }
    if (score.verdict == Verdict::fails && score.failing != score_.failing) {
      return score.failing < score_.failing;
    }
    if (score.verdict == Verdict::fails && std::abs(score.beyond - score_.beyond) > sameBeyond) {
      return score.beyond < score_.beyond;
    }
    if (score.verdict == Verdict::unproven && score.open != score_.open) {
      return score.open < score_.open;
    }
    return score.cover > score_.cover;
  }

  std::size_t tried_; ///< settings that are taken before the least of all of them is proven
  const Case& option_;
  const std::vector<Settled>& settings_;
  CoverRanges& ranges_;
  std::vector<std::optional<Window>> windows_;
  RigFold own_; ///< where the case has none
  LoadBounds bounds_;
  Best best_;
  Score score_;
  bool any_ = false;
};

} // namespace

Best bestOf(const Case& option, const std::vector<Settled>& settings, CoverRanges& ranges,
            std::size_t triedFirst) {
  return Chooser(option, settings, ranges, triedFirst).choose();
}

} // namespace hangbook::options
