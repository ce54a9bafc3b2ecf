// SPDX-License-Identifier: GPL-3.0-or-later
// The runner of every test program: Boost.Test's own, plus a line of counts for tests/run, which adds
// them up over all programs (ctest alone would count programs, not cases).
#include <boost/test/results_collector.hpp>
#include <boost/test/tree/observer.hpp>
#include <boost/test/unit_test.hpp>

#include <cstdlib>
#include <fstream>

#include "support/application.h"

namespace {

class CaseCounter : public boost::unit_test::test_observer {
public:
  // After the framework's own observers. At the usual 0 it may come before the one (Boost 1.74) whose flag
  // "start failed" is set only in its own turn and read after each: the run then failed by chance.
  int priority() override { return 5; }

  void test_finish() override {
    const char* path = std::getenv("HANGBOOK_TEST_COUNTS");
    if (path == nullptr) {
      return;
    }
    const auto& results =
        boost::unit_test::results_collector.results(boost::unit_test::framework::master_test_suite().p_id);
    std::ofstream(path, std::ios::app)
        << results.p_test_cases_passed << ' ' << results.p_test_cases_failed + results.p_test_cases_aborted
        << ' ' << results.p_test_cases_skipped << '\n';
  }
};

bool registerCounter() {
  static CaseCounter counter;
  boost::unit_test::framework::register_observer(counter);
  return true;
}

} // namespace

namespace hangbook::testing {
namespace {
ApplicationMaker applicationMaker = nullptr;
}
bool useApplication(ApplicationMaker maker) {
  applicationMaker = maker;
  return true;
}
} // namespace hangbook::testing

int main(int argc, char** argv) {
  // A program of window tests names a maker of the QApplication before main starts; the others need none.
  std::unique_ptr<QCoreApplication> application;
  if (hangbook::testing::applicationMaker != nullptr) {
    application = hangbook::testing::applicationMaker(argc, argv);
  } else {
    application = std::make_unique<QCoreApplication>(argc, argv);
  }
  return boost::unit_test::unit_test_main(&registerCounter, argc, argv);
}
