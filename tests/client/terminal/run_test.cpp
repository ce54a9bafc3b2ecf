// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <sstream>

#include "quantity/error.h"
#include "terminal/commands.h"
#include "terminal/run.h"
#include "terminal/words.h"

using namespace hangbook;
using terminal::Command;
using terminal::Context;
using terminal::Ending;
using terminal::Given;

namespace {

struct Ran {
  Ending ending;
  std::string out;
  std::string err;
};

Ran run(const std::vector<std::string>& words, const std::string& input = {}) {
  std::istringstream in(input);
  std::ostringstream out;
  std::ostringstream err;
  const Ending ending = terminal::run(words, in, out, err);
  return {ending, out.str(), err.str()};
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// A command made for the test, to read words against.
Command weigh() {
  return {"weigh",
          "weighs",
          {{"--scale", "NAME", "which scale", true},
           {"--twice", "", "do it twice"},
           {"--part", "NAME", "what is on it", false, true}},
          {{"THING", "what to weigh"}, {"NOTE", "said with it", false}},
          "hangbook weigh --scale big box",
          [](const Given&, Context&) { return Ending::done; }};
}

struct Reading {
  std::istringstream in;
  std::ostringstream out;
  std::ostringstream err;
  Context context{in, out, err};

  Given read(const std::vector<std::string>& words) { return terminal::read(weigh(), words, context); }
  std::string refusal(const std::vector<std::string>& words) {
    try {
      read(words);
    } catch (const Error& error) {
      return error.what();
    }
    return "not refused";
  }
};

} // namespace

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

BOOST_AUTO_TEST_SUITE(terminal_run)

BOOST_AUTO_TEST_CASE(no_word_and_wrong_words_end_with_2) {
  BOOST_TEST(run({}).ending == Ending::badInput);
  const Ran wrong = run({"statistics"});
  BOOST_TEST(wrong.ending == Ending::badInput);
  BOOST_TEST(contains(wrong.err, "\"statistics\" is not a word of hangbook; it knows "));
  BOOST_TEST(contains(wrong.err, "statics"));
  BOOST_TEST(wrong.out.empty());
}

BOOST_AUTO_TEST_CASE(version_and_help_end_with_0) {
  BOOST_TEST(run({"--version"}).out == "hangbook " HANGBOOK_VERSION "\n");
  const Ran help = run({"--help"});
  BOOST_TEST(help.ending == Ending::done);
  for (const Command& command : terminal::commands()) {
    BOOST_TEST(contains(help.out, command.word));
    BOOST_TEST(contains(help.out, command.purpose));
  }
  BOOST_TEST(run({"help"}).out == help.out);
  BOOST_TEST(run({"--version", "now"}).ending == Ending::badInput);
}

BOOST_AUTO_TEST_CASE(every_command_can_be_told_about) {
  for (const Command& command : terminal::commands()) {
    BOOST_TEST_CONTEXT(command.word) {
      std::vector<std::string> words{"help"};
      std::istringstream parts(command.word);
      for (std::string part; parts >> part;) {
        words.push_back(part);
      }
      const Ran told = run(words);
      BOOST_TEST(told.ending == Ending::done);
      BOOST_TEST(contains(told.out, command.purpose));
      BOOST_TEST(contains(told.out, command.example));
      BOOST_TEST(command.example.starts_with("hangbook " + command.word));
      words.erase(words.begin());
      words.emplace_back("--help");
      BOOST_TEST(run(words).out == told.out);
      // Behind other words too: then nothing else is done.
      words.insert(words.end() - 1, {"--store", "/nowhere/at all.sqlite"});
      BOOST_TEST(run(words).out == told.out);
    }
  }
  BOOST_TEST(run({"help", "nothing"}).ending == Ending::badInput);
}

BOOST_AUTO_TEST_CASE(an_unknown_option_is_one_clear_line) {
  const Ran wrong = run({"statics", "--colour", "red"});
  BOOST_TEST(wrong.ending == Ending::badInput);
  BOOST_TEST(contains(wrong.err, "\"--colour\" is not an option of statics; it takes --store"));
  BOOST_TEST(std::count(wrong.err.begin(), wrong.err.end(), '\n') == 1);
}

BOOST_AUTO_TEST_CASE(options_and_operands_are_sorted_out) {
  Reading reading;
  const Given given = reading.read({"box", "--scale=big", "--twice", "--json", "--by", "A. Rigger", "--as-of",
                                    "2027-04-02", "--store", "tour.hangbook", "--", "--note"});
  BOOST_TEST(given.option("--scale").value() == "big");
  BOOST_TEST(given.has("--twice"));
  BOOST_TEST(given.operand("THING").value() == "box");
  BOOST_TEST(given.operand("NOTE").value() == "--note");
  BOOST_TEST(reading.context.json);
  BOOST_TEST(reading.context.by.value() == "A. Rigger");
  BOOST_TEST(reading.context.store.value() == "tour.hangbook");
  BOOST_TEST((reading.context.asOf.value() == QDate(2027, 4, 2)));
}

BOOST_AUTO_TEST_CASE(an_option_that_may_stand_several_times_is_joined) {
  Reading reading;
  const Given given = reading.read({"box", "--scale", "big", "--part", "left=4", "--part=right=5"});
  BOOST_TEST(given.option("--part").value() == "left=4; right=5");
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_the_words_is_said) {
  BOOST_TEST(Reading().refusal({"box"}) == "weigh needs --scale NAME (which scale)");
  BOOST_TEST(Reading().refusal({"--scale", "big"}) == "weigh needs THING (what to weigh)");
  BOOST_TEST(Reading().refusal({"box", "--scale"}) == "--scale needs NAME behind it (which scale)");
  BOOST_TEST(Reading().refusal({"box", "--scale", "a", "--scale", "b"}) ==
             "--scale stands here for the second time");
  BOOST_TEST(Reading().refusal({"box", "--json", "--json", "--scale", "b"}) ==
             "--json stands here for the second time");
  BOOST_TEST(Reading().refusal({"box", "--scale", "a", "--twice=2"}) == "--twice takes nothing behind it");
  BOOST_TEST(Reading().refusal({"box", "note", "third", "--scale", "a"}) ==
             "\"third\" is one word too many for weigh");
  BOOST_TEST(
      contains(Reading().refusal({"box", "--scale", "a", "--as-of", "2027-02-30"}), "a date is expected"));
}

BOOST_AUTO_TEST_CASE(an_answer_that_cannot_be_written_is_not_done) {
  std::istringstream in;
  std::ostringstream out;
  std::ostringstream err;
  out.setstate(std::ios::badbit);
  BOOST_TEST(terminal::run({"--version"}, in, out, err) != Ending::done);
  BOOST_TEST(contains(err.str(), "could not be written"));
}

BOOST_AUTO_TEST_SUITE_END()
