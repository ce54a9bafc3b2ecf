// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/wind_force.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {
namespace {

constexpr double airDensity = 1.25; // kg/m³, EN 1991-1-4 § 4.5

/// Area of a polygon, m².
double areaOf(const std::vector<catalogue::Position>& outline) {
  double twice = 0.0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const catalogue::Position& a = outline[i];
    const catalogue::Position& b = outline[(i + 1) % outline.size()];
    twice += inMetres(a.x) * inMetres(b.z) - inMetres(b.x) * inMetres(a.z);
  }
  return 0.5 * std::abs(twice);
}

double heightOf(const std::vector<catalogue::Position>& outline) {
  const auto [low, high] = std::minmax_element(outline.begin(), outline.end(),
                                               [](const auto& a, const auto& b) { return a.z < b.z; });
  return inMetres(high->z) - inMetres(low->z);
}

/// Sums forces and their moments.
struct Sum {
  double force = 0.0;
  double moment = 0.0;
  void add(double each, double below) {
    force += each;
    moment += each * below;
  }
  Gust gust() const { return {force, force > 0.0 ? moment / force : 0.0}; }
};

} // namespace

double gustPressure(double metresPerSecond) {
  return 0.5 * airDensity * metresPerSecond * metresPerSecond;
}

WindForce windForce(const Case& option, const Settled& settled) {
  WindForce wind;
  const calendar::Show& show = option.snapshot->show;
  if (!show.wind) {
    wind.missing.append(QStringLiteral("the gust at hang height"));
    return wind;
  }
  if (show.windBasis != calendar::WindBasis::gust) {
    wind.missing.append(QStringLiteral("whether the wind stated is a gust (a mean does not serve)"));
  }
  const double pressure = gustPressure(inMetresPerSecond(*show.wind));
  double picks = 0.0;
  for (const hang::Vec3& pick : settled.layout.picks) {
    picks += pick.z / static_cast<double>(settled.layout.picks.size());
  }
  Sum front;
  Sum side;
  for (std::size_t i = 0; i < option.cabinets.size(); ++i) {
    const catalogue::CabinetType& cabinet = *option.cabinets[i];
    if (!cabinet.faceArea || !cabinet.forceCoefficient || cabinet.outline.size() < 3) {
      wind.missing.append(QStringLiteral("face area, outline or force coefficient of %1").arg(cabinet.name));
      continue;
    }
    double middle = 0.0;
    for (const hang::Vec3& corner : settled.layout.elements[i].outline) {
      middle += corner.z / static_cast<double>(settled.layout.elements[i].outline.size());
    }
    front.add(pressure * *cabinet.forceCoefficient * *cabinet.faceArea, picks - middle);
    side.add(pressure * *cabinet.forceCoefficient * areaOf(cabinet.outline), picks - middle);
  }
  const catalogue::BarType& bar = *option.bar;
  const double face = option.weight->windFace.value;
  if (bar.outline.size() < 3 || !bar.width || std::isnan(face)) {
    wind.missing.append(
        QStringLiteral("outline or width of %1, or the house's force coefficient for it").arg(bar.name));
  } else {
    const double below = picks - settled.layout.frameCg.z;
    front.add(pressure * face * heightOf(bar.outline) * inMetres(*bar.width), below);
    side.add(pressure * face * areaOf(bar.outline), below);
  }
  wind.missing.removeDuplicates();
  wind.front = front.gust();
  wind.side = side.gust();
  return wind;
}

} // namespace hangbook::options
