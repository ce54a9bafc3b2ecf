// SPDX-License-Identifier: GPL-3.0-or-later
// What belongs to a desktop, as the desktop's own validators read it.
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "program.h"
#include "where.h"

using hangbook::testing::program;
using hangbook::testing::Said;

namespace {

const QString desktop = QStringLiteral(HANGBOOK_SOURCE_DIR "/client/desktop/");

/// What another program printed; fails where it does not start.
Said other(const QString& name, const QStringList& words) {
  QProcess process;
  process.start(name, words);
  BOOST_REQUIRE_MESSAGE(process.waitForFinished(60'000), name.toStdString() << " did not answer");
  return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

} // namespace

BOOST_AUTO_TEST_SUITE(belonging)

BOOST_AUTO_TEST_CASE(the_menu_entry_and_the_description_are_valid) {
  const Said entry =
      other(QStringLiteral("desktop-file-validate"), {desktop + QStringLiteral("hangbook.desktop")});
  BOOST_TEST(entry.status == 0, entry.out.toStdString());
  BOOST_TEST(entry.out.toStdString() == "");
  // The name holds no domain, since the project owns none.
  const Said about =
      other(QStringLiteral("appstreamcli"), {QStringLiteral("validate"), QStringLiteral("--no-net"),
                                             QStringLiteral("--override=cid-desktopapp-is-not-rdns=info"),
                                             desktop + QStringLiteral("hangbook.metainfo.xml")});
  BOOST_TEST(about.status == 0, about.out.toStdString());
}

BOOST_AUTO_TEST_CASE(the_manual_tells_every_word_and_reads_without_a_warning) {
  const Said page = program({QStringLiteral("help"), QStringLiteral("--man")});
  BOOST_TEST(page.status == 0);
  const QByteArray overview = program({QStringLiteral("help")}).out;
  int words = 0;
  for (const QByteArray& line : overview.split('\n')) {
    if (line.startsWith("  ") && !line.startsWith("  --")) {
      QByteArray word = line.mid(2, line.indexOf("  ", 2) - 2);
      BOOST_TEST(page.out.contains(".SS \"hangbook " + word.replace("-", "\\-") + '"'), word.toStdString());
      ++words;
    }
  }
  BOOST_TEST(words > 20);
  const QTemporaryDir folder;
  QFile file(folder.filePath(QStringLiteral("hangbook.1")));
  BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(page.out);
  file.close();
  const Said read =
      other(QStringLiteral("groff"), {QStringLiteral("-man"), QStringLiteral("-ww"), QStringLiteral("-z"),
                                      QStringLiteral("-Kutf8"), file.fileName()});
  BOOST_TEST(read.status == 0);
  BOOST_TEST(read.err.toStdString() == "");
}

BOOST_AUTO_TEST_SUITE_END()
