// SPDX-License-Identifier: GPL-3.0-or-later
#include "client/terminal/demo_fixture.h"

#include <boost/test/unit_test.hpp>

BOOST_TEST_DONT_PRINT_LOG_VALUE(hangbook::terminal::Ending)

namespace hangbook::testing {

const QString& filledDemo() {
  static const QTemporaryDir folder;
  static const QString file = [] {
    const QString where = folder.filePath(QStringLiteral("demo.sqlite"));
    const Ran ran = ranWith({"demo", "--store", where.toStdString(), "--by", "Casimir Wold"});
    BOOST_REQUIRE_MESSAGE(ran.ending == terminal::Ending::done, ran.err);
    return where;
  }();
  return file;
}

Demo::Demo() {
  BOOST_REQUIRE(ranWith({"backup", place, "--store", filledDemo().toStdString()}).ending ==
                terminal::Ending::done);
}

Ran Demo::run(std::vector<std::string> words, const std::string& input) const {
  words.insert(words.end(), {"--store", place, "--as-of", "2026-11-25"});
  return ranWith(words, input);
}

QString textOf(const QJsonObject& object, const char* key) {
  return object[QLatin1String(key)].toString();
}

QJsonArray listOf(const QJsonObject& object, const char* key) {
  return object[QLatin1String(key)].toArray();
}

std::string optionOf(const Demo& demo, const std::string& show, const std::string& hang,
                     const char* verdict) {
  const QJsonObject all = demo.run({"options", "--show", show, "--hang", hang, "--json"}).json();
  for (const QJsonValue& each : listOf(listOf(all, "hangs").at(0).toObject(), "options")) {
    if (textOf(each.toObject(), "verdict") == QLatin1String(verdict)) {
      return textOf(each.toObject(), "id").toStdString();
    }
  }
  BOOST_FAIL("no option of " << show << " " << verdict);
  return {};
}
} // namespace hangbook::testing
