// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "client/terminal/ran.h"
#include "store/store.h"
#include "terminal/command.h"

using namespace hangbook;
using hangbook::testing::Ran;
using hangbook::testing::ranWith;
using terminal::Ending;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

namespace {

std::string makeStore(const QTemporaryDir& folder) {
  const QString file = folder.filePath(QStringLiteral("tour.sqlite"));
  store::OpenHow how;
  how.create = true;
  store::Store::open(file, how);
  return file.toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(store_door)

BOOST_AUTO_TEST_CASE(a_store_that_is_not_there_is_one_line_that_says_how_to_make_one) {
  const QTemporaryDir folder;
  const std::string file = folder.filePath(QStringLiteral("none.sqlite")).toStdString();
  const Ran ran = ranWith({"check-store", "--store", file});
  BOOST_TEST(ran.ending == Ending::storeTrouble);
  BOOST_TEST(ran.out.empty());
  BOOST_TEST(ran.oneLineOfTrouble());
  BOOST_TEST(ran.warned(file));
  BOOST_TEST(ran.warned("hangbook demo"));
  BOOST_TEST(!QFileInfo::exists(QString::fromStdString(file)));
}

BOOST_AUTO_TEST_CASE(a_sound_store_is_said_to_be_sound) {
  const QTemporaryDir folder;
  const std::string file = makeStore(folder);
  const Ran ran = ranWith({"check-store", "--store", file});
  BOOST_TEST(ran.ending == Ending::done);
  BOOST_TEST(ran.said("is sound"));
  const QJsonObject json = ranWith({"check-store", "--store", file, "--json"}).json();
  BOOST_TEST(json[QLatin1String("format")].toString().toStdString() == "hangbook.check-store/1");
  BOOST_TEST(json[QLatin1String("faults")].isArray());
}

BOOST_AUTO_TEST_CASE(what_is_no_store_is_refused_and_left_alone) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("letter.txt"));
  QFile letter(file);
  BOOST_REQUIRE(letter.open(QIODevice::WriteOnly));
  const QByteArray text = QByteArray("Dear crew, ").repeated(1000);
  letter.write(text);
  letter.close();
  const Ran ran = ranWith({"check-store", "--store", file.toStdString()});
  BOOST_TEST(ran.ending == Ending::storeTrouble);
  BOOST_TEST(ran.oneLineOfTrouble());
  BOOST_REQUIRE(letter.open(QIODevice::ReadOnly));
  BOOST_TEST((letter.readAll() == text));
}

BOOST_AUTO_TEST_CASE(a_backup_is_a_store_and_never_overwrites) {
  const QTemporaryDir folder;
  const std::string file = makeStore(folder);
  const std::string copy = folder.filePath(QStringLiteral("copy.sqlite")).toStdString();
  const Ran ran = ranWith({"backup", copy, "--store", file});
  BOOST_TEST(ran.ending == Ending::done);
  BOOST_TEST(ran.said(copy));
  BOOST_TEST(ranWith({"check-store", "--store", copy}).ending == Ending::done);
  const Ran again = ranWith({"backup", copy, "--store", file});
  BOOST_TEST(again.ending == Ending::storeTrouble);
  BOOST_TEST(again.oneLineOfTrouble());
}

BOOST_AUTO_TEST_SUITE_END()
