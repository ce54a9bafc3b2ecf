// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/hoist_stops.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "hang/doubt_uneven.h"
#include "hang/halving.h"
#include "hang/uneven.h"
#include "options/build_force.h"
#include "options/working_limit.h"

namespace hangbook::options {
namespace {

constexpr std::array<double, 7> shownAt{0.0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.75};
/// The most difference that is looked at, m: the bar's geometry ends it sooner.
constexpr double mostDifference = 2.0;

/// The point of a dead hang among the option's points.
std::size_t carrierOf(const Case& option, std::size_t pick) {
  const auto found = std::find_if(option.carriers.begin(), option.carriers.end(),
                                  [&](const Carrier& each) { return each.point == option.points[pick]; });
  return static_cast<std::size_t>(found - option.carriers.begin());
}

/// What the picks carry with one of them so much higher, N.
struct Apart {
  hang::Uneven stated;
  std::array<double, 2> most{};  ///< that each may carry
  std::array<double, 2> least{}; ///< below 0: its chain is slack
  double moved{};                ///< most that moves over, as a part of the weight
};

/// What was found of the setting's doubts, with its loads.
hang::Unfavourable unfavourableOf(const Settled& worst) {
  hang::Unfavourable found;
  if (worst.doubt != nullptr) {
    found = worst.doubt->worst;
  } else {
    found.leastPick = {worst.statics.pickLoads[0].load, worst.statics.pickLoads[1].load};
  }
  found.statics = worst.statics;
  return found;
}

class Stopping {
public:
  Stopping(const Case& of, const Settled& worst, const Settled& settled, double trimM, const hang::Bar& bar,
           std::size_t runs)
      : of_(of), worst_(worst), settled_(settled), unfavourable_(unfavourableOf(worst)), trimM_(trimM),
        bar_(bar), runs_(runs) {}

  std::optional<Apart> at(double difference) const {
    const auto stated = hang::unevenBy(bar_, settled_.statics, runs_ == 0 ? difference : -difference);
    if (!stated) {
      return std::nullopt;
    }
    Apart apart{*stated, stated->loads, stated->loads};
    if (!unfavourable_.bounded) {
      return apart;
    }
    const hang::Doubts none;
    const auto within = hang::unevenWithin(bar_, worst_.doubt == nullptr ? none : worst_.doubt->figures,
                                           settled_.statics, unfavourable_, runs_, difference);
    if (!within) {
      return std::nullopt;
    }
    // The stopped one never carries more than level, nor the one that runs less.
    const std::size_t stopped = 1 - runs_;
    apart.most[runs_] = within->raised;
    apart.least[runs_] = unfavourable_.leastPick[runs_];
    apart.most[stopped] = worst_.statics.pickLoads[stopped].load;
    apart.least[stopped] = within->other;
    apart.moved = within->part;
    return apart;
  }

  /// The first limit that is passed there, in words; empty where none is. `unknown` takes those that nobody
  /// stated.
  QString passed(double difference, const Apart& there, QStringList* unknown = nullptr) const {
    const WeightLimits& limits = *of_.weight;
    QString first;
    const auto judge = [&](const QString& what, Verdict verdict) {
      if (verdict == Verdict::fails && first.isEmpty()) {
        first = what;
      } else if (verdict == Verdict::unproven && unknown != nullptr && !unknown->contains(what)) {
        unknown->append(what);
      }
    };
    if (of_.bar->hoistOffsetLimit) {
      judge(QStringLiteral("most difference of the hoists on %1").arg(of_.bar->name),
            againstUpperLimit(difference, inMetres(*of_.bar->hoistOffsetLimit), 0.0));
    } else {
      judge(QStringLiteral("most difference of the hoists on %1").arg(of_.bar->name), Verdict::unproven);
    }
    if (!unfavourable_.bounded) {
      judge(QStringLiteral("what the hang's figures may be off by"), Verdict::unproven);
    }
    const auto [share, unlike] = sharesAt(there);
    judge(QStringLiteral("pick-share"),
          share > 0.0 ? againstLowerLimit(100.0 * share, limits.pickShare.value, 0.0) : Verdict::fails);
    if (settled_.statics.side) {
      judge(QStringLiteral("pick-share (difference of the sides)"),
            againstUpperLimit(100.0 * unlike, limits.sideUnlike.value, 0.0));
    }
    for (std::size_t pick = 0; pick < of_.points.size(); ++pick) {
      Settled then = worst_;
      then.statics.pickLoads[pick].load = there.most[pick];
      then.build.most[pick] = there.most[pick];
      const double factors = factorsFor(limits, false);
      judge(QStringLiteral("hoist at %1").arg(pickName(settled_, pick)),
            againstLoadLimit(highestLifted(of_, then, trimM_, pick) * factors,
                             of_.hoist->limit ? inNewtons(*of_.hoist->limit) * limits.hoistPart.value
                                              : notKnown));
      if (of_.bridles[pick] != nullptr) {
        judge(QStringLiteral("bridle %1").arg(of_.points[pick]->name), Verdict::unproven);
        continue;
      }
      const double point = highestAtRest(of_, then, trimM_, pick);
      const catalogue::Basis basis = of_.points[pick]->basis;
      const Verdict held =
          againstLoadLimit(basis == catalogue::Basis::dynamic ? point * limits.dynamic.value : point,
                           limits.capacity[carrierOf(of_, pick)]);
      judge(QStringLiteral("point-load of %1").arg(of_.points[pick]->name),
            basis == catalogue::Basis::unknown && held != Verdict::fails ? Verdict::unproven : held);
      for (const Piece& piece : limits.hardware) {
        judge(QStringLiteral("hardware: %1 under %2").arg(piece.name, of_.points[pick]->name),
              againstLoadLimit(point * factors, usableLimit(limits, piece)));
      }
    }
    return first;
  }

  OneStops answer() const {
    const std::size_t stopped = 1 - runs_;
    OneStops all{pickName(settled_, stopped), pickName(settled_, runs_), true, {}, notKnown, {}, {}};
    for (const double difference : shownAt) {
      // Beyond a load of 0 the stopped one's chain is slack, and the hang hangs from the other alone.
      const auto there = at(difference);
      if (there && there->stated.loads[stopped] > 0.0) {
        const bool bounded = unfavourable_.bounded;
        all.steps.push_back({difference, there->stated.turnDeg, there->stated.loads[runs_] / 1000.0,
                             there->stated.loads[stopped] / 1000.0,
                             bounded ? there->most[runs_] / 1000.0 : notKnown,
                             bounded ? std::max(0.0, there->least[stopped]) / 1000.0 : notKnown});
      }
    }
    QStringList unknown;
    const auto level = at(0.0);
    if (!level) {
      all.missing = QStringLiteral("how the picks stand");
      return all;
    }
    all.holdBy = passed(0.0, *level, &unknown);
    all.missing = unknown.join(QStringLiteral("; "));
    if (!all.holdBy.isEmpty()) {
      all.holdAtM = 0.0;
      return all;
    }
    const auto holds = [&](double difference) { // what it says rises with the difference
      const auto there = at(difference);
      const QString by = there ? passed(difference, *there) : QStringLiteral("the bar stands too steep");
      all.holdBy = by.isEmpty() ? all.holdBy : by;
      return by.isEmpty();
    };
    all.holdAtM =
        hang::turnBetween({0.0, mostDifference}, std::numeric_limits<double>::epsilon(), holds).within;
    return all;
  }

private:
  /// The least share of a pick, and the greatest difference of the two ÷ their mean. Two bounds hold: that of
  /// the loads, and that of the shares (in which the weight's own doubt does not count) of the level hang,
  /// with what moves over on top.
  std::pair<double, double> sharesAt(const Apart& there) const {
    double share = 1.0;
    double unlike = 0.0;
    for (const std::size_t pick : {std::size_t{0}, std::size_t{1}}) {
      const double less = there.least[pick];
      const double more = there.most[1 - pick];
      share = std::min(share, less / (less + more));
      unlike = std::max(unlike, 2.0 * (more - less) / (less + more));
    }
    if (worst_.doubt == nullptr || worst_.build.unknown) {
      return {share, unlike};
    }
    return {std::max(share, worst_.build.leastShare - there.moved),
            std::min(unlike, worst_.build.unlike + 4.0 * there.moved)};
  }

  const Case& of_;
  const Settled& worst_;
  const Settled& settled_;
  hang::Unfavourable unfavourable_;
  double trimM_;
  const hang::Bar& bar_;
  std::size_t runs_;
};

} // namespace

std::vector<OneStops> hoistStops(const Case& of, const Settled& worst, const Settled& settled, double trimM,
                                 const Option& option) {
  std::vector<OneStops> all;
  if (settled.statics.pickCount < 2 || !option.hangInput) {
    return all;
  }
  for (const std::size_t runs : {std::size_t{0}, std::size_t{1}}) {
    all.push_back(Stopping(of, worst, settled, trimM, option.hangInput->bar, runs).answer());
  }
  return all;
}

} // namespace hangbook::options
