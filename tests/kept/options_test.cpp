// SPDX-License-Identifier: GPL-3.0-or-later
// Every rule on some hundred options of shows no two parts of which are alike, against what was kept.
#include <boost/test/unit_test.hpp>

#include "kept/option_lines.h"
#include "kept/unlike_show.h"
#include "options/search.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Option;
using options::Snapshot;

namespace {

constexpr std::uint64_t shows = 150;
constexpr std::uint64_t parts = 4;

std::string named(std::uint64_t seed, std::size_t number) {
  return "show " + std::to_string(seed) + " option " + std::to_string(number);
}

/// Some of those that have a setting, spread over the list; where none has, the first.
std::vector<const Option*> someOf(const std::vector<Option>& all, std::size_t most) {
  std::vector<const Option*> possible;
  for (const Option& each : all) {
    if (each.setting) {
      possible.push_back(&each);
    }
  }
  if (possible.empty() && !all.empty()) {
    possible.push_back(&all.front());
  }
  std::vector<const Option*> some;
  for (std::size_t i = 0; i < possible.size(); i += 1 + possible.size() / most) {
    some.push_back(possible[i]);
  }
  return some;
}

void decided(std::vector<Line>& lines, std::uint64_t seed) {
  const Snapshot snapshot = unlikeShow(seed);
  const options::HangOptions found = options::decide(snapshot, QStringLiteral("left")).hangs.front();
  Line line("show " + std::to_string(seed));
  line.number(static_cast<double>(found.decided.options));
  line.number(static_cast<double>(found.decided.settings));
  line.word(found.decided.steps.toStdString());
  for (const Option& each : found.options) {
    line.word(each.id.toStdString());
    line.word(letters(each));
  }
  lines.push_back(line);
  std::size_t number = 0;
  for (const Option* each : someOf(found.options, 3)) {
    addOption(lines, named(seed, number), *each);
    if (each->setting) {
      options::Setting beside = *each->setting;
      beside.tiltDeg += 1.37;
      beside.trimM += 0.413;
      addOption(lines, named(seed, number) + " beside", options::judge(snapshot, each->key, beside));
    }
    ++number;
  }
}

/// Every fourth show, from this one on.
void partOfThem(std::uint64_t part) {
  std::vector<Line> lines;
  for (std::uint64_t seed = part; seed < shows; seed += parts) {
    if (looksAt(seed)) {
      decided(lines, seed);
    }
  }
  compareWithKept(lines, partFile("options", part));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(options_come_out_as_kept_1) {
  partOfThem(0);
}
BOOST_AUTO_TEST_CASE(options_come_out_as_kept_2) {
  partOfThem(1);
}
BOOST_AUTO_TEST_CASE(options_come_out_as_kept_3) {
  partOfThem(2);
}
BOOST_AUTO_TEST_CASE(options_come_out_as_kept_4) {
  partOfThem(3);
}

BOOST_AUTO_TEST_SUITE_END()
