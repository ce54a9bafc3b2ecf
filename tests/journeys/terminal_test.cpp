// SPDX-License-Identifier: GPL-3.0-or-later
// The whole program from an empty folder to a chosen hang with its mark, and back through files.
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cmath>

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTemporaryDir>

#include "exchange/import.h"
#include "program.h"
#include "support/fresh_store.h"
#include "support/sanitized.h"

using namespace hangbook;
using hangbook::testing::FreshStore;
using hangbook::testing::program;
using hangbook::testing::Said;

namespace {

QString word(const char* text) {
  return QString::fromUtf8(text);
}

/// A store and what is said to it, on a day of the demo's planning.
struct Crew {
  QString store;

  Said say(const QStringList& words, const QByteArray& input = {}) const {
    return program(words + QStringList{word("--store"), store, word("--as-of"), word("2026-11-25"),
                                       word("--by"), word("Casimir Wold")},
                   input);
  }
  QJsonObject options(const QString& show) const {
    const Said said = say({word("options"), word("--show"), show, word("--json")});
    BOOST_REQUIRE_MESSAGE(said.status == 0 || said.status == 1, said.err.toStdString());
    return said.json();
  }
};

QStringList showsOf(const Crew& crew) {
  QStringList names;
  for (const QJsonValue& show : crew.say({word("route"), word("--json")}).json()[word("shows")].toArray()) {
    names << show[word("show")].toString();
  }
  return names;
}

void checkKeys(const QJsonObject& object, const QStringList& keys) {
  for (const QString& key : keys) {
    if (!object.contains(key)) { // not a check each: there are a hundred thousand of them
      BOOST_ERROR("no key " << key.toStdString());
    }
  }
}

/// What contract/commands.md promises of an option.
void checkOption(const QJsonObject& option) {
  checkKeys(option, {word("id"), word("stack"), word("downfill"), word("bar"), word("picks"), word("hoist"),
                     word("verdict"), word("setting"), word("trim_window_m"), word("trim_window_set_by"),
                     word("pick_loads"), word("points"), word("aims"), word("findings"), word("hang_input")});
  BOOST_TEST(option[word("id")].toString().size() == 16);
  for (const QJsonValue& each : option[word("findings")].toArray()) {
    checkKeys(each.toObject(), {word("rule"), word("verdict"), word("value"), word("limit"), word("unit"),
                                word("use_percent"), word("source"), word("text")});
  }
  for (const QJsonValue& each : option[word("points")].toArray()) {
    const QJsonValue stated = each[word("static_kn")];
    double sum = 0.0;
    for (const QJsonValue& part : each[word("parts")].toArray()) {
      sum += part[word("kn")].toDouble();
    }
    if (!stated.isNull() && std::abs(sum - stated.toDouble()) > 1e-9) { // null: some part is not known
      BOOST_ERROR("the parts add up to " << sum << ", not to " << stated.toDouble());
    }
  }
}

/// Every option's hang, solved again by `settled`, gives the loads that the option reports.
void checkAgainstSettled(const QJsonArray& hangs, const QJsonArray& loads) {
  if (hangs.isEmpty()) {
    return;
  }
  const Said said = program({word("settled")}, QJsonDocument(hangs).toJson());
  BOOST_TEST(said.status == 0, said.err.toStdString());
  const QJsonArray answers = QJsonDocument::fromJson(said.out).array();
  BOOST_REQUIRE(answers.size() == hangs.size());
  for (qsizetype i = 0; i < answers.size(); ++i) {
    const QJsonArray picks = answers[i][word("picks")].toArray();
    const QJsonArray reported = loads[i].toArray();
    BOOST_REQUIRE(picks.size() == reported.size());
    for (qsizetype pick = 0; pick < picks.size(); ++pick) {
      const double solved = picks[pick][word("load_kn")].toDouble();
      if (picks[pick][word("name")] != reported[pick][word("name")] ||
          std::abs(solved - reported[pick][word("load_kn")].toDouble()) >
              1e-6 * std::max(1.0, std::abs(solved))) {
        BOOST_ERROR("settled gives " << solved << " kN, the option "
                                     << reported[pick][word("load_kn")].toDouble());
      }
    }
  }
}

void checkShow(const QJsonObject& answer) {
  BOOST_TEST(answer[word("format")].toString().toStdString() == "hangbook.options/1");
  QJsonArray hangs;
  QJsonArray loads;
  for (const QJsonValue& hang : answer[word("hangs")].toArray()) {
    const QJsonArray options = hang[word("options")].toArray();
    BOOST_TEST(hang[word("decided")][word("options")].toInt() == options.size());
    BOOST_TEST(hang[word("decided")][word("by_bound")].toInt() <=
               hang[word("decided")][word("settings")].toInt());
    QStringList ids;
    for (const QJsonValue& each : options) {
      const QJsonObject option = each.toObject();
      checkOption(option);
      ids << option[word("id")].toString();
      if (option[word("hang_input")].isObject()) {
        hangs.append(option[word("hang_input")]);
        loads.append(option[word("pick_loads")]);
      }
    }
    BOOST_TEST(ids.removeDuplicates() == 0);
  }
  checkAgainstSettled(hangs, loads);
}

QString firstThat(const QJsonObject& answer, const QString& hang, const char* verdict) {
  for (const QJsonValue& each : answer[word("hangs")].toArray()) {
    for (const QJsonValue& option : each[word("options")].toArray()) {
      if (each[word("hang")].toString() == hang && option[word("verdict")].toString() == word(verdict)) {
        return option[word("id")].toString();
      }
    }
  }
  BOOST_FAIL("no option that " << verdict);
  return {};
}

void write(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
  BOOST_REQUIRE(file.write(bytes) == bytes.size());
}

} // namespace

BOOST_AUTO_TEST_SUITE(terminal_journey)

BOOST_AUTO_TEST_CASE(every_show_of_the_demo_is_answered_as_the_contract_says) {
  const QTemporaryDir folder;
  const Crew crew{folder.filePath(word("tour.sqlite"))};
  BOOST_REQUIRE(crew.say({word("demo")}).status == 0);
  const QStringList shows = showsOf(crew);
  BOOST_TEST(shows.size() == 11);
  for (const QString& show : shows) {
    if (testing::underSanitizer && shows.indexOf(show) % 4 != 1) {
      continue;
    }
    BOOST_TEST_CONTEXT(show.toStdString()) {
      const QJsonObject once = crew.options(show);
      checkShow(once);
      if (shows.indexOf(show) % 3 == 0) {
        BOOST_TEST((once == crew.options(show)));
      }
    }
  }
}

BOOST_DATA_TEST_CASE(a_hang_is_chosen_marked_recorded_and_carried_to_another_store, testing::bothEngines,
                     engine) {
  const FreshStore fresh(engine);
  const Crew crew{fresh.where()};
  const QString show = word("Ostrel");
  BOOST_REQUIRE_EQUAL(crew.say({word("demo")}).status, 0);
  const QString id = firstThat(crew.options(show), word("left"), "holds");
  BOOST_TEST(
      crew.say({word("choose"), word("--show"), show, word("--hang"), word("left"), word("--option"), id})
          .status == 0);
  for (const QJsonValue& each : crew.say({word("route"), word("--json")}).json()[word("shows")].toArray()) {
    if (each[word("show")].toString() == show) {
      BOOST_TEST(each[word("hangs")][0][word("chosen")].toString().toStdString() == id.toStdString());
      BOOST_TEST(each[word("hangs")][0][word("verdict")].toString().toStdString() == "holds");
    }
  }
  BOOST_TEST(crew.say({word("mark"), word("record"), word("--show"), show, word("--hang"), word("left"),
                       word("--mark"), word("77"), word("--measured"), word("-8.25"), word("--weather"),
                       word("Nebel, 4 °C")})
                 .status == 0);
  const QJsonObject left =
      crew.say({word("mark"), word("--show"), show, word("--json")}).json()[word("hangs")][0].toObject();
  BOOST_TEST(left[word("recorded")][0][word("mark")].toInt() == 77);
  BOOST_TEST(left[word("recorded")][0][word("angle_deg")].toDouble() == -8.25);

  const QTemporaryDir folder;
  const Crew other{folder.filePath(word("other.sqlite"))};
  for (const exchange::Kind kind : exchange::allKinds()) {
    const QString name = exchange::wordFor(kind);
    const QString file = folder.filePath(name + word(".csv"));
    BOOST_REQUIRE(crew.say({word("export"), word("--kind"), name, word("-o"), file}).status == 0);
    const Said taken = other.say({word("import"), word("--kind"), name, file});
    BOOST_REQUIRE_MESSAGE(taken.status == 0, name.toStdString() + "\n" + taken.err.toStdString());
    BOOST_TEST((other.say({word("export"), word("--kind"), name}).out ==
                crew.say({word("export"), word("--kind"), name}).out),
               name.toStdString());
  }
  for (const QString& each : {show, word("Pollan Cross"), word("Vintersund")}) {
    BOOST_TEST((crew.options(each) == other.options(each)));
  }
  BOOST_TEST(other.say({word("check-store")}).status == 0);
}

BOOST_AUTO_TEST_CASE(trouble_with_a_store_is_one_line_and_status_3) {
  const QTemporaryDir folder;
  const auto told = [&](const QString& store) { return program({word("route"), word("--store"), store}); };
  const Said missing = told(folder.filePath(word("none.sqlite")));
  BOOST_TEST(missing.status == 3);
  BOOST_TEST(missing.oneLineOfTrouble());
  BOOST_TEST(missing.err.contains("hangbook demo"));

  const QString corrupt = folder.filePath(word("corrupt.sqlite"));
  BOOST_REQUIRE(program({word("import"), word("--kind"), word("people"), word("-"), word("--store"), corrupt},
                        "name\nIda Quill\n")
                    .status == 0);
  QFile file(corrupt);
  BOOST_REQUIRE(file.open(QIODevice::ReadWrite));
  BOOST_REQUIRE(file.seek(4096));
  file.write(QByteArray(8192, '\x5a'));
  file.close();
  const Said damaged = told(corrupt);
  BOOST_TEST(damaged.status == 3);
  BOOST_TEST(damaged.oneLineOfTrouble());

  const QString foreign = folder.filePath(word("foreign.sqlite"));
  write(foreign, "this is a letter, not a store");
  BOOST_TEST(told(foreign).status == 3);
}

BOOST_AUTO_TEST_CASE(wrong_words_are_one_line_and_status_2) {
  for (const QStringList& words : std::vector<QStringList>{{word("optoins")},
                                                           {word("options")},
                                                           {word("options"), word("--show")},
                                                           {word("due"), word("--within"), word("soon")},
                                                           {word("export"), word("--kind"), word("crews")},
                                                           {word("import"), word("--kind"), word("units")}}) {
    const Said said = program(words);
    BOOST_TEST(said.status == 2);
    BOOST_TEST(said.oneLineOfTrouble());
    BOOST_TEST(said.out.isEmpty());
  }
}

BOOST_AUTO_TEST_SUITE_END()
