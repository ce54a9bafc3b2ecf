// SPDX-License-Identifier: GPL-3.0-or-later
// hardware: each shackle, sling, clip and pin between point and hoist is within its usable limit, at the
// point's whole load with factors; the secondary suspension likewise for the pick that it would catch, and
// with the factor for catching against its whole limit.
#include <algorithm>
#include <cmath>

#include "options/build_force.h"
#include "options/catching.h"
#include "options/loads.h"
#include "options/sentence.h"
#include "options/working_limit.h"

namespace hangbook::options {
namespace {

enum Why { judged, noRigging, noSecondary, dropsFar };

/// `which` = pick × pieces of a pick + piece: first those between point and hoist, then the secondary
/// suspension.
std::size_t piecesOf(const WeightLimits& limits) {
  return limits.hardware.size() + limits.secondarySteel.size();
}

void addPick(const Case& option, const Settled& settled, double trimM, std::size_t pick, WorstUse& worst) {
  const WeightLimits& limits = *option.weight;
  const double factors = factorsFor(limits, false);
  const std::size_t base = pick * piecesOf(limits);
  const double load = highestAtRest(option, settled, trimM, pick) * factors;
  for (std::size_t i = 0; i < limits.hardware.size(); ++i) {
    worst.add(loadUse(load, usableLimit(limits, limits.hardware[i]), static_cast<int>(base + i)));
  }
  const double caught = std::max(settled.build.most[pick], pickLoad(settled, pick));
  const Catching catching = catchingAt(option, settled, pick);
  for (std::size_t i = 0; i < limits.secondarySteel.size(); ++i) {
    const auto which = static_cast<int>(base + limits.hardware.size() + i);
    const Piece& piece = limits.secondarySteel[i];
    worst.add(loadUse(caught * factors, usableLimit(limits, piece), which));
    worst.add(loadUse(catching.load, piece.limit, which));
    if (catching.drop > mostDrop) {
      Use far;
      far.value = catching.drop;
      far.limit = mostDrop;
      far.verdict = Verdict::fails;
      far.which = which;
      far.why = dropsFar;
      worst.add(far);
    }
  }
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  const WeightLimits& limits = *option.weight;
  WorstUse pieces;
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    addPick(option, *settled, trimM, pick, pieces);
  }
  Use worst = provenOver(*settled, pieces.get().value_or(Use{}));
  if (worst.verdict == Verdict::fails) {
    return worst;
  }
  // Nobody beneath, or a hoist whose class needs none: then a secondary suspension may be left out.
  const bool mayDoWithout = option.snapshot->show.peopleBeneath == std::optional<bool>(false) ||
                            option.hoist->holdsWithoutSecondary == std::optional<bool>(true);
  if (limits.hardware.empty()) {
    worst.verdict = Verdict::unproven;
    worst.why = noRigging;
  } else if (limits.secondarySteel.empty() && !mayDoWithout) {
    worst.verdict = Verdict::unproven;
    worst.why = noSecondary;
  }
  return worst;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  const WeightLimits& limits = *option.weight;
  Finding finding = loadFinding("hardware", use);
  if (use.why == noRigging) {
    finding.text = QStringLiteral("No shackle or sling between point and hoist is named for this hang.");
    return finding;
  }
  const auto which = static_cast<std::size_t>(use.which);
  const std::size_t pick = which / piecesOf(limits);
  const std::size_t piece = which % piecesOf(limits);
  const bool secondary = piece >= limits.hardware.size();
  const Piece& named =
      secondary ? limits.secondarySteel[piece - limits.hardware.size()] : limits.hardware[piece];
  finding.source = named.source.isEmpty()
                       ? QString()
                       : QStringLiteral("maker's data for %1: %2").arg(named.name, named.source);
  const double caught = std::max(settled->build.most[pick], pickLoad(*settled, pick));
  const Catching drop = catchingAt(option, *settled, pick);
  if (use.why == dropsFar) {
    Finding far = findingFor("hardware", use, "m");
    far.source = QStringLiteral("DGUV Information 215-313: at most 20 cm, for items that are aimed");
    far.text =
        QStringLiteral("The %1 pick may drop %2 before its secondary suspension is taut (%3), and %4 is the "
                       "most there may be.")
            .arg(pickName(*settled, pick), inM(use.value), limits.drop.source, inM(use.limit));
    return far;
  }
  const bool catching = use.value == drop.load / 1000.0 || (std::isnan(use.value) && std::isnan(drop.load));
  QString text =
      secondary
          ? QStringLiteral("%1 of the secondary suspension at the %2 pick must hold %3 at rest, with %4: %5")
                .arg(named.name, pickName(*settled, pick), inKn(caught),
                     catching ? catchingWords(option, drop) : factorWords(limits, false),
                     inKn(use.value * 1000.0))
          : QStringLiteral("%1 under point %2 takes %3 at rest, with %4: %5")
                .arg(named.name, option.points[pick]->name,
                     inKn(highestAtRest(option, *settled, trimM, pick)), factorWords(limits, false),
                     inKn(use.value * 1000.0));
  text += std::isnan(named.limit) ? QStringLiteral("; no limit is stated for it")
                                  : QStringLiteral("; it may take %1").arg(inKn(use.limit * 1000.0));
  if (!secondary || use.limit * 1000.0 < named.limit) {
    text += peopleWords(option, limits.accessory);
  }
  if (use.why == noSecondary) {
    text += QStringLiteral("; no secondary suspension is named");
  }
  finding.text = text + unknownMomentWords(option, *settled) + QStringLiteral(".");
  finding.worstFollows = !settled->build.unknown;
  return finding;
}

} // namespace

const Rule hardwareRule{"hardware", true, evaluate, nullptr, explain};

} // namespace hangbook::options
