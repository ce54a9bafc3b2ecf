// SPDX-License-Identifier: GPL-3.0-or-later
// The contract, through the program as it is run: words, streams, exit status.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <string>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include "where.h"

namespace {

struct Run {
  int status = -1;
  QByteArray out;
  QByteArray err;
};

Run runProgram(const QStringList& words, const QByteArray& input) {
  QProcess process;
  process.start(QStringLiteral(HANGBOOK_PROGRAM), words);
  BOOST_REQUIRE(process.waitForStarted());
  process.write(input);
  process.closeWriteChannel();
  BOOST_REQUIRE(process.waitForFinished(60000));
  BOOST_REQUIRE(process.exitStatus() == QProcess::NormalExit);
  return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

QByteArray contractFile(const char* name) {
  QFile file(QStringLiteral(HANGBOOK_SOURCE_DIR "/tests/contract/") + QLatin1String(name));
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

QJsonObject exampleHang() {
  return QJsonDocument::fromJson(contractFile("example-hang.json")).object();
}

QByteArray asText(const QJsonObject& object) {
  return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

// Every key and every figure of `expected`, and no other, within 1e-6 relative or absolute.
void compare(const QJsonValue& expected, const QJsonValue& found, const std::string& place) {
  BOOST_TEST_CONTEXT(place) {
    BOOST_REQUIRE(expected.type() == found.type());
    if (expected.isObject()) {
      const QJsonObject object = found.toObject();
      BOOST_TEST(object.keys().join(' ').toStdString() == expected.toObject().keys().join(' ').toStdString());
      for (const QString& key : expected.toObject().keys()) {
        compare(expected[key], object.value(key), place + "." + key.toStdString());
      }
    } else if (expected.isArray()) {
      BOOST_REQUIRE(expected.toArray().size() == found.toArray().size());
      for (qsizetype i = 0; i < expected.toArray().size(); ++i) {
        compare(expected[i], found[i], place + "[" + std::to_string(i) + "]");
      }
    } else if (expected.isDouble()) {
      const double allowed = 1e-6 * std::max(1.0, std::abs(expected.toDouble()));
      BOOST_TEST(std::abs(expected.toDouble() - found.toDouble()) <= allowed,
                 "expected " << expected.toDouble() << ", found " << found.toDouble());
    } else {
      BOOST_TEST(expected.toString().toStdString() == found.toString().toStdString());
    }
  }
}

QString errorIn(const QByteArray& out) {
  return QJsonDocument::fromJson(out).object().value(QLatin1String("error")).toString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(statics_contract)

BOOST_AUTO_TEST_CASE(the_example_hang_gives_the_example_statics) {
  const Run run = runProgram({QStringLiteral("statics")}, contractFile("example-hang.json"));
  BOOST_TEST(run.status == 0);
  BOOST_TEST(run.err.toStdString() == "");
  compare(QJsonDocument::fromJson(contractFile("example-statics.json")).object(),
          QJsonDocument::fromJson(run.out).object(), "");
}

BOOST_AUTO_TEST_CASE(a_list_of_one_gives_a_list_of_one) {
  const Run run = runProgram({QStringLiteral("statics")}, "[" + contractFile("example-hang.json") + "]");
  BOOST_TEST(run.status == 0);
  const QJsonArray expected{QJsonDocument::fromJson(contractFile("example-statics.json")).object()};
  compare(expected, QJsonDocument::fromJson(run.out).array(), "");
}

BOOST_AUTO_TEST_CASE(what_is_not_possible_ends_with_1_and_one_line) {
  QJsonObject hang = exampleHang();
  hang[QLatin1String("set")] = QJsonObject{{QLatin1String("tilt_deg"), 60.0}};
  const Run run = runProgram({QStringLiteral("statics")}, asText(hang));
  BOOST_TEST(run.status == 1);
  BOOST_TEST(errorIn(run.out).contains(QLatin1String("tilt")));
  BOOST_TEST(run.err.count('\n') == 1);
}

BOOST_AUTO_TEST_CASE(what_is_not_valid_ends_with_2_and_names_the_key) {
  QJsonObject hang = exampleHang();
  QJsonArray stack = hang.value(QLatin1String("stack")).toArray();
  QJsonObject lowest = stack[1].toObject();
  lowest[QLatin1String("mass_kg")] = -64.0;
  stack[1] = lowest;
  hang[QLatin1String("stack")] = stack;
  const Run run = runProgram({QStringLiteral("statics")}, asText(hang));
  BOOST_TEST(run.status == 2);
  BOOST_TEST(run.err.toStdString() == "hangbook: stack[1].mass_kg: must be above 0\n");
  BOOST_TEST(errorIn(run.out).toStdString() == "stack[1].mass_kg: must be above 0");
}

BOOST_AUTO_TEST_CASE(a_mixed_list_keeps_its_order_and_ends_with_the_worst) {
  const QJsonObject good = exampleHang();
  QJsonObject unreachable = good;
  unreachable[QLatin1String("set")] = QJsonObject{{QLatin1String("tilt_deg"), 60.0}};
  QJsonObject invalid = good;
  invalid[QLatin1String("colour")] = QStringLiteral("black");

  QJsonArray list{good, unreachable, good};
  Run run = runProgram({QStringLiteral("statics")}, QJsonDocument(list).toJson());
  BOOST_TEST(run.status == 1);
  list.append(invalid);
  run = runProgram({QStringLiteral("statics")}, QJsonDocument(list).toJson());
  BOOST_TEST(run.status == 2);
  BOOST_TEST(run.err.count('\n') == 2);
  const QJsonArray answers = QJsonDocument::fromJson(run.out).array();
  BOOST_REQUIRE(answers.size() == 4);
  BOOST_TEST(answers[0].toObject().contains(QLatin1String("mass_kg")));
  BOOST_TEST(answers[1][QLatin1String("error")].toString().startsWith(QLatin1String("[1]: ")));
  BOOST_TEST(answers[2].toObject().contains(QLatin1String("mass_kg")));
  BOOST_TEST(answers[3][QLatin1String("error")].toString().startsWith(QLatin1String("[3].colour: ")));
}

BOOST_AUTO_TEST_CASE(an_empty_list_gives_an_empty_list) {
  const Run run = runProgram({QStringLiteral("statics")}, "[]");
  BOOST_TEST(run.status == 0);
  BOOST_TEST(run.out.simplified().replace(" ", "").toStdString() == "[]");
}

/// How long they take is for the measurements, not for a test: a busy machine is no fault of the program.
BOOST_AUTO_TEST_CASE(five_hundred_hangs_in_one_run) {
  QJsonArray list;
  for (int i = 0; i < 500; ++i) {
    list.append(exampleHang());
  }
  const Run run = runProgram({QStringLiteral("statics")}, QJsonDocument(list).toJson());
  BOOST_TEST(run.status == 0);
  BOOST_TEST(QJsonDocument::fromJson(run.out).array().size() == 500);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(settled_contract)

BOOST_AUTO_TEST_CASE(a_hang_without_slack_is_settled_as_its_statics_say) {
  const Run run = runProgram({QStringLiteral("settled")}, contractFile("example-hang.json"));
  BOOST_TEST(run.status == 0);
  const QJsonObject found = QJsonDocument::fromJson(run.out).object();
  const QJsonObject statics = QJsonDocument::fromJson(contractFile("example-statics.json")).object();
  BOOST_TEST(found.value(QLatin1String("format")).toString().toStdString() == "hangbook.settled/1");
  for (const char* key : {"mass_kg", "cg_m", "tilt_deg", "azimuth_deg", "roll_deg", "actuator_deg",
                          "head_swing_deg", "bottom_m", "picks"}) {
    compare(statics.value(QLatin1String(key)), found.value(QLatin1String(key)), key);
  }
  const QJsonObject chain = found.value(QLatin1String("chain")).toObject();
  BOOST_TEST(chain.keys().join(' ').toStdString() == "length_m straight_m taut tension_kn");
  BOOST_TEST(chain.value(QLatin1String("taut")).toBool());
  compare(statics[QLatin1String("chain")][QLatin1String("tension_kn")],
          chain.value(QLatin1String("tension_kn")), "tension");
}

BOOST_AUTO_TEST_CASE(a_seated_joint_says_how_far_it_opens_and_what_its_stop_carries) {
  QJsonObject hang = exampleHang();
  QJsonArray stack = hang.value(QLatin1String("stack")).toArray();
  QJsonObject upper = stack[0].toObject();
  const QJsonObject contact{{QLatin1String("x"), -0.7}, {QLatin1String("z"), 0.0}};
  upper[QLatin1String("joint")] = QJsonObject{{QLatin1String("kind"), QStringLiteral("seated")},
                                              {QLatin1String("contact_m"), contact},
                                              {QLatin1String("open_to_deg"), 2.0}};
  stack = QJsonArray{upper};
  hang[QLatin1String("stack")] = stack;
  hang.remove(QLatin1String("chain"));
  const Run run = runProgram({QStringLiteral("settled")}, asText(hang));
  BOOST_TEST(run.status == 0);
  const QJsonValue joint = QJsonDocument::fromJson(run.out)[QLatin1String("joints")][0];
  BOOST_TEST(joint[QLatin1String("open_deg")].toDouble() == 2.0);
  BOOST_TEST(joint[QLatin1String("angle_deg")].toDouble() == 2.0);
  BOOST_TEST(joint[QLatin1String("contact_kn")].isNull());
  BOOST_TEST(joint[QLatin1String("stop_kn")].toDouble() > 0.0);
  BOOST_TEST(joint[QLatin1String("aim_deg")].isDouble());
}

/// The second form is the first one and more: without a pull-back every figure of the first is there
/// unchanged.
BOOST_AUTO_TEST_CASE(the_second_form_says_all_of_the_first_and_knows_a_pull_back) {
  QJsonObject hang = exampleHang();
  const Run first = runProgram({QStringLiteral("statics")}, asText(hang));
  hang[QLatin1String("format")] = QStringLiteral("hangbook.hang/2");
  Run second = runProgram({QStringLiteral("statics")}, asText(hang));
  BOOST_TEST(second.status == 0);
  const QJsonObject before = QJsonDocument::fromJson(first.out).object();
  QJsonObject after = QJsonDocument::fromJson(second.out).object();
  BOOST_TEST(after.value(QLatin1String("format")).toString().toStdString() == "hangbook.statics/2");
  for (const QString& key : before.keys()) {
    if (key != QLatin1String("format") && key != QLatin1String("joints") && key != QLatin1String("chain")) {
      BOOST_TEST((after.value(key) == before.value(key)), key.toStdString());
    }
  }
  hang[QLatin1String("pull_back")] = QJsonObject{
      {QLatin1String("element"), 2},
      {QLatin1String("at_m"), QJsonObject{{QLatin1String("x"), -0.66}, {QLatin1String("z"), -0.4}}},
      {QLatin1String("tilt_deg"), -6.0}};
  second = runProgram({QStringLiteral("statics")}, asText(hang));
  BOOST_TEST(second.status == 0, second.err.toStdString());
  after = QJsonDocument::fromJson(second.out).object();
  BOOST_TEST(std::abs(after.value(QLatin1String("tilt_deg")).toDouble() + 6.0) < 1e-9);
  const double force = after[QLatin1String("pull_back")][QLatin1String("force_kn")].toDouble();
  BOOST_TEST(force > 0.0);
  double carried = force; // straight up
  for (const QJsonValue& pick : after.value(QLatin1String("picks")).toArray()) {
    carried += pick[QLatin1String("load_kn")].toDouble();
  }
  BOOST_TEST(std::abs(carried - after.value(QLatin1String("mass_kg")).toDouble() * 9.80665e-3) < 1e-9);
  BOOST_TEST(runProgram({QStringLiteral("settled")}, asText(hang)).status == 2);
}

BOOST_AUTO_TEST_SUITE_END()
