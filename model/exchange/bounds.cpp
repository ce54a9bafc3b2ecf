// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/bounds.h"

#include <algorithm>
#include <array>
#include <limits>
#include <string>
#include <string_view>

#include "quantity/text.h"

namespace hangbook::exchange {
namespace {

constexpr double noEnd = std::numeric_limits<double>::max();

// The one table. Wide on purpose: they catch kilograms typed as grams, not unusual gear.
constexpr std::array table = {
    Bounds{Bound::any, -noEnd, noEnd, ""},
    Bounds{Bound::pieceMass, 0, 500, "kg"},       // hardware, chain bag, cable, wet cloth
    Bounds{Bound::stackedMass, 0.1, 5000, "kg"},  // cabinet, bar, hoist, cart
    Bounds{Bound::place, -10, 10, "m"},           // in a cabinet's or bar's own frame
    Bounds{Bound::size, 0.01, 20, "m"},           // of a cabinet, bar or cart
    Bounds{Bound::smallLength, 0, 20, "m"},       // hardware, fixed length, hoist closed
    Bounds{Bound::chainLength, 0.5, 200, "m"},    // a hoist's
    Bounds{Bound::loomLength, 0, 200, "m"},       // and of other hardware, which its line holds to 20 m
    Bounds{Bound::pitch, 0.001, 1, "m"},          // of links
    Bounds{Bound::venuePlace, -1000, 1000, "m"},  // along and across a venue
    Bounds{Bound::rowLength, 0.5, 1000, "m"},     // of an audience section
    Bounds{Bound::height, -100, 300, "m"},        // above a venue's datum
    Bounds{Bound::limit, 1, 2'000'000, "N"},      // of a maker, up to about 200 t
    Bounds{Bound::force, 0, 2'000'000, "N"},      // up to about 200 t
    Bounds{Bound::stiffness, 1000, 1e9, "N"},     // E·A of a steel or sling
    Bounds{Bound::designFactor, 1, 50, ""},       // breaking force ÷ working load limit
    Bounds{Bound::chainMass, 0.001, 50, "kg/m"},  //
    Bounds{Bound::hoistSpeed, 0.001, 2, "m/s"},   //
    Bounds{Bound::wind, 0, 100, "m/s"},           //
    Bounds{Bound::averaging, 0.1, 3600, "s"},     // of a wind
    Bounds{Bound::angle, -180, 180, "°"},         //
    Bounds{Bound::step, 0.01, 45, "°"},           // of a bar's tilt
    Bounds{Bound::cover, -90, 90, "°"},           //
    Bounds{Bound::across, 1, 180, "°"},           // from left to right
    Bounds{Bound::level, 0, 200, "dB"},           //
    Bounds{Bound::area, 0.0001, 50, "m²"},        //
    Bounds{Bound::coefficient, 0.01, 10, ""},     //
    Bounds{Bound::share, 0.5, 1, ""},             // the more loaded of two sides
    Bounds{Bound::stretch, 0.01, 50, "%"},        //
    Bounds{Bound::throwDistance, 0.5, 2000, "m"}, //
    Bounds{Bound::temperature, -60, 60, "°C"},    //
    Bounds{Bound::humidity, 0, 100, "%"},         //
    Bounds{Bound::pressure, 50, 110, "kPa"},      // of the air
    Bounds{Bound::latitude, -90, 90, "°"},        //
    Bounds{Bound::longitude, -180, 180, "°"},     //
    Bounds{Bound::links, 1, 100'000, ""},         //
    Bounds{Bound::pieces, 0, 1000, ""},           // cabinets in a stack, places on a cart
    Bounds{Bound::carried, 1, 1000, ""},          // by one cart
    Bounds{Bound::months, 1, 600, ""},            // between examinations
    Bounds{Bound::uses, 1, 100'000, ""},          // between examinations
    Bounds{Bound::hours, 0.1, 100'000, "h"},      // between examinations
    Bounds{Bound::batch, 1, 100'000, ""},         // pieces of a counted batch
    Bounds{Bound::weighed, 0.001, 5000, "kg"},    // one unit, a shackle too
    Bounds{Bound::payload, 1, 100'000, "kg"},     // of a truck
};

} // namespace

std::span<const Bounds> allBounds() {
  return table;
}

const Bounds& boundsOf(Bound bound) {
  return *std::ranges::find(table, bound, &Bounds::bound);
}

QString rangeText(const Bounds& bounds) {
  const bool newtons = std::string_view(bounds.unit) == "N"; // people think in kN
  const double scale = newtons ? 1000.0 : 1.0;
  const std::string unit = newtons ? "kN" : bounds.unit;
  return QString::fromStdString(printNumber(bounds.low / scale) + " to " + printNumber(bounds.high / scale) +
                                (unit.empty() ? "" : " " + unit));
}

QString complaint(Bound bound, double figure) {
  const Bounds& bounds = boundsOf(bound);
  return figure >= bounds.low && figure <= bounds.high ? QString() : rangeText(bounds);
}

} // namespace hangbook::exchange
