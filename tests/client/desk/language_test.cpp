// SPDX-License-Identifier: GPL-3.0-or-later
#include <map>

#include <QApplication>
#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <boost/test/unit_test.hpp>

#include "desk/options/adjust_panel.h"
#include "desk/words/language.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

using Text = std::pair<QString, QString>; ///< context, source

/// The texts of a file of translations, each with its translation; empty where it is not finished.
std::map<Text, QString> textsOf(const QString& path) {
  QFile file(path);
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader reader(&file);
  std::map<Text, QString> texts;
  Text text;
  while (!reader.atEnd()) {
    if (reader.readNext() != QXmlStreamReader::StartElement) {
      continue;
    }
    if (reader.name() == QLatin1String("name")) {
      text.first = reader.readElementText();
    } else if (reader.name() == QLatin1String("source")) {
      text.second = reader.readElementText();
    } else if (reader.name() == QLatin1String("translation")) {
      const bool finished = !reader.attributes().hasAttribute(QLatin1String("type"));
      const QString translation = reader.readElementText(QXmlStreamReader::IncludeChildElements);
      texts[text] = finished ? translation : QString();
    }
  }
  BOOST_REQUIRE_MESSAGE(!reader.hasError(), reader.errorString().toStdString());
  return texts;
}

QStringList placesIn(const QString& text) {
  static const QRegularExpression place(QStringLiteral("%\\d"));
  QStringList places;
  for (auto found = place.globalMatch(text); found.hasNext();) {
    places << found.next().captured();
  }
  places.sort();
  places.removeDuplicates();
  return places;
}

BOOST_AUTO_TEST_SUITE(language)

BOOST_AUTO_TEST_CASE(every_text_of_the_window_stands_in_german) {
  const QTemporaryDir folder;
  const QString fresh = folder.filePath(QStringLiteral("fresh.ts"));
  QProcess collect;
  collect.start(
      QStringLiteral(HANGBOOK_LUPDATE),
      {QStringLiteral("-silent"), QStringLiteral(HANGBOOK_DESK_SOURCES), QStringLiteral("-ts"), fresh});
  BOOST_REQUIRE(collect.waitForFinished());
  BOOST_REQUIRE_EQUAL(collect.exitCode(), 0);
  const auto wanted = textsOf(fresh);
  const auto german = textsOf(QStringLiteral(HANGBOOK_DESK_SOURCES "/languages/hangbook_de.ts"));
  BOOST_TEST(wanted.size() > 900U);
  for (const auto& [text, unused] : wanted) {
    const auto found = german.find(text);
    const std::string name = (text.first + QStringLiteral(": ") + text.second).toStdString();
    if (found == german.end() || found->second.isEmpty()) {
      BOOST_ERROR("not translated: " + name);
      continue;
    }
    BOOST_TEST_INFO(name);
    BOOST_TEST((placesIn(found->second) == placesIn(text.second)));
    BOOST_TEST_INFO(name);
    BOOST_TEST(found->second.count(QLatin1Char('&')) == text.second.count(QLatin1Char('&')));
  }
}

BOOST_AUTO_TEST_CASE(the_window_speaks_german_and_english_again) {
  const QLocale before;
  speak(*qApp, QStringLiteral("de"));
  BOOST_TEST(AdjustPanel::tr("Trim").toStdString() == "Trimmhöhe");
  BOOST_TEST(Words::tr("Heaviest").toStdString() == "Schwerster");
  BOOST_TEST(QLocale().toString(1.5, 'f', 1).toStdString() == "1,5");
  speak(*qApp, QStringLiteral("en"));
  BOOST_TEST(AdjustPanel::tr("Trim").toStdString() == "Trim");
  BOOST_TEST(Words::tr("Heaviest").toStdString() == "Heaviest");
  QLocale::setDefault(before);
}

BOOST_AUTO_TEST_CASE(the_first_language_that_is_spoken_is_taken) {
  BOOST_TEST(languageFor(QLocale(QLocale::German, QLocale::Austria)).toStdString() == "de");
  BOOST_TEST(languageFor(QLocale(QLocale::English)).toStdString() == "en");
  BOOST_TEST(languageFor(QLocale(QLocale::Icelandic)).toStdString() == "en");
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace
} // namespace hangbook::desk
