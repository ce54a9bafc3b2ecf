// SPDX-License-Identifier: GPL-3.0-or-later
// Hangs that nobody would build: degenerate places, masses of nothing, figures beyond any meaning, JSON that
// is almost a hang. Whatever comes in, an answer comes out: figures that are all finite, or an error that
// says why. A bounded number of cases from fixed seeds; HANGBOOK_FUZZ_CASES says more. tests/long/fuzz lets
// libFuzzer look for them.
#include <boost/test/unit_test.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include <QJsonArray>
#include <QJsonDocument>

#include "exchange/hang_json.h"
#include "fuzz/answered.h"
#include "fuzz/twist.h"
#include "support/example_hang.h"
#include "support/random_hang.h"
#include "where.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

int cases(int usual) {
  const char* more = std::getenv("HANGBOOK_FUZZ_CASES");
  return more == nullptr ? usual : std::max(usual, std::atoi(more));
}

/// Fails with what came in, so that it can go into the corpus.
template <class Input>
Answered answeredOrTold(const Input& input, const QByteArray& asText, int number) {
  try {
    return answer(input);
  } catch (const std::exception& trouble) {
    BOOST_ERROR("case " << number << ": " << trouble.what() << "\n" << asText.toStdString());
  }
  return {};
}

QByteArray text(const QJsonValue& value) {
  return QJsonDocument(value.isArray() ? QJsonDocument(value.toArray()) : QJsonDocument(value.toObject()))
      .toJson();
}

QByteArray text(const hang::Hang& hang) {
  return text(exchange::toJson(hang));
}

hang::Hang someHang(RandomHangs& hangs, int number) {
  switch (number % 8) {
  case 0:
    return exampleHang();
  case 1:
    return seatedHang();
  default:
    return hangs.next();
  }
}

struct Tally {
  int read = 0;
  int solved = 0;
  int settled = 0;
  void add(const Answered& each) {
    read += each.read ? 1 : 0;
    solved += each.solved ? 1 : 0;
    settled += each.settled ? 1 : 0;
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(fuzz)

BOOST_AUTO_TEST_CASE(json_that_is_almost_a_hang) {
  RandomHangs hangs(1);
  std::mt19937_64 chance(2);
  Tally tally;
  const int count = cases(6000);
  for (int i = 0; i < count; ++i) {
    QJsonValue value = exchange::toJson(someHang(hangs, i));
    for (int twists = 1 + static_cast<int>(chance() % 3); twists > 0; --twists) {
      value = twisted(value, chance);
    }
    if (value.isObject() || value.isArray()) {
      const QByteArray bytes = text(value);
      tally.add(answeredOrTold(bytes, bytes, i));
    }
  }
  // Most are refused on reading, but enough come through to try the arithmetic.
  BOOST_TEST(tally.read > count / 20);
  BOOST_TEST(tally.read < count * 9 / 10);
  BOOST_TEST(tally.solved > count / 50);
}

BOOST_AUTO_TEST_CASE(bytes_that_are_almost_json) {
  std::mt19937_64 chance(3);
  const QByteArray good = text(exampleHang());
  for (int i = 0; i < cases(2000); ++i) {
    QByteArray bytes = good;
    for (int spots = 1 + static_cast<int>(chance() % 4); spots > 0; --spots) {
      const auto at = static_cast<qsizetype>(chance() % static_cast<std::uint64_t>(bytes.size()));
      switch (chance() % 4) {
      case 0:
        bytes.truncate(at + 1);
        break;
      case 1:
        bytes.remove(at, 1 + static_cast<qsizetype>(chance() % 20));
        bytes.append(' ');
        break;
      case 2:
        bytes.insert(at, bytes.mid(at, static_cast<qsizetype>(chance() % 30)));
        break;
      default:
        bytes[at] = static_cast<char>(chance() % 256);
      }
    }
    answeredOrTold(bytes, bytes, i);
  }
}

BOOST_AUTO_TEST_CASE(figures_that_break_formulas) {
  RandomHangs hangs(4);
  std::mt19937_64 chance(5);
  Tally tally;
  const int count = cases(12000);
  for (int i = 0; i < count; ++i) {
    hang::Hang hang = someHang(hangs, i);
    for (int twists = 1 + static_cast<int>(chance() % 3); twists > 0; --twists) {
      twist(hang, chance);
    }
    tally.add(answeredOrTold(hang, text(hang), i));
  }
  BOOST_TEST(tally.solved > count / 10);
  BOOST_TEST(tally.solved < count * 9 / 10);
  BOOST_TEST(tally.settled > count / 10);
}

BOOST_AUTO_TEST_CASE(nothing_at_all_is_refused) {
  const Answered answered = answer(hang::Hang{});
  BOOST_TEST(!answered.solved);
  BOOST_TEST(!answered.settled);
  BOOST_TEST(!answer(QByteArray()).read);
  BOOST_TEST(!answer(QByteArray("{}")).read);
  BOOST_TEST(!answer(QByteArray("[[[[[[[[[[")).read);
  BOOST_TEST(!answer(QByteArray(100000, '[')).read);
}

BOOST_AUTO_TEST_CASE(the_corpus_is_answered) {
  int files = 0;
  for (const auto& file : std::filesystem::directory_iterator(HANGBOOK_SOURCE_DIR "/tests/fuzz/corpus")) {
    std::ifstream in(file.path(), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    answeredOrTold(QByteArray::fromStdString(bytes), QByteArray::fromStdString(file.path().string()),
                   files++);
  }
  BOOST_TEST(files >= 4);
}

BOOST_AUTO_TEST_SUITE_END()
