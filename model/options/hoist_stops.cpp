// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/hoist_stops.h"

#include <algorithm>
#include <array>
#include <cmath>

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

class Stopping {
public:
  Stopping(const Case& of, const Settled& settled, double trimM, const hang::Bar& bar, std::size_t runs)
      : of_(of), settled_(settled), trimM_(trimM), bar_(bar), runs_(runs) {}

  std::optional<hang::Uneven> at(double difference) const {
    return hang::unevenBy(bar_, settled_.statics, runs_ == 0 ? difference : -difference);
  }

  /// The first limit that is passed there, in words; empty where none is. `unknown` takes those that nobody
  /// stated.
  QString passed(double difference, const hang::Uneven& there, QStringList* unknown = nullptr) const {
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
    const double weight = there.loads[0] + there.loads[1];
    const double share = 100.0 * std::min(there.loads[0], there.loads[1]) / weight;
    judge(QStringLiteral("pick-share"),
          share > 0.0 ? againstLowerLimit(share, limits.pickShare.value, 0.0) : Verdict::fails);
    if (settled_.statics.side) {
      judge(QStringLiteral("pick-share (difference of the sides)"),
            againstUpperLimit(200.0 * std::abs(there.loads[0] - there.loads[1]) / weight,
                              limits.sideUnlike.value, 0.0));
    }
    for (std::size_t pick = 0; pick < of_.points.size(); ++pick) {
      Settled then = settled_;
      then.statics.pickLoads[pick].load = there.loads[pick];
      then.build.most[pick] = there.loads[pick];
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
      if (const auto there = at(difference); there && there->loads[stopped] > 0.0) {
        all.steps.push_back(
            {difference, there->turnDeg, there->loads[runs_] / 1000.0, there->loads[stopped] / 1000.0});
      }
    }
    QStringList unknown;
    const auto level = at(0.0);
    if (!level) {
      return all;
    }
    all.holdBy = passed(0.0, *level, &unknown);
    all.missing = unknown.join(QStringLiteral("; "));
    double within = 0.0;
    double beyond = 0.0;
    if (all.holdBy.isEmpty()) { // what rises with the difference is looked for by halving
      beyond = mostDifference;
      for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (within + beyond);
        const auto there = at(middle);
        const QString by = there ? passed(middle, *there) : QStringLiteral("the bar stands too steep");
        (by.isEmpty() ? within : beyond) = middle;
        all.holdBy = by.isEmpty() ? all.holdBy : by;
      }
    }
    all.holdAtM = within;
    return all;
  }

private:
  const Case& of_;
  const Settled& settled_;
  double trimM_;
  const hang::Bar& bar_;
  std::size_t runs_;
};

} // namespace

std::vector<OneStops> hoistStops(const Case& of, const Settled& settled, double trimM, const Option& option) {
  std::vector<OneStops> all;
  if (settled.statics.pickCount < 2 || !option.hangInput) {
    return all;
  }
  for (const std::size_t runs : {std::size_t{0}, std::size_t{1}}) {
    all.push_back(Stopping(of, settled, trimM, option.hangInput->bar, runs).answer());
  }
  return all;
}

} // namespace hangbook::options
