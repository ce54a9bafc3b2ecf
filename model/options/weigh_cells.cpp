// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/weigh_cells.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include <unsupported/Eigen/LevenbergMarquardt>
#include <unsupported/Eigen/NumericalDiff>

#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::options {
namespace {

constexpr double unknownFigure = std::numeric_limits<double>::quiet_NaN();

/// Mass and length of a piece; NaN where it is not stated.
struct PieceFigures {
  double kn = unknownFigure;
  double length = unknownFigure;
};
PieceFigures figuresOf(const Snapshot& snapshot, const QString& name) {
  const auto* type = catalogue::find(snapshot.catalogue.hardware, name);
  if (type == nullptr || !type->mass || !type->length) {
    return {};
  }
  return {inKilonewtons(weightOf(*type->mass)), inMetres(*type->length)};
}

/// By how much what the cells would read misses the readings (kN), each pick carrying so much more (kN).
struct Misses : Eigen::DenseFunctor<double> {
  Misses(const Cells& cells, const std::vector<double>& readings, std::size_t picks)
      : DenseFunctor(static_cast<int>(picks), static_cast<int>(readings.size())), cells_(&cells),
        readings_(Eigen::VectorXd::Map(readings.data(), values())) {}

  int operator()(const Eigen::VectorXd& more, Eigen::VectorXd& misses) const {
    const std::vector<double> would = cells_->with(std::array{more(0), more(inputs() - 1)});
    misses = Eigen::VectorXd::Map(would.data(), values()) - readings_;
    return 0;
  }

private:
  const Cells* cells_;
  Eigen::VectorXd readings_;
};

[[noreturn]] void notKnownAt(const Cell& cell) {
  throw Error(Trouble::notPossible, cell.leg < 0 ? "what the cell at the " + cell.name.toStdString() +
                                                       " pick carries is not known: a mass is missing"
                                                 : "what the cell in the leg to " + cell.point.toStdString() +
                                                       " reads is not known: see what the rule bridle says");
}

} // namespace

QString wordsFor(const Cell& cell) {
  return cell.leg < 0 ? cell.name : QStringLiteral("%1, leg to %2").arg(cell.name, cell.point);
}

Cells::Cells(const Snapshot& snapshot, const Option& option, CellAt at)
    : snapshot_(snapshot), option_(option) {
  paths_ = pickPaths(snapshot, option);
  if (!option.hangInput || option.pickLoads.empty() || paths_.size() != option.pickLoads.size()) {
    throw Error(Trouble::notPossible, "the loads of this option are not known");
  }
  for (std::size_t pick = 0; pick < option.pickLoads.size(); ++pick) {
    place(pick, at);
  }
}

void Cells::place(std::size_t pick, CellAt at) {
  const QString& name = option_.pickLoads[pick].name;
  const BridleResult* bridle = bridleOf(pick);
  if (at == CellAt::hook || bridle == nullptr) {
    const double here = paths_[pick].hook + (at == CellAt::hook ? 0.0 : hoistAndChain(pick));
    cells_.push_back({pick, -1, name, {}});
    computed_.push_back(here);
    if (!std::isfinite(here)) {
      notKnownAt(cells_.back());
    }
    return;
  }
  int number = 0;
  for (const BridleLegResult& leg : bridle->legs) {
    cells_.push_back({pick, number++, name, leg.point});
    computed_.push_back(leg.tensionKn);
  }
  const std::vector<double> atApex = legs(pick, 0.0, nullptr);
  for (std::size_t leg = 0; leg < bridle->legs.size(); ++leg) {
    halfKn_.at(pick).push_back(bridle->legs[leg].tensionKn - atApex[leg]);
    if (!std::isfinite(halfKn_.at(pick).back())) {
      notKnownAt(cells_[cells_.size() - bridle->legs.size() + leg]);
    }
  }
}

const BridleResult* Cells::bridleOf(std::size_t pick) const {
  const auto found = std::ranges::find(option_.bridles, option_.pickLoads[pick].name, &BridleResult::pick);
  return found == option_.bridles.end() ? nullptr : &*found;
}

double Cells::hoistAndChain(std::size_t pick) const {
  return paths_[pick].hoist + paths_[pick].chain;
}

double Cells::rigging(std::size_t pick) const {
  return paths_[pick].rigging;
}

bool Cells::inLegs() const {
  return std::ranges::any_of(cells_, [](const Cell& cell) { return cell.leg >= 0; });
}

std::vector<double> Cells::legs(std::size_t pick, double moreKn, const LegPieces* change) const {
  const BridleResult& bridle = *bridleOf(pick);
  std::vector<double> unknownLegs(bridle.legs.size(), unknownFigure);
  const double pickKn = option_.pickLoads[pick].loadKn;
  double gear = hoistAndChain(pick) + rigging(pick) + paths_[pick].halfLegs;
  std::vector<hang::BridleLeg> shape;
  for (const BridleLegResult& leg : bridle.legs) {
    const auto* point = catalogue::find(snapshot_.venue.points, leg.point);
    if (point == nullptr) {
      return unknownLegs;
    }
    shape.push_back({{inMetres(point->x), inMetres(point->y), inMetres(point->z)}, leg.lengthM});
  }
  if (change != nullptr) {
    const PieceFigures piece = figuresOf(snapshot_, change->type);
    shape[change->leg].length += change->more * piece.length;
    gear += 0.5 * change->more * piece.kn;
  }
  const double part = (pickKn + moreKn) / pickKn; // the chain leans as it did
  const hang::Vec3 load{paths_[pick].sideways[0] * part, paths_[pick].sideways[1] * part,
                        -(pickKn + moreKn + gear)};
  if (!std::isfinite(load.x + load.y + load.z) || !(load.z < 0.0)) {
    return unknownLegs;
  }
  try {
    std::vector<double> pulls;
    for (const hang::LegForce& leg : hang::settleBridle(shape, load).legs) {
      pulls.push_back(leg.tension);
    }
    return pulls;
  } catch (const Error&) {
    return unknownLegs;
  }
}

std::vector<double> Cells::with(const std::array<double, 2>& moreKn) const {
  std::vector<double> would;
  for (const Cell& cell : cells_) {
    const double more = moreKn.at(cell.pick);
    if (cell.leg < 0) {
      would.push_back(computed_[would.size()] + more);
      continue;
    }
    const auto leg = static_cast<std::size_t>(cell.leg);
    would.push_back(legs(cell.pick, more, nullptr)[leg] + halfKn_.at(cell.pick)[leg]);
  }
  return would;
}

std::array<double, 2> Cells::moreBy(const std::vector<double>& readings) const {
  std::array<double, 2> more{};
  const Misses misses(*this, readings, paths_.size());
  Eigen::NumericalDiff<Misses> withSlopes(misses);
  Eigen::VectorXd found = Eigen::VectorXd::Zero(misses.inputs());
  Eigen::LevenbergMarquardt<Eigen::NumericalDiff<Misses>>(withSlopes).minimize(found);
  std::ranges::copy(found, more.begin());
  return more;
}

std::vector<LegPieces> Cells::legChanges() const {
  std::vector<LegPieces> changes;
  for (const Cell& cell : cells_) {
    if (cell.leg < 0) {
      continue;
    }
    const auto leg = static_cast<std::size_t>(cell.leg);
    for (const HardwareCount& piece : bridleOf(cell.pick)->legs[leg].pieces) {
      changes.push_back({cell.pick, leg, piece.type, 1});
      changes.push_back({cell.pick, leg, piece.type, -1});
    }
  }
  return changes;
}

std::vector<double> Cells::with(const LegPieces& change) const {
  std::vector<double> would = computed_;
  const std::vector<double> pulls = legs(change.pick, 0.0, &change);
  for (std::size_t i = 0; i < cells_.size(); ++i) {
    if (cells_[i].pick == change.pick && cells_[i].leg >= 0) {
      const auto leg = static_cast<std::size_t>(cells_[i].leg);
      would[i] = pulls[leg] + halfKn_.at(change.pick)[leg];
      would[i] += leg == change.leg ? 0.5 * change.more * figuresOf(snapshot_, change.type).kn : 0.0;
    }
  }
  return would;
}

} // namespace hangbook::options
