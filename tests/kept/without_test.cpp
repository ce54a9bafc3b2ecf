// SPDX-License-Identifier: GPL-3.0-or-later
// Options of shows of which everything is known, with one thing taken out or put out of reach at a time: what
// every rule says then, in full and in brief, against what was kept.
#include <boost/test/unit_test.hpp>

#include <functional>

#include "kept/option_lines.h"
#include "kept/unlike_show.h"
#include "options/option_json.h"
#include "options/search.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Option;
using options::Snapshot;

namespace {

using catalogue::BarType;
using catalogue::CabinetType;
using catalogue::ChainType;
using catalogue::HardwareType;
using catalogue::HoistType;
using catalogue::Join;
using catalogue::PickArrangement;
using venue::Bridle;
using venue::Obstruction;
using venue::Point;
using venue::Section;
using venue::Zone;

using Without = std::function<void(Snapshot&)>;

template <class Part, class Do>
Without ofVenue(std::vector<Part> venue::Venue::*list, Do what) {
  return [=](Snapshot& show) {
    for (Part& one : show.venue.*list) {
      what(one);
    }
  };
}

template <class Part, class Do>
Without ofMaker(std::vector<Part> catalogue::Catalogue::*list, Do what) {
  return [=](Snapshot& show) {
    for (Part& one : show.catalogue.*list) {
      what(one);
    }
  };
}

template <class Do>
Without ofPicks(Do what) {
  return [=](Snapshot& show) {
    for (BarType& bar : show.catalogue.bars) {
      for (PickArrangement& one : bar.arrangements) {
        what(one);
      }
    }
  };
}

template <class Do>
Without ofJoins(Do what) {
  return [=](Snapshot& show) {
    for (catalogue::StackingTable& table : show.catalogue.tables) {
      for (Join& one : table.joins) {
        what(one);
      }
    }
  };
}

template <class Do>
Without ofHangs(Do what) {
  return [=](Snapshot& show) {
    for (calendar::Hang& one : show.show.hangs) {
      what(one);
    }
  };
}

Without house(const char* figure, double value, bool isSigned = true) {
  return [=](Snapshot& show) {
    show.show.house.push_back({QLatin1String(figure),
                               value,
                               {},
                               {},
                               isSigned ? QStringLiteral("Edda") : QString(),
                               isSigned ? QDate(2026, 12, 1) : QDate()});
  };
}

std::vector<Without> makers() {
  using catalogue::Catalogue;
  const auto cabinets = &Catalogue::cabinets;
  const auto bars = &Catalogue::bars;
  const auto hoists = &Catalogue::hoists;
  const auto chains = &Catalogue::chains;
  const auto hardware = &Catalogue::hardware;
  return {
      ofMaker(cabinets, [](CabinetType& t) { t.mass.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.centreOfGravity.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.nextPin.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.outline.clear(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.outline.resize(2); }),
      ofMaker(cabinets, [](CabinetType& t) { t.width.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.rearContact.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.pins.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.chainEye.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.faceArea.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.forceCoefficient.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.coverLowest.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.coverHighest.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.throwDistance.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.levelAtOneMetre.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.coverAcross.reset(); }),
      ofMaker(cabinets, [](CabinetType& t) { t.coversAudience = false; }),
      ofMaker(cabinets, [](CabinetType& t) { t.tolerances = {}; }),
      ofMaker(bars, [](BarType& t) { t.headMass.reset(); }),
      ofMaker(bars, [](BarType& t) { t.headCentreOfGravity.reset(); }),
      ofMaker(bars, [](BarType& t) { t.tiltAxis.reset(); }),
      ofMaker(bars, [](BarType& t) { t.tiltTravel.reset(); }),
      ofMaker(bars, [](BarType& t) { t.panTravel.reset(); }),
      ofMaker(bars, [](BarType& t) { t.swingLimit.reset(); }),
      ofMaker(bars, [](BarType& t) { t.tiltStep.reset(); }),
      ofMaker(bars, [](BarType& t) { t.tiltStep = degrees(0); }),
      ofMaker(bars, [](BarType& t) { t.frameMass.reset(); }),
      ofMaker(bars, [](BarType& t) { t.frameCentreOfGravity.reset(); }),
      ofMaker(bars, [](BarType& t) { t.stackPin.reset(); }),
      ofMaker(bars, [](BarType& t) { t.chainAnchor.reset(); }),
      ofMaker(bars, [](BarType& t) { t.datum.reset(); }),
      ofMaker(bars, [](BarType& t) { t.outline.clear(); }),
      ofMaker(bars, [](BarType& t) { t.width.reset(); }),
      ofMaker(bars, [](BarType& t) { t.hoistOffsetLimit.reset(); }),
      ofMaker(bars, [](BarType& t) { t.hoistOffsetLimit = metres(5); }),
      ofMaker(bars, [](BarType& t) { t.tolerances = {}; }),
      ofPicks([](PickArrangement& p) { p.spacing.reset(); }),
      ofPicks([](PickArrangement& p) { p.front.reset(); }),
      ofPicks([](PickArrangement& p) { p.rear.reset(); }),
      ofPicks([](PickArrangement& p) { p.rear = p.front; }),
      ofPicks([](PickArrangement& p) { p.only.reset(); }),
      ofPicks([](PickArrangement& p) { p.limit.reset(); }),
      ofPicks([](PickArrangement& p) { p.mostCabinets.reset(); }),
      ofPicks([](PickArrangement& p) { p.mostCabinets = 1; }),
      ofPicks([](PickArrangement& p) { p.limitIncludesFactors = !p.limitIncludesFactors; }),
      ofMaker(hoists, [](HoistType& t) { t.limit.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.bodyMass.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.bodyClimbs.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.bodyClimbs = !*t.bodyClimbs; }),
      ofMaker(hoists, [](HoistType& t) { t.chainMass.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.chainBagMass.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.chainLength.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.closedLength.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.speed.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.hoistingClass.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.holdsWithoutSecondary.reset(); }),
      ofMaker(hoists, [](HoistType& t) { t.holdsWithoutSecondary = !*t.holdsWithoutSecondary; }),
      ofMaker(chains, [](ChainType& t) { t.pitch.reset(); }),
      ofMaker(chains, [](ChainType& t) { t.fixedLength.reset(); }),
      ofMaker(chains, [](ChainType& t) { t.links.reset(); }),
      ofMaker(chains, [](ChainType& t) { t.links = 3; }),
      ofMaker(chains, [](ChainType& t) { t.limit.reset(); }),
      ofMaker(chains, [](ChainType& t) { t.mass.reset(); }),
      ofMaker(chains, [](ChainType& t) { t.limitIncludesFactors = !t.limitIncludesFactors; }),
      ofMaker(chains, [](ChainType& t) { t.discardStretchPercent.reset(); }),
      ofMaker(chains, [](ChainType& t) { t.pitchTolerance.reset(); }),
      ofMaker(hardware, [](HardwareType& t) { t.limit.reset(); }),
      ofMaker(hardware, [](HardwareType& t) { t.mass.reset(); }),
      ofMaker(hardware, [](HardwareType& t) { t.length.reset(); }),
      ofMaker(hardware, [](HardwareType& t) { t.stiffness.reset(); }),
      ofMaker(hardware, [](HardwareType& t) { t.designFactor.reset(); }),
      ofMaker(hardware, [](HardwareType& t) { t.length = metres(0); }),
      [](Snapshot& show) { show.catalogue.chains.clear(); },
      [](Snapshot& show) { show.catalogue.hardware.clear(); },
      [](Snapshot& show) { show.catalogue.carts.clear(); },
      ofJoins([](Join& j) { j.angles.clear(); }),
      ofJoins([](Join& j) { j.angles.push_back(degrees(-1.25)); }),
      ofJoins([](Join& j) { j.travel.reset(); }),
      ofJoins([](Join& j) { j.pinLimit.reset(); }),
      ofJoins([](Join& j) { j.contactLimit.reset(); }),
      ofJoins([](Join& j) { j.stopLimit.reset(); }),
      ofJoins([](Join& j) { j.sideShare.reset(); }),
      ofJoins([](Join& j) { j.opensTo.reset(); }),
      ofJoins([](Join& j) { j.opensTo = degrees(2); }),
      ofJoins([](Join& j) { j.limitIncludesFactors = !j.limitIncludesFactors; }),
  };
}

std::vector<Without> rooms() {
  using venue::Venue;
  return {
      ofVenue(&Venue::points, [](Point& p) { p.capacity.reset(); }),
      ofVenue(&Venue::points, [](Point& p) { p.basis = catalogue::Basis::unknown; }),
      ofVenue(&Venue::points, [](Point& p) { p.basis = catalogue::Basis::dynamic; }),
      ofVenue(&Venue::points, [](Point& p) { p.zone.clear(); }),
      ofVenue(&Venue::points, [](Point& p) { p.zone = QStringLiteral("nowhere"); }),
      ofVenue(&Venue::points, [](Point& p) { p.source = {}; }),
      ofVenue(&Venue::points, [](Point& p) { p.y += metres(0.37); }),
      ofVenue(&Venue::points, [](Point& p) { p.z = metres(inMetres(p.z) + 0.1 * inMetres(p.y)); }),
      [](Snapshot& show) { show.venue.points.pop_back(); },
      ofVenue(&Venue::zones, [](Zone& z) { z.capacity.reset(); }),
      ofVenue(&Venue::zones, [](Zone& z) { z.basis = catalogue::Basis::unknown; }),
      ofVenue(&Venue::zones, [](Zone& z) { z.basis = catalogue::Basis::dynamic; }),
      ofVenue(&Venue::zones, [](Zone& z) { z.othersLoad.reset(); }),
      ofVenue(&Venue::zones, [](Zone& z) { z.othersLoad = kilonewtons(0); }),
      ofVenue(&Venue::zones, [](Zone& z) { z.othersBy.clear(); }),
      ofVenue(&Venue::zones, [](Zone& z) { z.othersOn = {}; }),
      [](Snapshot& show) { show.venue.zones.clear(); },
      ofVenue(&Venue::bridles, [](Bridle& b) { b.tolerance.reset(); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.shackle.clear(); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.steels.clear(); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.points.append(QStringLiteral("nowhere")); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.points = b.points.mid(1, 1); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.tolerance = metres(0.001); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.x.reset(); }),
      ofVenue(&Venue::bridles, [](Bridle& b) { b.z += metres(9); }),
      [](Snapshot& show) { show.venue.lowSteel.reset(); },
      [](Snapshot& show) { show.venue.leastTrim = metres(7); },
      [](Snapshot& show) { show.venue.mostTrim = metres(5); },
      [](Snapshot& show) {
        show.venue.obstructions.push_back(
            {QStringLiteral("truss"), metres(-9), metres(9), metres(-19), metres(19), metres(7.6)});
      },
      [](Snapshot& show) { show.venue.obstructions.clear(); },
      [](Snapshot& show) { show.venue.sections.clear(); },
      ofVenue(&Venue::sections, [](Section& s) { s.earHeight.reset(); }),
      ofVenue(&Venue::sections, [](Section& s) { s.profile.resize(1); }),
      ofVenue(&Venue::sections, [](Section& s) { s.yFrom.reset(); }),
      ofVenue(&Venue::sections, [](Section& s) { s.frontX.reset(); }),
      ofVenue(&Venue::sections, [](Section& s) { s.bearing.reset(); }),
      ofVenue(&Venue::sections, [](Section& s) { s.width.reset(); }),
      ofVenue(&Venue::sections, [](Section& s) { s.radius.reset(); }),
      ofVenue(&Venue::sections, [](Section& s) { s.radius = metres(0.5); }),
      [](Snapshot& show) { show.venue.outdoors.reset(); },
      [](Snapshot& show) { show.venue.outdoors = !*show.venue.outdoors; },
      [](Snapshot& show) { show.show.wind.reset(); },
      [](Snapshot& show) { show.show.wind = metresPerSecond(0); },
      [](Snapshot& show) { show.show.wind = metresPerSecond(60); },
      [](Snapshot& show) { show.show.windBasis = calendar::WindBasis::mean; },
      [](Snapshot& show) { show.show.windAveraging.reset(); },
      [](Snapshot& show) { show.show.windHeight.reset(); },
      [](Snapshot& show) { show.show.windHeight = metres(1); },
      [](Snapshot& show) { show.show.peopleBeneath.reset(); },
      [](Snapshot& show) { show.show.peopleBeneath = !*show.show.peopleBeneath; },
      [](Snapshot& show) { show.show.temperature.reset(); },
      [](Snapshot& show) { show.show.humidity.reset(); },
      [](Snapshot& show) { show.show.pressure.reset(); },
      [](Snapshot& show) { show.show.awayFrom = {}; },
      [](Snapshot& show) { show.show.awayTo = {}; },
      [](Snapshot& show) { show.choices.clear(); },
      [](Snapshot& show) { show.otherChoices.clear(); },
      [](Snapshot& show) { show.units.clear(); },
      [](Snapshot& show) { show.examinations.clear(); },
      [](Snapshot& show) { show.examinationRules.clear(); },
      [](Snapshot& show) { show.show.hangs.pop_back(); },
      ofHangs([](calendar::Hang& h) { h.leastTrim.reset(); }),
      ofHangs([](calendar::Hang& h) { h.cableMass.reset(); }),
      ofHangs([](calendar::Hang& h) { h.wetMass.reset(); }),
      ofHangs([](calendar::Hang& h) { h.rigging.clear(); }),
      ofHangs([](calendar::Hang& h) { h.rigging.append(QStringLiteral("nothing of the kind")); }),
      ofHangs([](calendar::Hang& h) { h.secondary.clear(); }),
      ofHangs([](calendar::Hang& h) { h.secondarySlack.reset(); }),
      ofHangs([](calendar::Hang& h) { h.secondarySlack = metres(0); }),
      ofHangs([](calendar::Hang& h) { h.secondarySlack = metres(0.9); }),
      ofHangs([](calendar::Hang& h) { h.pan = degrees(-9); }),
      ofHangs([](calendar::Hang& h) { h.mirrors.clear(); }),
      ofHangs([](calendar::Hang& h) { h.sections = {QStringLiteral("no such section")}; }),
      house("working-coefficients", 2),
      house("hardware-by-serial", 1),
      house("mass-doubt", std::nan("")),
      house("length-doubt", std::nan("")),
      house("pitch-doubt", 40),
      house("chain-wear", 30),
      house("mass-doubt", 35),
      house("hoist-difference", 3),
      house("dynamic-factor", 1.9, false),
      house("scale-doubt", -1),
  };
}

/// Up to three options with a setting, of unlike picks and chains where there are.
std::vector<const Option*> someOf(const std::vector<Option>& all) {
  std::vector<const Option*> some;
  for (const Option& option : all) {
    if (!option.setting || some.size() == 3) {
      continue;
    }
    const bool another = std::ranges::none_of(some, [&](const Option* one) {
      return one->key.picks == option.key.picks &&
             one->setting->mark.has_value() == option.setting->mark.has_value();
    });
    if (another) {
      some.push_back(&option);
    }
  }
  return some;
}

void judged(Line& line, const Snapshot& show, const Option& option) {
  try {
    const Option now = options::judge(show, option.key, *option.setting);
    line.word(letters(now));
    add(line, QJsonValue(toJson(now)));
  } catch (const Error& error) {
    line.word(error.what());
    line.word(error.place());
  }
}

void inBrief(Line& line, const Snapshot& show) {
  try {
    const options::ShowOptions found = options::decide(show, QStringLiteral("left"), {}, 1, true);
    for (const Option& each : found.hangs.front().options) {
      line.word(each.id.toStdString());
      line.word(letters(each));
      line.number(each.coveredPercent);
      line.number(each.massKg);
    }
  } catch (const Error& error) {
    line.word(error.what());
  }
}

void oneByOne(const char* file, const std::vector<Without>& ways, std::uint64_t first) {
  std::vector<Line> lines;
  std::size_t looked = 0;
  for (std::uint64_t seed = first; looked < 4; seed += 2) { // those of even number know everything
    const Snapshot show = unlikeShow(seed);
    const std::vector<Option> all = options::decide(show, QStringLiteral("left")).hangs.front().options;
    const std::vector<const Option*> some = someOf(all);
    if (some.size() < 2) {
      continue;
    }
    ++looked;
    for (std::size_t way = 0; way < ways.size(); ++way) {
      if (!looksAt(way + seed / 2)) {
        continue;
      }
      Line line(std::string("without ") + std::to_string(seed) + ' ' + std::to_string(way));
      Snapshot less = show;
      ways[way](less);
      for (const Option* option : some) {
        judged(line, less, *option);
      }
      if ((way + seed / 2) % 9 == 0 && all.size() < 30) {
        inBrief(line, less);
      }
      lines.push_back(line);
    }
  }
  compareWithKept(lines, file);
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(without_each_of_the_makers_figures_as_kept) {
  oneByOne("without_makers.txt", makers(), 300);
}

BOOST_AUTO_TEST_CASE(without_each_figure_of_venue_and_show_as_kept) {
  oneByOne("without_room.txt", rooms(), 320);
}

BOOST_AUTO_TEST_SUITE_END()
