// SPDX-License-Identifier: GPL-3.0-or-later
// A check of a tour that is interrupted (Ctrl+C) ends in good order, and what it had checked is kept.
#include <boost/test/unit_test.hpp>

#include <csignal>

#include <QProcess>
#include <QTemporaryDir>

#include "program.h"

using namespace hangbook;

namespace {

constexpr int patience = 300'000; // ms, of a loaded machine under sanitizers

struct Interrupted {
  bool ended = false; ///< by itself, not by the signal
  int status = -1;
  QByteArray out;
  QByteArray told; ///< on standard error
};

/// Checks the tour of a store and interrupts that as soon as it has told this.
Interrupted interruptAfter(const QByteArray& told, const QString& store) {
  QProcess process;
  process.setReadChannel(QProcess::StandardError); // the one that is waited for
  process.start(testing::programPath(),
                {QStringLiteral("route"), QStringLiteral("--check"), QStringLiteral("--store"), store});
  Interrupted result;
  while (!result.told.contains(told) && process.waitForReadyRead(patience)) {
    result.told += process.readAllStandardError();
  }
  BOOST_TEST_REQUIRE(process.state() == QProcess::Running, result.told.toStdString());
  ::kill(static_cast<pid_t>(process.processId()), SIGINT);
  result.ended = process.waitForFinished(patience) && process.exitStatus() == QProcess::NormalExit;
  result.status = process.exitCode();
  result.told += process.readAllStandardError();
  result.out = process.readAllStandardOutput();
  return result;
}

} // namespace

BOOST_AUTO_TEST_SUITE(interrupt)

BOOST_AUTO_TEST_CASE(a_check_that_is_interrupted_keeps_what_it_did) {
  const QTemporaryDir folder;
  const QString store = folder.filePath(QStringLiteral("tour.sqlite"));
  BOOST_TEST_REQUIRE(testing::program({QStringLiteral("demo"), QStringLiteral("--store"), store}).status ==
                     0);

  const Interrupted first = interruptAfter(" checked\n", store);
  BOOST_TEST(first.ended);
  BOOST_TEST(first.status == 1); // it did not find that all stand
  BOOST_TEST(first.told.contains("1 of 11: "));
  BOOST_TEST(!first.told.contains("11 of 11: "));
  BOOST_TEST(first.out.contains("Stopped before the end. What was checked is kept"), first.out.toStdString());

  // The next check goes on from there: one of those that are kept is told again without being checked.
  const Interrupted second = interruptAfter(" as checked before\n", store);
  BOOST_TEST(second.ended);
  BOOST_TEST(second.status == 1);
  BOOST_TEST(second.told.contains(" as checked before\n"), second.told.toStdString());

  // And the store is whole.
  BOOST_TEST(testing::program({QStringLiteral("check-store"), QStringLiteral("--store"), store}).status == 0);
}

BOOST_AUTO_TEST_SUITE_END()
