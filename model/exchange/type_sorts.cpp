// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/cabling_sorts.h"
#include "exchange/parts.h"
#include "exchange/stacking_sorts.h"

namespace hangbook::exchange {
namespace {

using namespace catalogue;

constexpr std::array classes = {std::pair{HoistingClass::hc1, "HC1"}, std::pair{HoistingClass::hc2, "HC2"},
                                std::pair{HoistingClass::hc3, "HC3"}, std::pair{HoistingClass::hc4, "HC4"}};
constexpr std::array hardwareKinds = {std::pair{HardwareKind::shackle, "shackle"},
                                      std::pair{HardwareKind::sling, "sling"},
                                      std::pair{HardwareKind::clip, "clip"},
                                      std::pair{HardwareKind::pin, "pin"},
                                      std::pair{HardwareKind::secondarySteel, "secondary steel"},
                                      std::pair{HardwareKind::loom, "loom"}};

template <class Type>
QString nameOf(const Type& type) {
  return type.name;
}

/// A type's name and maker in front of `rest`, its source behind.
template <class Type>
Columns<Type> typeColumns(Columns<Type> rest) {
  Columns<Type> all = {name<Type>("name", HANGBOOK_FIELD(name)), text<Type>("maker", HANGBOOK_FIELD(maker))};
  all.insert(all.end(), rest.begin(), rest.end());
  all.push_back(text<Type>("source", HANGBOOK_FIELD(source.text)));
  all.push_back(date<Type>("source date", HANGBOOK_FIELD(source.date)));
  return all;
}

template <class Type>
std::unique_ptr<Sort> sortOf(const char* word, Columns<Type> rest, Register<Type> Work::*registered,
                             const std::vector<Type>& (*listOf)(const Data&),
                             std::function<void(Work&, const Type&, const At&)> check = {}) {
  auto handling = recordHandling<Type>(registered, nameOf<Type>, listOf);
  handling.check = std::move(check);
  return std::make_unique<SortOf<Type>>(word, typeColumns<Type>(std::move(rest)), std::move(handling));
}

std::unique_ptr<Sort> cabinetSort() {
  using Line = CabinetType;
  return sortOf<Line>(
      "cabinet",
      {
          text<Line>("family", HANGBOOK_FIELD(family)),
          figure<Line>("mass", "kg", HANGBOOK_FIELD(mass), Bound::stackedMass),
          place<Line>("centre of gravity", HANGBOOK_FIELD(centreOfGravity)),
          place<Line>("next pin", HANGBOOK_FIELD(nextPin)),
          places<Line>("outline", HANGBOOK_FIELD(outline)),
          figure<Line>("width", "m", HANGBOOK_FIELD(width), Bound::size),
          place<Line>("chain eye", HANGBOOK_FIELD(chainEye)),
          place<Line>("rear contact", HANGBOOK_FIELD(rearContact)),
          twoPlaces<Line>("pins", HANGBOOK_FIELD(pins)),
          yesNo<Line>("covers audience", HANGBOOK_FIELD(coversAudience)),
          yesNo<Line>("downfill", HANGBOOK_FIELD(downfill)),
          figure<Line>("cover lowest", "°", HANGBOOK_FIELD(coverLowest), Bound::cover),
          figure<Line>("cover highest", "°", HANGBOOK_FIELD(coverHighest), Bound::cover),
          figure<Line>("cover across", "°", HANGBOOK_FIELD(coverAcross), Bound::across),
          figure<Line>("throw", "m", HANGBOOK_FIELD(throwDistance), Bound::throwDistance),
          number<Line>("level at 1 m", "dB", HANGBOOK_FIELD(levelAtOneMetre), Bound::level),
          number<Line>("face area", "m²", HANGBOOK_FIELD(faceArea), Bound::area),
          number<Line>("force coefficient", "", HANGBOOK_FIELD(forceCoefficient), Bound::coefficient),
          figure<Line>("engagement", "m", HANGBOOK_FIELD(engagement), Bound::smallLength),
          figure<Line>("mass tolerance", "kg", HANGBOOK_FIELD(tolerances.mass), Bound::pieceMass),
          figure<Line>("centre tolerance", "m", HANGBOOK_FIELD(tolerances.centre), Bound::smallLength),
          figure<Line>("place tolerance", "m", HANGBOOK_FIELD(tolerances.place), Bound::smallLength),
      },
      &Work::cabinets, [](const Data& data) -> const std::vector<Line>& { return data.catalogue.cabinets; },
      [](Work&, const Line& line, const At& at) {
        if (line.coverLowest && line.coverHighest && *line.coverLowest >= *line.coverHighest) {
          at.fault("cover highest", at.cell("cover highest"), "an angle above the cover's lowest");
        }
      });
}

std::unique_ptr<Sort> barSort() {
  using Line = BarType;
  return sortOf<Line>(
      "bar",
      {
          figure<Line>("head mass", "kg", HANGBOOK_FIELD(headMass), Bound::stackedMass),
          place<Line>("head centre of gravity", HANGBOOK_FIELD(headCentreOfGravity)),
          place<Line>("tilt axis", HANGBOOK_FIELD(tiltAxis)),
          travel<Line>("tilt travel", HANGBOOK_FIELD(tiltTravel)),
          travel<Line>("pan travel", HANGBOOK_FIELD(panTravel)),
          figure<Line>("swing limit", "°", HANGBOOK_FIELD(swingLimit), Bound::angle),
          figure<Line>("tilt step", "°", HANGBOOK_FIELD(tiltStep), Bound::step),
          figure<Line>("frame mass", "kg", HANGBOOK_FIELD(frameMass), Bound::stackedMass),
          place<Line>("frame centre of gravity", HANGBOOK_FIELD(frameCentreOfGravity)),
          place<Line>("stack pin", HANGBOOK_FIELD(stackPin)),
          place<Line>("chain anchor", HANGBOOK_FIELD(chainAnchor)),
          place<Line>("datum", HANGBOOK_FIELD(datum)),
          places<Line>("outline", HANGBOOK_FIELD(outline)),
          figure<Line>("width", "m", HANGBOOK_FIELD(width), Bound::size),
          figure<Line>("hoist offset limit", "m", HANGBOOK_FIELD(hoistOffsetLimit), Bound::smallLength),
          figure<Line>("mass tolerance", "kg", HANGBOOK_FIELD(tolerances.mass), Bound::pieceMass),
          figure<Line>("centre tolerance", "m", HANGBOOK_FIELD(tolerances.centre), Bound::smallLength),
          figure<Line>("place tolerance", "m", HANGBOOK_FIELD(tolerances.place), Bound::smallLength),
      },
      &Work::bars, [](const Data& data) -> const std::vector<Line>& { return data.catalogue.bars; });
}

std::unique_ptr<Sort> hoistSort() {
  using Line = HoistType;
  return sortOf<Line>(
      "hoist",
      {
          figure<Line>("limit", "kN", HANGBOOK_FIELD(limit), Bound::limit),
          figure<Line>("body mass", "kg", HANGBOOK_FIELD(bodyMass), Bound::stackedMass),
          yesNo<Line>("body climbs", HANGBOOK_FIELD(bodyClimbs)),
          figure<Line>("chain mass", "kg/m", HANGBOOK_FIELD(chainMass), Bound::chainMass),
          figure<Line>("chain bag mass", "kg", HANGBOOK_FIELD(chainBagMass), Bound::pieceMass),
          figure<Line>("chain length", "m", HANGBOOK_FIELD(chainLength), Bound::chainLength),
          figure<Line>("closed length", "m", HANGBOOK_FIELD(closedLength), Bound::size),
          figure<Line>("speed", "m/s", HANGBOOK_FIELD(speed), Bound::hoistSpeed),
          word<Line>("hoisting class", HANGBOOK_FIELD(hoistingClass), classes),
          yesNo<Line>("holds without secondary", HANGBOOK_FIELD(holdsWithoutSecondary)),
      },
      &Work::hoists, [](const Data& data) -> const std::vector<Line>& { return data.catalogue.hoists; });
}

std::unique_ptr<Sort> chainSort() {
  using Line = ChainType;
  return sortOf<Line>(
      "chain",
      {
          figure<Line>("pitch", "m", HANGBOOK_FIELD(pitch), Bound::pitch),
          figure<Line>("fixed length", "m", HANGBOOK_FIELD(fixedLength), Bound::smallLength),
          integer<Line>("links", HANGBOOK_FIELD(links), Bound::links),
          figure<Line>("limit", "kN", HANGBOOK_FIELD(limit), Bound::limit),
          yesNo<Line>("limit includes factors", HANGBOOK_FIELD(limitIncludesFactors)),
          figure<Line>("mass per length", "kg/m", HANGBOOK_FIELD(mass), Bound::chainMass),
          number<Line>("discard stretch", "%", HANGBOOK_FIELD(discardStretchPercent), Bound::stretch),
          figure<Line>("pitch tolerance", "m", HANGBOOK_FIELD(pitchTolerance), Bound::smallLength),
      },
      &Work::chains, [](const Data& data) -> const std::vector<Line>& { return data.catalogue.chains; });
}

std::unique_ptr<Sort> hardwareSort() {
  using Line = HardwareType;
  return sortOf<Line>(
      "hardware",
      {
          word<Line>("kind", HANGBOOK_FIELD(kind), hardwareKinds, Need::needed),
          figure<Line>("limit", "kN", HANGBOOK_FIELD(limit), Bound::limit),
          figure<Line>("mass", "kg", HANGBOOK_FIELD(mass), Bound::pieceMass),
          figure<Line>("length", "m", HANGBOOK_FIELD(length), Bound::loomLength),
          figure<Line>("stiffness", "kN", HANGBOOK_FIELD(stiffness), Bound::stiffness),
          number<Line>("design factor", "", HANGBOOK_FIELD(designFactor), Bound::designFactor),
      },
      &Work::hardware, [](const Data& data) -> const std::vector<Line>& { return data.catalogue.hardware; },
      [](Work&, const Line& line, const At& at) {
        const QString trouble = line.length && line.kind != HardwareKind::loom
                                    ? complaint(Bound::smallLength, inMetres(*line.length))
                                    : QString();
        if (!trouble.isEmpty()) {
          at.fault("length", at.cell("length"), trouble + QStringLiteral("; only a loom is longer"));
        }
      });
}

std::unique_ptr<Sort> cartSort() {
  using Line = CartType;
  return sortOf<Line>(
      "cart",
      {
          text<Line>("carries", HANGBOOK_FIELD(carries)),
          integer<Line>("most", HANGBOOK_FIELD(most), Bound::carried),
          figure<Line>("mass", "kg", HANGBOOK_FIELD(mass), Bound::stackedMass),
          figure<Line>("length", "m", HANGBOOK_FIELD(length), Bound::size),
          figure<Line>("width", "m", HANGBOOK_FIELD(width), Bound::size),
          figure<Line>("height", "m", HANGBOOK_FIELD(height), Bound::size),
          figure<Line>("deck", "m", HANGBOOK_FIELD(deck), Bound::smallLength),
          integer<Line>("high", HANGBOOK_FIELD(high), Bound::carried),
      },
      &Work::carts, [](const Data& data) -> const std::vector<Line>& { return data.catalogue.carts; },
      [](Work& work, const Line& line, const At& at) {
        mustBeKnown(at, "carries", line.carries, work.cabinets, "type of cabinet");
      });
}

} // namespace

const Sorts& typeSorts() {
  static const Sorts sorts = [] {
    Sorts made;
    made.push_back(cabinetSort());
    made.push_back(barSort());
    made.push_back(picksSort());
    made.push_back(hoistSort());
    made.push_back(chainSort());
    made.push_back(hardwareSort());
    made.push_back(cartSort());
    made.push_back(tableSort());
    made.push_back(joinSort());
    made.push_back(countSort());
    made.push_back(connectorSort());
    made.push_back(socketSort());
    made.push_back(loomEndSort());
    return made;
  }();
  return sorts;
}

} // namespace hangbook::exchange
