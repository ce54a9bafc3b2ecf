// SPDX-License-Identifier: GPL-3.0-or-later
// Labels read back from the rendered page: pdftoppm makes a picture of each, ZXing reads every code in it.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QTemporaryDir>

#include "quantity/error.h"
#include "reports/labels.h"

using namespace hangbook;
using namespace hangbook::reports;
namespace data = boost::unit_test::data;

namespace {

QByteArray runProgram(const QString& name, const QStringList& words) {
  QProcess process;
  process.start(name, words);
  BOOST_REQUIRE_MESSAGE(process.waitForFinished(120'000), name.toStdString() << " is missing or hangs");
  BOOST_REQUIRE_MESSAGE(process.exitStatus() == QProcess::NormalExit,
                        process.readAllStandardError().toStdString());
  return process.readAllStandardOutput();
}

/// The code of each place of each page, in order; each place is cut out of the rendered page and decoded
/// alone, as a scanner sees it. Empty where there is none.
QStringList readBack(const QString& pdf, const LabelSheet& sheet, const QTemporaryDir& folder) {
  constexpr double dotsPerMm = 200 / 25.4;
  runProgram(QStringLiteral("pdftoppm"),
             {QStringLiteral("-r"), QStringLiteral("200"), QStringLiteral("-gray"), QStringLiteral("-png"),
              pdf, folder.filePath(QStringLiteral("page"))});
  QStringList pictures;
  for (const QString& page :
       QDir(folder.path()).entryList({QStringLiteral("page*.png")}, QDir::Files, QDir::Name)) {
    const QImage picture(folder.filePath(page));
    BOOST_REQUIRE(!picture.isNull());
    for (int place = 0; place < sheet.columns * sheet.rows; ++place) {
      const QRectF label(sheet.left + (place % sheet.columns) * sheet.stepX,
                         sheet.top + (place / sheet.columns) * sheet.stepY, sheet.labelWidth,
                         sheet.labelHeight);
      const QRectF dots(label.topLeft() * dotsPerMm, label.size() * dotsPerMm);
      pictures << folder.filePath(QStringLiteral("%1-%2").arg(place).arg(page));
      BOOST_REQUIRE(picture.copy(dots.toRect()).save(pictures.back()));
    }
  }
  QStringList codes;
  for (const QString& picture : pictures) {
    codes << QString::fromUtf8(
        runProgram(QStringLiteral("ZXingReader"),
                   {QStringLiteral("-format"), QStringLiteral("QRCode"), QStringLiteral("-bytes"), picture}));
  }
  return codes;
}

std::vector<Label> labels(int count) {
  std::vector<Label> made;
  for (int number = 1; number <= count; ++number) {
    made.push_back({QStringLiteral("MB%1").arg(number, 3, 10, QLatin1Char('0')),
                    QStringLiteral("Marram bass"), QStringLiteral("Saltmarsh Audio Hire")});
  }
  return made;
}

} // namespace

BOOST_AUTO_TEST_SUITE(label_sheets)

BOOST_DATA_TEST_CASE(every_label_of_every_sheet_reads_back, data::make({"a4", "letter", "roll"}), name) {
  const QTemporaryDir folder;
  const LabelSheet& sheet = labelSheet(QString::fromLatin1(name));
  const int full = sheet.columns * sheet.rows;
  const std::vector<Label> all = labels(full + 2); // runs on to a further page
  const QString pdf = folder.filePath(QStringLiteral("labels.pdf"));
  writeLabels(pdf, all, sheet, full > 1 ? 1 : 0);
  QStringList expected;
  if (full > 1) {
    expected << QString(); // the place that was left free
  }
  for (const Label& each : all) {
    expected << each.code;
  }
  QStringList read = readBack(pdf, sheet, folder);
  while (read.size() > expected.size() && read.back().isEmpty()) {
    read.removeLast();
  }
  BOOST_TEST((read == expected), read.join(' ').toStdString());
  const QByteArray info = runProgram(QStringLiteral("pdfinfo"), {pdf});
  const QByteArray size = QByteArray("Page size:");
  const QList<QByteArray> words = info.mid(info.indexOf(size) + size.size()).simplified().split(' ');
  BOOST_TEST(std::abs(words[0].toDouble() / 72 * 25.4 - sheet.pageWidth) < 0.5);
  BOOST_TEST(std::abs(words[2].toDouble() / 72 * 25.4 - sheet.pageHeight) < 0.5);
}

BOOST_AUTO_TEST_CASE(long_codes_and_other_letters_read_back_whole) {
  const QTemporaryDir folder;
  const QString pdf = folder.filePath(QStringLiteral("labels.pdf"));
  const std::vector<Label> all{
      {QStringLiteral("QUERNSTONE-22.5/2026-000000123456789"), QStringLiteral("x"), {}},
      {QStringLiteral("Größe 12/ß"), QString(300, QLatin1Char('w')), {}}};
  writeLabels(pdf, all, labelSheet(QStringLiteral("A4")));
  const QStringList read = readBack(pdf, labelSheet(QStringLiteral("a4")), folder);
  BOOST_TEST((read[0] == all[0].code), read[0].toStdString());
  BOOST_TEST((read[1] == all[1].code), read[1].toStdString());
  const QString text = QString::fromUtf8(runProgram(QStringLiteral("pdftotext"), {pdf, QStringLiteral("-")}));
  BOOST_TEST(text.contains(all[0].code), "the plain text is whole: " << text.toStdString());
}

BOOST_AUTO_TEST_CASE(what_cannot_be_printed_is_said_and_leaves_no_file) {
  const QTemporaryDir folder;
  const QString pdf = folder.filePath(QStringLiteral("labels.pdf"));
  const LabelSheet& sheet = labelSheet(QStringLiteral("a4"));
  BOOST_CHECK_THROW(writeLabels(pdf, {}, sheet), Error);
  BOOST_CHECK_THROW(writeLabels(pdf, {{QString(), QStringLiteral("x"), {}}}, sheet), Error);
  BOOST_CHECK_THROW(writeLabels(pdf, {{QString(4000, QLatin1Char('x')), {}, {}}}, sheet), Error);
  BOOST_CHECK_THROW(writeLabels(pdf, labels(1), sheet, 24), Error);
  BOOST_CHECK_THROW(writeLabels(folder.filePath(QStringLiteral("none/labels.pdf")), labels(1), sheet), Error);
  BOOST_CHECK_THROW(labelSheet(QStringLiteral("a5")), Error);
  BOOST_TEST(!QFile::exists(pdf));
}

BOOST_AUTO_TEST_SUITE_END()
