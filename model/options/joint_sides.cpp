// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/joint_sides.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {
namespace {

constexpr double evenShare = 0.5;

double widthOf(const catalogue::CabinetType& cabinet) {
  return cabinet.width ? inMetres(*cabinet.width) : notKnown;
}

} // namespace

double sideShare(const Case& option, const catalogue::Join& join) {
  const double share = join.sideShare ? *join.sideShare : option.weight->jointSide.value;
  return share >= evenShare && share <= 1.0 ? share : notKnown;
}

double usableOf(const Case& option, const std::optional<Force>& limit) {
  return limit ? inNewtons(*limit) * option.weight->accessory.value : notKnown;
}

double sidesApart(const Case& option, std::size_t element) {
  const double own = widthOf(*option.cabinets[element]);
  if (element == 0) {
    return own;
  }
  const double above = widthOf(*option.cabinets[element - 1]);
  return std::isnan(own) ? own : std::min(above, own); // one that is not known stays so
}

} // namespace hangbook::options
