// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <functional>
#include <string>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include "exchange/hang_json.h"
#include "exchange/json_text.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "support/example_hang.h"
#include "support/random_hang.h"
#include "where.h"

using namespace hangbook;
using hangbook::testing::exampleHang;

namespace {

QByteArray exampleText() {
  QFile file(QStringLiteral(HANGBOOK_SOURCE_DIR "/tests/contract/example-hang.json"));
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

QByteArray asText(const QJsonObject& object) {
  return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

/// Replaces the first place of `from` in the example's compact text.
QJsonValue exampleWith(const char* from, const char* to) {
  QByteArray text = asText(exchange::toJson(exampleHang()));
  const qsizetype at = text.indexOf(from);
  BOOST_REQUIRE(at >= 0);
  text.replace(at, static_cast<qsizetype>(qstrlen(from)), to);
  return exchange::readJson(text);
}

std::string refusal(const QJsonValue& value) {
  try {
    exchange::hangFromJson(value);
  } catch (const Error& error) {
    BOOST_TEST((error.trouble() == Trouble::badInput));
    return error.what();
  }
  return "not refused";
}

std::string textRefusal(const QByteArray& text) {
  try {
    exchange::readJson(text);
  } catch (const Error& error) {
    BOOST_TEST((error.trouble() == Trouble::badInput));
    return error.what();
  }
  return "not refused";
}

} // namespace

BOOST_AUTO_TEST_SUITE(hang_json)

BOOST_AUTO_TEST_CASE(the_example_reads_as_the_hang_that_it_is) {
  const hang::Hang hang = exchange::hangFromJson(exchange::readJson(exampleText()));
  BOOST_TEST(asText(exchange::toJson(hang)).toStdString() ==
             asText(exchange::toJson(exampleHang())).toStdString());
  BOOST_TEST(hang.stack[1].name == "downfill");
  BOOST_TEST(hang.chain->mark == 37);
}

BOOST_AUTO_TEST_CASE(writing_and_reading_gives_the_same_hang_to_the_bit) {
  hangbook::testing::RandomHangs hangs(17);
  for (int i = 0; i < 500; ++i) {
    const hang::Hang hang = hangs.next();
    const QByteArray once = asText(exchange::toJson(hang));
    const hang::Hang back = exchange::hangFromJson(exchange::readJson(once));
    BOOST_TEST(asText(exchange::toJson(back)).toStdString() == once.toStdString());
    BOOST_TEST(back.stack[0].mass == hang.stack[0].mass);
    BOOST_TEST(back.stack[0].cg.x == hang.stack[0].cg.x);
    BOOST_TEST(back.set.panDeg == hang.set.panDeg);
  }
}

BOOST_AUTO_TEST_CASE(what_may_be_left_out_may_be_left_out) {
  const char* text = R"({"format": "hangbook.hang/1",
    "bar": {"picks": "single", "pick_m": {"x": 0, "z": 0}, "frame_mass_kg": 0, "frame_cg_m": {"x": 0, "z": 0},
            "stack_pin_m": {"x": 0, "z": 0}},
    "stack": [{"mass_kg": 10, "cg_m": {"x": -0.1, "z": -0.2}, "outline_m": [[0, 0], [0, -1], [-1, -1]],
               "joint": {"kind": "seated", "contact_m": {"x": -0.5, "z": 0}}}]})";
  const hang::Hang hang = exchange::hangFromJson(exchange::readJson(text));
  BOOST_TEST(std::get<hang::Seated>(hang.stack[0].joint).angleDeg == 0.0);
  BOOST_TEST(!hang.chain.has_value());
  BOOST_TEST(hang::solve(hang).mass == 10.0);
}

BOOST_AUTO_TEST_CASE(refusals_name_the_key_in_full) {
  const auto refused = [](const char* from, const char* to) { return refusal(exampleWith(from, to)); };
  BOOST_TEST(refused("\"mass_kg\":64", "\"mass_kg\":0") == "stack[1].mass_kg: must be above 0");
  BOOST_TEST(refused("\"mass_kg\":64", "\"mass_kg\":\"64\"") == "stack[1].mass_kg: must be a number");
  BOOST_TEST(refused("\"mass_kg\":64", "\"mass_kg\":null") == "stack[1].mass_kg: must be a number");
  BOOST_TEST(refused("\"mass_kg\":64,", "") == "stack[1].mass_kg: is missing");
  BOOST_TEST(refused("\"mass_kg\":64", "\"mass_lb\":64").starts_with("stack[1].mass_lb: is not a key"));
  BOOST_TEST(refused("\"mark\":37", "\"mark\":37.5") == "chain.mark: must be a whole number");
  BOOST_TEST(refused("\"mark\":37", "\"mark\":1e300") == "chain.mark: must be a whole number");
  BOOST_TEST(
      refused("\"held\":2", "\"held\":0").starts_with("chain.held: must be a whole number from 1 to 2"));
  BOOST_TEST(refused("\"side-pair\"", "\"three\"") ==
             "bar.picks: must be side-pair, fore-aft-pair or single");
  BOOST_TEST(refused("\"side-pair\"", "\"single\"").find("is not a key that is known here") !=
             std::string::npos);
  BOOST_TEST(refused("\"pivot\"", "\"hinge\"") == "stack[1].joint.kind: must be seated, pinned or pivot");
  BOOST_TEST(refused("\"pivot\"", "\"seated\"").starts_with("stack[1].joint.travel_deg: is not a key"));
  BOOST_TEST(refused("[-30,0]", "[-30]") ==
             "stack[1].joint.travel_deg: must be a list of two numbers, from and to");
  BOOST_TEST(refused("[0.03,0.01]", "[0.03]") ==
             "stack[0].outline_m[0]: must be a list of two numbers, x and z");
  BOOST_TEST(refused("[0.03,0.01]", "[0.03,\"a\"]") == "stack[0].outline_m[0][1]: must be a number");
  BOOST_TEST(refused("hangbook.hang/1", "hangbook.hang/2") == "format: must be hangbook.hang/1");
  BOOST_TEST(refused("\"tilt_deg\":-3", "\"tilt\":-3").starts_with("set.tilt: is not a key"));
  BOOST_TEST(refused("\"set\":{\"pan_deg\":5,\"tilt_deg\":-3}", "\"set\":{\"pan_deg\":5}") ==
             "set.tilt_deg: is missing (or actuator_deg in its place)");
  BOOST_TEST(refusal(QJsonValue(7)) == "must be an object");
  BOOST_TEST(refusal(QJsonObject()) == "format: is missing");
}

BOOST_AUTO_TEST_CASE(a_pull_back_stands_in_the_second_form_only) {
  hang::Hang hang = exampleHang();
  hang.pullBack = hang::PullBack{2, {-0.66, -0.4}, 95.0, 750.0, {}};
  const QJsonObject written = exchange::toJson(hang);
  BOOST_TEST(written.value(QLatin1String("format")).toString().toStdString() == "hangbook.hang/2");
  const hang::Hang back = exchange::hangFromJson(written, 2);
  BOOST_REQUIRE(back.pullBack.has_value());
  BOOST_TEST(back.pullBack->element == 2);
  BOOST_TEST(back.pullBack->at.x == -0.66);
  BOOST_TEST(back.pullBack->lineDeg == 95.0);
  BOOST_TEST(back.pullBack->force.value() == 750.0);
  BOOST_TEST(refusal(written) == "format: must be hangbook.hang/1");
  QJsonObject first = written;
  first[QLatin1String("format")] = QStringLiteral("hangbook.hang/1");
  BOOST_TEST(refusal(first).starts_with("pull_back: is not a key"));
  const auto refusedSecond = [&](const char* key, const QJsonValue& value) {
    QJsonObject pull = written.value(QLatin1String("pull_back")).toObject();
    pull[QLatin1String(key)] = value;
    QJsonObject changed = written;
    changed[QLatin1String("pull_back")] = pull;
    try {
      exchange::hangFromJson(changed, 2);
    } catch (const Error& error) {
      return error.place() + ": " + error.what();
    }
    return std::string("not refused");
  };
  BOOST_TEST(refusedSecond("element", 3).find("must be a whole number from 1 to 2") != std::string::npos);
  BOOST_TEST(refusedSecond("tilt_deg", -2).find("must not stand beside force_kn") != std::string::npos);
  BOOST_TEST(refusedSecond("line_deg", 200).find("must be from 0 to 180") != std::string::npos);
  BOOST_TEST(refusedSecond("force_kn", -1).find("pull_back.force_kn") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(text_that_is_not_json_is_refused_with_its_place) {
  BOOST_TEST(textRefusal("").find("nothing to read") != std::string::npos);
  BOOST_TEST(textRefusal("  \n ").find("nothing to read") != std::string::npos);
  BOOST_TEST(textRefusal("{\"a\": 1,\n \"b\": }").starts_with("line 2, column "));
  BOOST_TEST(textRefusal("{\"a\": NaN}").starts_with("line 1, column "));
  BOOST_TEST(textRefusal("{\"a\": 1} {}").starts_with("line 1, column "));
}

BOOST_AUTO_TEST_CASE(a_key_given_twice_is_refused) {
  BOOST_TEST(textRefusal("{\"a\": 1, \"b\": {\"a\": 2},\n \"a\": 3}") ==
             "line 2, column 2: the key \"a\" stands here for the second time");
  BOOST_TEST(textRefusal("[{\"a\": 1}, {\"a\": [\"a\", \"a\"], \"b\": \"a\"}]") == "not refused");
  BOOST_TEST(textRefusal("{\"mass\": 1, \"m\\u0061ss\": 2}").find("second time") != std::string::npos);
  BOOST_TEST(textRefusal("{\"a\\\"\": \"{\", \"b\": \"\\\\\", \"c\": \",\"}") == "not refused");
}

BOOST_AUTO_TEST_CASE(a_figure_beyond_doubles_never_gets_in) {
  // Whether the JSON reader refuses it or makes it infinite, it must not become a hang.
  QByteArray text = asText(exchange::toJson(exampleHang()));
  text.replace("\"mass_kg\":64", "\"mass_kg\":1e999");
  BOOST_CHECK_THROW(exchange::hangFromJson(exchange::readJson(text)), Error);
}

BOOST_AUTO_TEST_CASE(statics_have_the_keys_that_belong_to_their_picks) {
  hang::Hang hang = exampleHang();
  BOOST_TEST(exchange::toJson(hang::solve(hang)).contains(QLatin1String("roll_deg")));
  hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
  hang.set = {};
  hang.chain.reset();
  hang.stack.pop_back();
  const QJsonObject single = exchange::toJson(hang::solve(hang));
  for (const char* key : {"roll_deg", "azimuth_deg", "actuator_deg", "head_swing_deg", "chain"}) {
    BOOST_TEST(!single.contains(QLatin1String(key)));
  }
  BOOST_TEST(single.value(QLatin1String("picks")).toArray().size() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
