// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "hang/balance.h"
#include "hang/chain.h"
#include "hang/doubt_place.h"
#include "hang/layout.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "options/rig.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

/// A tilt that the arithmetic of the reach misses by less than this is tried; the statics decide.
constexpr double gridSlackDeg = 1e-9;

/// Counts through every combination of holes; false after the last.
bool nextHoles(const Rig& rig, std::vector<std::size_t>& which) {
  for (std::size_t i = which.size(); i > 0; --i) {
    if (++which[i - 1] < rig.holes[i - 1].anglesDeg.size()) {
      return true;
    }
    which[i - 1] = 0;
  }
  return false;
}

const hang::Pivot* heldPivot(const hang::Hang& hang) {
  return hang.chain
             ? std::get_if<hang::Pivot>(&hang.stack[static_cast<std::size_t>(hang.chain->held) - 1].joint)
             : nullptr;
}

/// Straight line from anchor to eye of a held element without a pivot, joints as they stand.
double straightToEye(const hang::Hang& hang) {
  std::vector<double> joints;
  for (const hang::Element& element : hang.stack) {
    joints.push_back(hang::fixedAngleDeg(element.joint));
  }
  hang::Assembly assembly;
  hang::assemble(hang.bar, hang.stack, joints, hang.chain->held, assembly);
  return assembly.line->straight;
}

/// Marks to be tried; empty with a reason where no link serves. A stack without a chain is tried once.
std::vector<std::optional<int>> marksOf(const Rig& rig, QString& reason) {
  const hang::Hang& hang = rig.hang;
  if (!hang.chain) {
    return {std::nullopt};
  }
  std::vector<std::optional<int>> marks;
  if (heldPivot(hang) != nullptr) {
    const hang::PivotTriangle triangle = hang::pivotTriangle(hang.bar, hang.stack, hang.chain->held);
    for (const hang::MarkAngle& each : hang::usableMarks(triangle, hang.chain->pitch, hang.chain->fixed)) {
      if (each.mark <= rig.mostMark) {
        marks.push_back(each.mark);
      }
    }
    if (marks.empty()) {
      reason = QStringLiteral("no link of the chain's %1 brings the pivot to an angle within its travel")
                   .arg(rig.mostMark);
    }
    return marks;
  }
  // The shortest that the chain may be must reach as well.
  const hang::Doubts& doubts = rig.doubts.figures;
  const bool known = doubts.known() && doubts.stack.size() == hang.stack.size();
  const double farther = known ? hang::anchorToEyeDoubt(hang, doubts) : 0.0;
  const double shorter = known ? doubts.linkShorter : 0.0;
  const auto first = hang::firstMarkThatReaches(straightToEye(hang) + farther, hang.chain->pitch - shorter,
                                                hang.chain->fixed);
  if (first && *first <= rig.mostMark) {
    marks.push_back(first);
  } else {
    reason = QStringLiteral("the chain's %1 links do not reach the eye").arg(rig.mostMark);
  }
  return marks;
}

/// Where the tilt may lie, or nothing where it is not for us to set.
std::optional<hang::Range> tiltRange(const Rig& rig, const hang::Assembly& assembly, double panDeg) {
  if (const auto* pair = std::get_if<hang::SidePair>(&rig.hang.bar.picks)) {
    return hang::tiltReach(*pair, assembly, panDeg);
  }
  if (std::get_if<hang::ForeAftPair>(&rig.hang.bar.picks) != nullptr) {
    return hang::Range{-rig.foreAftReachDeg, rig.foreAftReachDeg};
  }
  return std::nullopt;
}

hang::Setting staticsSetting(const hang::Bar& bar, double tiltDeg, double panDeg) {
  hang::Setting set;
  if (!std::holds_alternative<hang::SinglePick>(bar.picks)) {
    set.tiltDeg = tiltDeg;
  }
  set.panDeg = panDeg;
  return set;
}

/// Whether the shape hinges on an opening that nobody stated; then names it.
bool hingesOnUnknown(const Rig& rig, const hang::Statics& statics, QStringList& missing) {
  bool hinges = false;
  for (const Rig::Opening& opening : rig.openingUnknown) {
    const hang::JointStatics& joint = statics.joints[opening.element];
    if (joint.openDeg > 0.0 || joint.stop) {
      hinges = true;
      if (!missing.contains(opening.what)) {
        missing.append(opening.what);
      }
    }
  }
  return hinges;
}

/// The real shape of `rig.hang`; as assembled, by `solver`, where that is it.
void stand(const Rig& rig, const hang::Solver& solver, hang::Statics& into) {
  const int held = hang::heldBy(rig.hang.chain);
  try {
    solver.at(rig.hang.set, into);
    if (hang::standsAsAssembled(rig.hang.stack, into, held)) {
      return;
    }
  } catch (const Error& error) {
    if (error.trouble() != Trouble::notPossible) {
      throw;
    }
  }
  into = hang::asStatics(hang::settle(rig.hang)); // throws once more what no shape can mend
}

} // namespace

Settings settingsOf(Rig& rig, double panDeg) {
  Settings all;
  const auto impossible = [&all](const QString& why) {
    if (all.impossible.isEmpty()) {
      all.impossible = why;
    }
  };
  std::vector<std::size_t> which(rig.holes.size(), 0);
  do {
    std::vector<double> holes;
    for (std::size_t i = 0; i < which.size(); ++i) {
      holes.push_back(rig.holes[i].anglesDeg[which[i]]);
    }
    useHoles(rig, holes);
    QString reason;
    try {
      const std::vector<std::optional<int>> marks = marksOf(rig, reason);
      if (marks.empty()) {
        impossible(reason);
        continue;
      }
      if (rig.hang.chain) {
        rig.hang.chain->mark = *marks.front();
      }
      hang::Solver solver(rig.hang.bar, rig.hang.stack, rig.hang.chain);
      for (const std::optional<int>& mark : marks) {
        if (mark) {
          rig.hang.chain->mark = *mark;
          solver.useMark(*mark);
        }
        const hang::BuildUp build(rig.hang.bar, rig.hang.stack, rig.hang.chain);
        hang::Doubting doubting(rig.hang, rig.doubts.figures);
        const std::optional<hang::Range> range = tiltRange(rig, solver.assembly(), panDeg);
        const auto first = std::lround(range ? std::ceil(range->low / rig.tiltStepDeg - gridSlackDeg) : 0.0);
        const auto last = std::lround(range ? std::floor(range->high / rig.tiltStepDeg + gridSlackDeg) : 0.0);
        for (auto step = first; step <= last; ++step) {
          const double tilt = static_cast<double>(step) * rig.tiltStepDeg;
          rig.hang.set = staticsSetting(rig.hang.bar, tilt, panDeg);
          try {
            Settled settled;
            stand(rig, solver, settled.statics);
            if (hingesOnUnknown(rig, settled.statics, all.missing)) {
              continue;
            }
            settled.layout = hang::layOut(rig.hang, settled.statics);
            settled.build = build.worst(rig.hang.set, settled.statics);
            settled.setting = {range ? tilt : settled.statics.tiltDeg, panDeg, notKnown, mark, holes};
            takeDoubts(doubting, rig.hang, rig.doubts, settled);
            all.settled.push_back(std::move(settled));
          } catch (const Error& error) {
            impossible(QString::fromUtf8(error.what()));
          }
        }
        if (last < first) {
          impossible(QStringLiteral("no tilt on the grid lies within the bar's travel"));
        }
      }
    } catch (const Error& error) {
      impossible(QString::fromUtf8(error.what()));
    }
  } while (nextHoles(rig, which));
  return all;
}

std::optional<Settled> settle(Rig& rig, const Setting& setting, QStringList& missing) {
  if (setting.holesDeg.size() != rig.holes.size()) {
    throw Error(Trouble::badInput,
                "expected an angle for each of " + std::to_string(rig.holes.size()) + " joints with holes",
                "holes");
  }
  for (std::size_t i = 0; i < rig.holes.size(); ++i) {
    const std::vector<double>& angles = rig.holes[i].anglesDeg;
    if (std::find(angles.begin(), angles.end(), setting.holesDeg[i]) == angles.end()) {
      throw Error(Trouble::badInput, "the maker's table has no hole at that angle",
                  "holes[" + std::to_string(i) + "]");
    }
  }
  useHoles(rig, setting.holesDeg);
  if (rig.hang.chain.has_value() != setting.mark.has_value()) {
    throw Error(Trouble::badInput,
                rig.hang.chain ? "expected a chain mark" : "this stack has no chain: expected no mark",
                "mark");
  }
  if (setting.mark) {
    if (*setting.mark > rig.mostMark) {
      throw Error(Trouble::notPossible, "the chain has " + std::to_string(rig.mostMark) + " links", "mark");
    }
    rig.hang.chain->mark = *setting.mark;
  }
  rig.hang.set = staticsSetting(rig.hang.bar, setting.tiltDeg, setting.panDeg);
  Settled settled;
  settled.statics = hang::standing(rig.hang);
  if (hingesOnUnknown(rig, settled.statics, missing)) {
    return std::nullopt;
  }
  settled.layout = hang::layOut(rig.hang, settled.statics);
  settled.build =
      hang::BuildUp(rig.hang.bar, rig.hang.stack, rig.hang.chain).worst(rig.hang.set, settled.statics);
  settled.setting = setting;
  settled.setting.tiltDeg = rig.hang.set.tiltDeg ? setting.tiltDeg : settled.statics.tiltDeg;
  settled.setting.trimM = notKnown;
  hang::Doubting doubting(rig.hang, rig.doubts.figures);
  takeDoubts(doubting, rig.hang, rig.doubts, settled);
  return settled;
}

} // namespace hangbook::options
