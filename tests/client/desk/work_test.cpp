// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <stdexcept>

#include <QThread>

#include "desk/source/work.h"
#include "waiting.h"

using namespace hangbook::desk;
using hangbook::testing::waitUntil;

BOOST_AUTO_TEST_SUITE(work)

BOOST_AUTO_TEST_CASE(a_job_runs_elsewhere_and_its_answer_arrives_here) {
  Work work;
  QObject receiver;
  QThread* ranOn = nullptr;
  QThread* arrivedOn = nullptr;
  work.start(
      &receiver, [](Watch&) { return QThread::currentThread(); },
      [&](QThread* thread) {
        ranOn = thread;
        arrivedOn = QThread::currentThread();
      },
      [](const std::exception_ptr&) { BOOST_FAIL("nothing was thrown"); });
  BOOST_TEST(work.busy());
  BOOST_TEST(waitUntil([&] { return !work.busy(); }));
  BOOST_TEST(ranOn != QThread::currentThread());
  BOOST_TEST(arrivedOn == QThread::currentThread());
}

BOOST_AUTO_TEST_CASE(what_a_job_throws_arrives_too) {
  Work work;
  QObject receiver;
  std::string said;
  work.start(
      &receiver, [](Watch&) -> int { throw std::runtime_error("no such point"); },
      [](int) { BOOST_FAIL("it threw"); },
      [&](const std::exception_ptr& what) {
        try {
          std::rethrow_exception(what);
        } catch (const std::runtime_error& error) {
          said = error.what();
        }
      });
  BOOST_TEST(waitUntil([&] { return !work.busy(); }));
  BOOST_TEST(said == "no such point");
}

BOOST_AUTO_TEST_CASE(a_cancelled_job_answers_nothing) {
  Work work;
  QObject receiver;
  bool arrived = false;
  auto watch = work.start(
      &receiver,
      [](Watch& own) {
        while (!own.cancelled()) {
          QThread::yieldCurrentThread();
        }
        return 1;
      },
      [&](int) { arrived = true; }, [&](const std::exception_ptr&) { arrived = true; });
  watch->cancel();
  BOOST_TEST(waitUntil([&] { return !work.busy(); }));
  BOOST_TEST(!arrived);
}

BOOST_AUTO_TEST_CASE(an_answer_for_somebody_who_has_gone_is_dropped) {
  Work work;
  auto receiver = std::make_unique<QObject>();
  bool arrived = false;
  work.start(
      receiver.get(), [](Watch&) { return 1; }, [&](int) { arrived = true; },
      [&](const std::exception_ptr&) { arrived = true; });
  receiver.reset();
  BOOST_TEST(waitUntil([&] { return !work.busy(); }));
  BOOST_TEST(!arrived);
}

BOOST_AUTO_TEST_CASE(jobs_that_have_not_begun_are_let_go_at_the_end) {
  QObject receiver;
  {
    Work work;
    for (int i = 0; i < 50; ++i) {
      work.start(
          &receiver, [i](Watch&) { return i; }, [](int) {}, [](const std::exception_ptr&) {});
    }
  }
  QCoreApplication::processEvents(); // messages that arrive after the work has gone are harmless
  BOOST_TEST(true);
}

BOOST_AUTO_TEST_SUITE_END()
