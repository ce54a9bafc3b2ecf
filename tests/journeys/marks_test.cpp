// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "demo_tour.h"
#include "hang/solve.h"

using namespace hangbook;
namespace data = boost::unit_test::data;

/// The mark and the links beside it, each solved anew with the option's own hang: same holes, same chain.
BOOST_DATA_TEST_CASE(each_mark_beside_gives_the_angle_that_is_told,
                     data::make({"Ostrel", "Hallowfen", "Eskerholt"}), show) {
  int compared = 0;
  for (const options::HangOptions& hang : demoOptions(QString::fromLatin1(show)).hangs) {
    for (const options::Option& option : hang.options) {
      if (!option.hangInput || option.marks.size() < 2) {
        continue;
      }
      for (const options::MarkAngle& mark : option.marks) {
        if (!mark.angleDeg) {
          continue;
        }
        hang::Hang input = *option.hangInput;
        input.chain->mark = mark.mark;
        input.set.tiltDeg.reset(); // the angle of the joint does not depend on how the bar is tilted
        if (std::holds_alternative<hang::SidePair>(input.bar.picks)) {
          input.set.actuatorDeg = 0.0;
        } else if (std::holds_alternative<hang::ForeAftPair>(input.bar.picks)) {
          input.set.tiltDeg = 0.0;
        }
        const auto held = static_cast<std::size_t>(input.chain->held) - 1;
        const double solved = hang::solve(input).joints[held].angleDeg;
        ++compared;
        if (std::abs(solved - *mark.angleDeg) > 1e-6) {
          BOOST_ERROR(option.id.toStdString()
                      << " mark " << mark.mark << ": told " << *mark.angleDeg << ", solved " << solved);
        }
      }
    }
  }
  BOOST_TEST(compared > 100);
}
