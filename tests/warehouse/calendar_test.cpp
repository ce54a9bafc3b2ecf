// SPDX-License-Identifier: GPL-3.0-or-later
// What is due as a calendar, read back by Debian's python3-icalendar.
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QTemporaryDir>

#include "exchange/calendar_file.h"

using namespace hangbook::exchange;

namespace {

QJsonArray readByPython(const QByteArray& file) {
  QProcess python;
  python.start(
      QStringLiteral("/usr/bin/python3"),
      {QStringLiteral("-c"),
       QStringLiteral("import sys, json\n"
                      "from icalendar import Calendar\n"
                      "calendar = Calendar.from_ical(sys.stdin.buffer.read())\n"
                      "print(json.dumps([[str(e['uid']), str(e['dtstart'].dt), str(e['dtend'].dt),"
                      " str(e['summary']), str(e.get('description', '')), str(e.get('location', ''))]"
                      " for e in calendar.walk('VEVENT')]))\n")});
  python.write(file);
  python.closeWriteChannel();
  BOOST_REQUIRE(python.waitForFinished(60'000));
  BOOST_REQUIRE_MESSAGE(python.exitCode() == 0, python.readAllStandardError().toStdString());
  return QJsonDocument::fromJson(python.readAllStandardOutput()).array();
}

} // namespace

BOOST_AUTO_TEST_SUITE(calendar_files)

BOOST_AUTO_TEST_CASE(a_calendar_program_reads_what_was_written) {
  CalendarEvent event;
  event.uid = QStringLiteral("0123@hangbook");
  event.from = QDate(2028, 2, 28);
  event.to = QDate(2028, 2, 29);
  event.summary = QStringLiteral("3 to examine; with a semicolon, a comma and a \\");
  event.description =
      QStringLiteral("MB-1 (Marram bass): yearly\nH-2: ") + QString(100, QChar(0x00e9)) +
      QStringLiteral(" – über die Zeile hinaus "
                     "🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚🎚");
  event.location = QStringLiteral("Gannet Hall, Skerrymouth");
  const QByteArray file = writeCalendar({event, event}, QDateTime(QDate(2028, 1, 1), QTime(9, 30), Qt::UTC));
  for (const QByteArray& line : file.split('\n')) {
    BOOST_TEST(line.size() <= 76, "75 octets and the carriage return");
    BOOST_TEST((line.isEmpty() || line.endsWith('\r')));
    BOOST_TEST(QString::fromUtf8(line).toUtf8() == line, "no character is cut");
  }
  const QJsonArray events = readByPython(file);
  BOOST_REQUIRE(events.size() == 2);
  const QJsonArray read = events[0].toArray();
  BOOST_TEST((read[0].toString() == event.uid));
  BOOST_TEST((read[1].toString() == "2028-02-28"));
  BOOST_TEST((read[2].toString() == "2028-03-01")); // exclusive
  BOOST_TEST((read[3].toString() == event.summary));
  BOOST_TEST((read[4].toString() == event.description));
  BOOST_TEST((read[5].toString() == event.location));
}

BOOST_AUTO_TEST_CASE(an_empty_calendar_is_a_calendar) {
  BOOST_TEST(readByPython(writeCalendar({}, QDateTime::currentDateTimeUtc())).isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
