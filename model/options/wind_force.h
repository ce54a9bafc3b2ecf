// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include <QStringList>

#include "hang/gust.h"
#include "options/weight_limits.h"

/// The force of a level wind from any direction on the whole hang. Each flat face of a body pushes along the
/// wind with ρ v²/2 × force coefficient × the area that it shows: its area × |cos| of the angle between its
/// normal and the wind. Faces lie in pairs (front and back, left and right, top and bottom), of which one
/// meets the wind. So force and moment from a direction θ are Σ wₖ |cos(θ − φₖ)| over the pairs: sinusoids
/// between the directions at which one pair stands edge-on, and their greatest is had in closed form.
/// Left out: head, hoists, chains and cables; shelter of one body by another; lift.
namespace hangbook::options {

/// ρ of EN 1991-1-4 § 4.5, kg/m³.
inline constexpr double airDensity = 1.25;

/// q = ρ v²/2, N/m².
double gustPressure(double metresPerSecond);

/// One pair of faces.
struct WindFace {
  double towardsDeg{}; ///< its normal seen from above, from the hang's forward to its left
  double push{};       ///< N at 1 N/m² in a wind along that normal
  double below{};      ///< of the picks, where it acts, m
};

struct FromDirection {
  double value{};
  double fromDeg{}; ///< that the wind comes from: 0 in front, 90 from the hang's left
};

class WindForce {
public:
  void add(const WindFace& face);

  double forceFrom(double deg) const; ///< N at 1 N/m²
  double momentFrom(double deg) const; ///< N·m at 1 N/m², about the level of the picks; below 0 from above it
  FromDirection greatestForce() const;
  /// The greatest part of the moment, either way round, that lies in the upright plane of `alongDeg`.
  FromDirection greatestMomentAlong(double alongDeg) const;
  /// At 1 N/m², either way: the greatest part of the force that lies in the upright plane of `forward` (a
  /// unit vector seen from above) and square to it, and of the moments in these planes about the level
  /// `above` below the picks.
  hang::SidePush greatestBelow(double above, hang::Vec2 forward) const;

  QStringList missing;               ///< in words; the figures are then those of what is known
  std::vector<hang::SidePush> below; ///< on what hangs below each joint, at 1 N/m²

private:
  /// Faces that stand alike, together.
  struct Pair {
    double x{}; ///< unit normal seen from above
    double y{};
    double push{};   ///< N at 1 N/m²
    double moment{}; ///< N·m at 1 N/m²
  };
  /// A stretch between two directions at which a pair stands edge-on: there force and moment are one sinusoid
  /// each, V · (cos θ, sin θ).
  struct Stretch {
    double fromDeg{};
    double forceX{};
    double forceY{};
    double momentX{};
    double momentY{};
  };
  std::vector<Stretch> stretches() const;

  FromDirection greatest() const;
  FromDirection momentAlong(double alongDeg) const;

  std::vector<Pair> pairs_;
  // Asked for again and again while nothing is added.
  mutable std::optional<FromDirection> greatest_;
  mutable std::optional<std::pair<double, FromDirection>> along_; ///< degrees, and what is there
};

/// Bodies: each cabinet (its face area and force coefficient; sides and top as its outline and width show
/// them, with the same coefficient) and the bar's frame (the house's coefficient), each acting at the middle
/// of its outline, the frame at its centre of gravity.
WindForce windForce(const Case& option, const Settled& settled);
/// The same where a search keeps it, else worked out into `here`.
const WindForce& windForce(const Case& option, const Settled& settled, std::optional<WindForce>& here);

} // namespace hangbook::options
