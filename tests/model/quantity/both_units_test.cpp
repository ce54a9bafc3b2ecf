// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences with US customary figures in brackets behind the metric ones: what is taken for a quantity, what
// is not, how it is rounded, and that the metric text is still there.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <array>
#include <cmath>
#include <optional>
#include <random>

#include "quantity/both_units.h"
#include "quantity/text.h"

using namespace hangbook;
namespace data = boost::unit_test::data;

namespace {

struct Case {
  std::string metric;
  std::string both;
};

std::ostream& operator<<(std::ostream& out, const Case& each) {
  return out << each.metric;
}

// Converted with exact factors by hand: 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, 1 lb = 0.45359237 kg.
const std::vector<Case> quantities{
    {"Point P3 carries 4.98 kN at rest; allows 5.00 kN.",
     "Point P3 carries 4.98 kN (1120 lbf) at rest; allows 5.00 kN (1124 lbf)."},
    {"6.20 m", "6.20 m (20.34 ft)"},
    {"12.3 kg", "12.3 kg (27.1 lb)"},
    {"72 km/h", "72 km/h (44.7 mph)"},
    {"at most 2 m, at least 3 m", "at most 2 m (6.56 ft), at least 3 m (9.84 ft)"},
    {"0.36 + 1.20 kN", "0.36 + 1.20 kN (80.9 + 269.8 lbf)"},
    {"6.20–7.10 m", "6.20–7.10 m (20.34–23.29 ft)"},
    {"6.20 – 7.10 m", "6.20 – 7.10 m (20.34 – 23.29 ft)"},
    {"6-8 m", "6-8 m (19.7-26.2 ft)"},
    {"between 6 and 7 m", "between 6 and 7 m (19.7 and 23.0 ft)"},
    {"From 6.5 to 7 m", "From 6.5 to 7 m (21.3 to 23.0 ft)"},
    {"1.20 to 1.80 m", "1.20 to 1.80 m (3.94 to 5.91 ft)"},
    {"12.3 ± 0.2 kg", "12.3 ± 0.2 kg (27.117 ± 0.441 lb)"},
    {"± 4 mm", "± 4 mm (± 0.157 in)"},
    {"±4 mm", "±4 mm (±0.157 in)"},
    {"moves by -1.50 m", "moves by -1.50 m (-4.92 ft)"},
    {"moves by −1.50 m", "moves by −1.50 m (−4.92 ft)"},
    {"+1.32 m", "+1.32 m (+4.33 ft)"},
    {"2 × 46 kg", "2 × 46 kg (101 lb)"},
    {"1.25 × 4.00 kN", "1.25 × 4.00 kN (899 lbf)"},
    {"mark 5 – 2.50 m", "mark 5 – 2.50 m (8.20 ft)"},
    {"raise 1 to 2.40 m", "raise 1 to 2.40 m (7.87 ft)"},
    {"pitch 22.5 mm;", "pitch 22.5 mm (0.886 in);"},
    {"(54 N/m²)", "(54 N/m² (1.13 lbf/ft²))"},
    {"3.8 kg/m of chain", "3.8 kg/m (2.55 lb/ft) of chain"},
    {"15 m/s, 4 m/min", "15 m/s (49.2 ft/s), 4 m/min (13.1 ft/min)"},
    {"1.2 t, 120 km", "1.2 t (2646 lb), 120 km (74.6 mi)"},
    {"2.5 kN·m, 40 m²", "2.5 kN·m (1844 lbf·ft), 40 m² (431 ft²)"},
    {"0.00 m and 0 kg", "0.00 m (0.00 ft) and 0 kg (0 lb)"},
    {"5 kg each.\n4 m", "5 kg (11.0 lb) each.\n4 m (13.1 ft)"},
    {"6.20\u00A0m", "6.20\u00A0m (20.34 ft)"},
    {"3 kg–4 kg", "3 kg (6.61 lb)–4 kg (8.82 lb)"},
};

const std::vector<std::string> leftAlone{"MB008 and P3",
                                         "MB-008 kg",
                                         "P3m",
                                         "-2.5°",
                                         "at 20 °C",
                                         "90 %",
                                         "1,234 kg",
                                         "12 345 kg",
                                         "1 234.5 kg",
                                         "1/2 m",
                                         "1.2.3 kg",
                                         "2027-03-20 m",
                                         "3 m³/h",
                                         "5 kN/mm",
                                         "4 mbar",
                                         "2 m-long",
                                         "10m",
                                         "v2.5 kN",
                                         "x10 m",
                                         "4 Marram bass",
                                         "12 links",
                                         "100 Hz",
                                         "6.56 ft, 27 lb",
                                         "3.5 kWh",
                                         "1,5 m",
                                         "",
                                         "kN",
                                         "#12 m",
                                         "12\u2009345 kg",
                                         "ä3 m",
                                         "5 m's",
                                         "link 12 of 40"};

BOOST_AUTO_TEST_SUITE(both_units)

BOOST_DATA_TEST_CASE(a_quantity_gets_its_other_figure_behind_it, data::make(quantities)) {
  BOOST_TEST(inBothUnits(sample.metric) == sample.both);
}

BOOST_DATA_TEST_CASE(what_is_treated_already_comes_back, data::make(quantities)) {
  BOOST_TEST(inBothUnits(sample.both) == sample.both);
}

BOOST_DATA_TEST_CASE(what_is_no_quantity_or_may_mean_two_things_is_left_alone, data::make(leftAlone)) {
  BOOST_TEST(inBothUnits(sample) == sample);
}

BOOST_AUTO_TEST_CASE(names_stay_whole) {
  const std::vector<std::string> names{"Leg steel 1.0 m", "Roundsling 4 t"};
  BOOST_TEST(inBothUnits("Leg steel 1.0 m, Roundsling 4 t: 1.0 m, 4 t", names) ==
             "Leg steel 1.0 m, Roundsling 4 t: 1.0 m (3.28 ft), 4 t (8818 lb)");
}

BOOST_AUTO_TEST_CASE(a_column_takes_the_same_figures) {
  BOOST_TEST(customaryOf("12.3", "kg").value().figure == "27.1");
  BOOST_TEST(customaryOf("12.3", "kg").value().unit == "lb");
  BOOST_TEST(customaryOf("-1.50", "m").value().figure == "-4.92");
  BOOST_TEST(customaryOf("2.163 to 2.202", "kN").value().figure == "486.3 to 495.0");
  BOOST_TEST(!customaryOf("12.3", "°"));
  BOOST_TEST(!customaryOf("12.3", "kgs"));
  BOOST_TEST(!customaryOf("–", "kg"));
  BOOST_TEST(!customaryOf("12.3 kg", "kg"));
  BOOST_TEST(customaryUnit("kN") == "lbf");
  BOOST_TEST(customaryUnit("dB").empty());
}

// Random figures in random sentences.

struct Draw {
  std::mt19937 random;

  int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(random); }
  std::string figure() {
    const int places = upTo(3);
    std::string digits = std::to_string(upTo(upTo(1) == 0 ? 20 : 99999));
    if (places > 0) {
      digits += '.';
      for (int i = 0; i < places; ++i) {
        digits += static_cast<char>('0' + upTo(9));
      }
    }
    return (upTo(5) == 0 ? "-" : "") + digits;
  }
  template <class List>
  auto one(const List& list) {
    return list[static_cast<std::size_t>(upTo(static_cast<int>(std::size(list)) - 1))];
  }
};

constexpr std::array<std::string_view, 9> someUnits = {"kg",  "m",    "kN", "mm", "km/h",
                                                       "m/s", "kg/m", "N",  "km"};

/// Takes out each " (…)" that has no bracket inside.
std::string withoutBrackets(std::string text) {
  for (std::size_t from = text.find(" ("); from != std::string::npos; from = text.find(" (", from)) {
    const std::size_t end = text.find_first_of("()", from + 2);
    if (end != std::string::npos && text[end] == ')') {
      text.erase(from, end + 1 - from);
    } else {
      ++from;
    }
  }
  return text;
}

/// Figure and unit of a text that ends in " (-12.3 unit)".
std::optional<std::array<std::string, 2>> lastInBrackets(const std::string& text) {
  const std::size_t open = text.rfind(" (");
  if (open == std::string::npos || text.back() != ')') {
    return std::nullopt;
  }
  const std::string inside = text.substr(open + 2, text.size() - open - 3);
  const std::size_t gap = inside.find(' ');
  if (gap == std::string::npos || inside.find_first_not_of("-0123456789.") != gap ||
      inside.find(')') != std::string::npos) {
    return std::nullopt;
  }
  return std::array<std::string, 2>{inside.substr(0, gap), inside.substr(gap + 1)};
}

BOOST_AUTO_TEST_CASE(the_metric_text_stays_whole_and_nothing_is_added_twice) {
  Draw draw{std::mt19937(17)};
  constexpr std::array<std::string_view, 12> words = {"at rest", "P3",   "MB008", ", ", " – ",  "mark",
                                                      "4 × ",    "from", " + ",   "±",  "2.5°", "−"};
  int changed = 0;
  for (int i = 0; i < 4000; ++i) {
    std::string text;
    for (int part = draw.upTo(6); part >= 0; --part) {
      text += draw.upTo(2) == 0 ? std::string(draw.one(words)) + " "
                                : draw.figure() + " " + std::string(draw.one(someUnits)) + " ";
    }
    const std::string both = inBothUnits(text);
    BOOST_TEST(withoutBrackets(both) == text);
    BOOST_TEST(inBothUnits(both) == both);
    changed += both != text ? 1 : 0;
  }
  BOOST_TEST(changed > 2000);
}

/// What the sentence says in brackets, by what model/quantity reads and writes alone.
template <class Quantity>
void agrees(const std::string& figure, const std::string& unit) {
  const std::string metric = figure + " " + unit;
  const std::string both = inBothUnits(metric);
  const auto found = lastInBrackets(both);
  BOOST_REQUIRE_MESSAGE(found.has_value(), both);
  const auto& [shownFigure, shownUnit] = *found;
  const std::string inBrackets = shownFigure + " " + shownUnit;
  const std::size_t mark = shownFigure.find('.');
  const int places = mark == std::string::npos ? 0 : static_cast<int>(shownFigure.size() - mark - 1);
  const double wanted = parse<Quantity>(metric).value();
  const double said = parse<Quantity>(inBrackets).value();
  const double step = parse<Quantity>("1 " + shownUnit).value() * std::pow(10.0, -places);
  BOOST_TEST(std::abs(wanted - said) <= step * 0.5000001, both);
  if (unitOf<Quantity>(UnitSystem::usCustomary) == shownUnit && figure != "-0") {
    const std::string shown = show(parse<Quantity>(metric), places, UnitSystem::usCustomary);
    BOOST_TEST((shown == inBrackets || said == 0.0), both << " is shown as " << shown);
  }
}

BOOST_AUTO_TEST_CASE(the_figures_agree_with_what_quantities_read_and_show) {
  Draw draw{std::mt19937(18)};
  for (int i = 0; i < 1000; ++i) {
    agrees<Mass>(draw.figure(), "kg");
    agrees<Length>(draw.figure(), "m");
    agrees<Length>(draw.figure(), "mm");
    agrees<Length>(draw.figure(), "km");
    agrees<Force>(draw.figure(), "kN");
    agrees<Speed>(draw.figure(), "km/h");
    agrees<Speed>(draw.figure(), "m/s");
    agrees<LinearDensity>(draw.figure(), "kg/m");
  }
}

BOOST_AUTO_TEST_CASE(figures_that_differ_by_a_step_differ_in_brackets) {
  Draw draw{std::mt19937(19)};
  for (int i = 0; i < 4000; ++i) {
    const int places = draw.upTo(3);
    const double step = std::pow(10.0, -places);
    const int whole = draw.upTo(20000);
    const std::string unit(draw.one(someUnits));
    const std::string left = show(metres(whole * step), places);
    const std::string right = show(metres((whole + 1) * step), places);
    const auto figureOf = [&](const std::string& shown) {
      return customaryOf(std::string_view(shown).substr(0, shown.find(' ')), unit).value().figure;
    };
    BOOST_TEST(std::stod(figureOf(left)) < std::stod(figureOf(right)),
               left << " and " << right << " in " << unit);
  }
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace
