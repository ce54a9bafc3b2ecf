// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/air.h"

#include <cmath>

namespace hangbook::options {

double airAbsorption(double frequency, double temperature, double humidity, double pressure) {
  constexpr double reference = 293.15;   // K, 20 °C
  constexpr double triplePoint = 273.16; // K, of water
  constexpr double referencePressure = 101.325;
  const double kelvin = temperature + 273.15;
  const double warmth = kelvin / reference;
  const double pressureShare = pressure / referencePressure;

  const double saturation = std::pow(10.0, -6.8346 * std::pow(triplePoint / kelvin, 1.261) + 4.6151);
  const double molar = humidity * saturation / pressureShare; // % of water vapour
  const double relaxOxygen = pressureShare * (24.0 + 4.04e4 * molar * (0.02 + molar) / (0.391 + molar));
  const double relaxNitrogen =
      pressureShare / std::sqrt(warmth) *
      (9.0 + 280.0 * molar * std::exp(-4.170 * (std::pow(warmth, -1.0 / 3.0) - 1.0)));

  const double square = frequency * frequency;
  const double classical = 1.84e-11 / pressureShare * std::sqrt(warmth);
  const double oxygen = 0.01275 * std::exp(-2239.1 / kelvin) / (relaxOxygen + square / relaxOxygen);
  const double nitrogen = 0.1068 * std::exp(-3352.0 / kelvin) / (relaxNitrogen + square / relaxNitrogen);
  return 8.686 * square * (classical + std::pow(warmth, -2.5) * (oxygen + nitrogen));
}

double spreadingLoss(double from, double to) {
  return 20.0 * std::log10(to / from);
}

} // namespace hangbook::options
