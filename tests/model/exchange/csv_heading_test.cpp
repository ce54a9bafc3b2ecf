// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <string>
#include <tuple>
#include <vector>

#include "exchange/csv_heading.h"

using namespace hangbook::exchange;
namespace data = boost::unit_test::data;

namespace {

// written -> name, unit, short name, its unit
using Sample = std::tuple<std::string, std::string, std::string, std::string, std::string>;
const std::vector<Sample> samples = {
    {"mass", "mass", "", "mass", ""},
    {"mass [kg]", "mass", "kg", "mass", "kg"},
    {"mass(kg)", "mass", "kg", "mass", "kg"},
    {"  Mass  [ lb ] ", "mass", "lb", "mass", "lb"},
    {"mass_kg", "mass_kg", "", "mass", "kg"},
    {"MASS_KG", "mass_kg", "", "mass", "kg"},
    {"Low steel, ft", "low_steel", "ft", "low_steel", "ft"},
    {"Low steel, in", "low_steel", "in", "low_steel", "in"},
    {"low-steel", "low_steel", "", "low_steel", ""},
    {"Low \u00A0_- steel", "low_steel", "", "low_steel", ""},
    {"load_in", "load_in", "", "load_in", ""},
    {"load-in", "load_in", "", "load_in", ""},
    {"level at 1 m", "level_at_1_m", "", "level_at_1_m", ""},
    {"name (short)", "name_(short)", "", "name_(short)", ""},
    {"capacity (ton)", "capacity", "ton", "capacity", "ton"},
    {"capacity [stone]", "capacity", "stone", "capacity", "stone"},
    {"temperature (°C)", "temperature", "°C", "temperature", "°C"},
    {"speed [m/min]", "speed", "m/min", "speed", "m/min"},
    {"x, y", "x,_y", "", "x,_y", ""},
    {"[kg]", "[kg]", "", "[kg]", ""},
    {"_kg", "kg", "", "kg", ""},
    {"GRÖSSE", "grösse", "", "grösse", ""},
    {"", "", "", "", ""},
};

} // namespace

BOOST_AUTO_TEST_SUITE(csv_heading)

BOOST_DATA_TEST_CASE(a_heading_is_taken_apart, data::make(samples), written, name, unit, shortName,
                     shortUnit) {
  const CsvHeading heading = readHeading(QString::fromStdString(written));
  BOOST_TEST(heading.name.toStdString() == name);
  BOOST_TEST(heading.unit.toStdString() == unit);
  BOOST_TEST(heading.shortName.toStdString() == shortName);
  BOOST_TEST(heading.shortUnit.toStdString() == shortUnit);
}

BOOST_AUTO_TEST_SUITE_END()
