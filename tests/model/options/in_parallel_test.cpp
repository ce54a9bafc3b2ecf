// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <atomic>
#include <chrono>
#include <mutex>
#include <set>
#include <stdexcept>
#include <thread>
#include <vector>

#include "options/in_parallel.h"

using hangbook::options::inParallel;

BOOST_AUTO_TEST_SUITE(in_parallel)

BOOST_AUTO_TEST_CASE(every_job_is_done_once_whatever_the_number_of_threads) {
  for (const int threads : {0, 1, 2, 7}) {
    for (const std::size_t count : {0U, 1U, 2U, 40U}) {
      std::vector<std::atomic<int>> done(count);
      std::size_t last = 0;
      inParallel(
          count, threads, [&](std::size_t job) { ++done.at(job); },
          [&](std::size_t so) {
            BOOST_TEST(so > 0U);
            BOOST_TEST(so >= last);
            BOOST_TEST(so <= count);
            last = so;
          });
      for (const auto& each : done) {
        BOOST_TEST(each.load() == 1);
      }
      BOOST_TEST(last == count);
    }
  }
}

BOOST_AUTO_TEST_CASE(no_more_threads_than_asked_for_take_part) {
  const auto crewOf = [](int threads) {
    std::mutex mutex;
    std::set<std::thread::id> crew;
    inParallel(
        40, threads,
        [&](std::size_t) {
          const std::lock_guard lock(mutex);
          crew.insert(std::this_thread::get_id());
        },
        [](std::size_t) {});
    return crew;
  };
  BOOST_TEST((crewOf(1) == std::set{std::this_thread::get_id()}));
  BOOST_TEST(crewOf(2).size() <= 2U);
  BOOST_TEST(!crewOf(3).contains(std::this_thread::get_id()));   // that one tells how far it is
  const bool several = std::thread::hardware_concurrency() > 1U; // 0: as many as there are
  BOOST_TEST(!crewOf(0).contains(std::this_thread::get_id()) == several);
}

BOOST_AUTO_TEST_CASE(the_lowest_job_that_failed_is_told_of) {
  for (const int threads : {1, 2, 5}) {
    std::string why;
    try {
      inParallel(
          30, threads,
          [](std::size_t job) {
            if (job == 2 || job == 3 || job == 4) {
              throw std::runtime_error("job " + std::to_string(job));
            }
          },
          [](std::size_t) {});
    } catch (const std::runtime_error& error) {
      why = error.what();
    }
    BOOST_TEST(why == "job 2", why); // jobs begin in order: it had begun before a later one could fail
  }
}

/// Also where that one fails last: it waits for the other, and a while for that to be taken down.
BOOST_AUTO_TEST_CASE(the_lowest_job_is_told_of_though_it_failed_later) {
  std::atomic<bool> other{false};
  std::string why;
  try {
    inParallel(
        2, 2,
        [&other](std::size_t job) {
          if (job == 0) {
            while (!other) {
              std::this_thread::yield();
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
          }
          other = true;
          throw std::runtime_error("job " + std::to_string(job));
        },
        [](std::size_t) {});
  } catch (const std::runtime_error& error) {
    why = error.what();
  }
  BOOST_TEST(why == "job 0");
}

BOOST_AUTO_TEST_CASE(once_a_job_has_failed_no_other_is_begun) {
  for (const int threads : {1, 2, 5}) {
    std::atomic<int> begun{0};
    BOOST_CHECK_THROW(inParallel(
                          100, threads,
                          [&](std::size_t) {
                            ++begun;
                            throw std::runtime_error("each of them fails");
                          },
                          [](std::size_t) {}),
                      std::runtime_error);
    BOOST_TEST(begun.load() >= 1);
    BOOST_TEST(begun.load() <= threads); // one for each who had begun before the first was seen to fail
  }
}

BOOST_AUTO_TEST_CASE(who_is_told_may_end_it) {
  for (const int threads : {1, 3}) {
    std::atomic<int> done{0};
    BOOST_CHECK_THROW(inParallel(
                          1000, threads,
                          [&](std::size_t) {
                            ++done;
                            std::this_thread::sleep_for(std::chrono::milliseconds(1));
                          },
                          [](std::size_t) { throw std::logic_error("enough"); }),
                      std::logic_error);
    BOOST_TEST(done.load() >= 1);
    BOOST_TEST(done.load() < 1000); // no other is begun
  }
}

BOOST_AUTO_TEST_SUITE_END()
