// SPDX-License-Identifier: GPL-3.0-or-later
// Due dates against python-dateutil's relativedelta (an independent library of general use), over every day
// of eight years, two leap days among them, for the intervals that rules have. V: run here.
#include <boost/test/unit_test.hpp>

#include <QProcess>

#include "fleet/standing.h"

using namespace hangbook::fleet;

BOOST_AUTO_TEST_SUITE(dateutil)

BOOST_AUTO_TEST_CASE(every_day_of_eight_years_is_due_when_dateutil_says) {
  QProcess python;
  python.start(
      QStringLiteral("/usr/bin/python3"),
      {QStringLiteral("-c"), QStringLiteral("from datetime import date, timedelta\n"
                                            "from dateutil.relativedelta import relativedelta\n"
                                            "day = date(2024, 1, 1)\n"
                                            "while day < date(2032, 1, 1):\n"
                                            "  for months in (1, 3, 6, 12, 48):\n"
                                            "    print(day, months, day + relativedelta(months=months))\n"
                                            "  day += timedelta(days=1)\n")});
  BOOST_REQUIRE(python.waitForFinished(120'000));
  BOOST_REQUIRE_MESSAGE(python.exitCode() == 0, python.readAllStandardError().toStdString());
  int compared = 0;
  for (const QByteArray& line : python.readAllStandardOutput().split('\n')) {
    const QList<QByteArray> words = line.split(' ');
    if (words.size() != 3) {
      continue;
    }
    ExaminationRule rule;
    rule.months = words[1].toInt();
    Examination examined;
    examined.date = QDate::fromString(QString::fromLatin1(words[0]), Qt::ISODate);
    const QDate until = standingOf(rule, &examined, {}).until;
    ++compared;
    if (until.toString(Qt::ISODate).toLatin1() != words[2]) {
      BOOST_ERROR(words[0].toStdString()
                  << " + " << *rule.months << " months: dateutil says " << words[2].toStdString() << ", not "
                  << until.toString(Qt::ISODate).toStdString());
    }
  }
  BOOST_TEST(compared == 2922 * 5);
}

BOOST_AUTO_TEST_SUITE_END()
