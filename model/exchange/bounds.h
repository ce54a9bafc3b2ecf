// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include <QString>

namespace hangbook::exchange {

/// What a figure is a figure of, as far as its bounds go.
enum class Bound {
  any,
  pieceMass,
  stackedMass,
  place,
  size,
  smallLength,
  chainLength,
  loomLength,
  pitch,
  venuePlace,
  rowLength,
  height,
  force,
  stiffness,
  designFactor,
  limit,
  chainMass,
  hoistSpeed,
  wind,
  averaging,
  angle,
  step,
  cover,
  across,
  level,
  area,
  coefficient,
  share,
  stretch,
  throwDistance,
  temperature,
  humidity,
  pressure,
  latitude,
  longitude,
  links,
  pieces,
  carried,
  months,
  uses,
  hours,
  batch,
  weighed,
  payload,
};

/// Figures outside cannot be meant: a slip of the key or a wrong unit. In SI units, angles in degrees.
struct Bounds {
  Bound bound;
  double low;
  double high;
  const char* unit;
};

std::span<const Bounds> allBounds();
const Bounds& boundsOf(Bound bound);

/// "0.1 to 5000 kg"; forces in kN.
QString rangeText(const Bounds& bounds);

/// Empty where the figure is within its bounds, else what is expected: "0.01 to 5000 kg".
QString complaint(Bound bound, double figure);

} // namespace hangbook::exchange
