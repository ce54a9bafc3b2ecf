// SPDX-License-Identifier: GPL-3.0-or-later
#include "kept/kept.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>

#include <boost/test/unit_test.hpp>

#include "where.h"

namespace hangbook::testing {
namespace {

constexpr double goldenPart = 0.6180339887498949;
constexpr double sameWithin = 1e-9;

std::string text(const char* form, double value) {
  std::array<char, 64> buffer{};
  std::snprintf(buffer.data(), buffer.size(), form, value);
  return buffer.data();
}

bool writes() {
  return std::getenv("HANGBOOK_KEEP") != nullptr;
}

bool takesAll() {
  const char* kept = std::getenv("HANGBOOK_KEPT");
  return writes() || (kept != nullptr && std::string_view(kept) == "all");
}

/// Written lines by their names.
std::map<std::string, std::string> linesOf(const std::string& path) {
  std::ifstream file(path);
  BOOST_REQUIRE_MESSAGE(file, path << " cannot be read");
  std::map<std::string, std::string> lines;
  for (std::string row; std::getline(file, row);) {
    if (!row.starts_with('#')) {
      lines[row.substr(0, row.find('\t'))] = row;
    }
  }
  return lines;
}

} // namespace

void Line::number(double value) {
  ++count_;
  if (!std::isfinite(value)) {
    word(std::isnan(value) ? "nan" : value > 0.0 ? "inf" : "-inf");
    return;
  }
  const double weight = 0.5 + std::fmod(goldenPart * static_cast<double>(count_), 1.0);
  sum_ += weight * std::asinh(times_ * value);
}

void Line::number(const std::optional<double>& value) {
  if (value) {
    number(*value);
  } else {
    word("none");
  }
}

void Line::word(std::string_view text) {
  for (const char each : text) {
    words_ = (words_ ^ static_cast<unsigned char>(each)) * 1099511628211ULL;
  }
  words_ = (words_ ^ 0xFFU) * 1099511628211ULL; // where one word ends and the next begins
}

std::string Line::written() const {
  std::ostringstream out;
  out << name_ << '\t' << plain_ << '\t' << count_ << '\t' << text("%.11f", sum_) << '\t' << std::hex
      << (words_ >> 32);
  return out.str();
}

bool Line::same(const std::string& other) const {
  const std::string mine = written();
  if (mine == other) {
    return true;
  }
  std::istringstream here(mine);
  std::istringstream there(other);
  std::string one;
  std::string two;
  for (int column = 0; column < 5; ++column) {
    std::getline(here, one, '\t');
    std::getline(there, two, '\t');
    const bool alike =
        column == 3 ? std::abs(std::strtod(two.c_str(), nullptr) - sum_) <= sameWithin : one == two;
    if (!alike) {
      return false;
    }
  }
  return true;
}

bool looksAt(std::uint64_t number) {
  return takesAll() || number % 3 == 0;
}

std::string partFile(const char* name, std::uint64_t part) {
  return std::string(name) + '_' + std::to_string(part + 1) + ".txt";
}

void compareWithKept(const std::vector<Line>& lines, const std::string& file) {
  const std::string path = std::string(HANGBOOK_SOURCE_DIR "/tests/kept/") + file;
  if (writes()) {
    std::ofstream out(path);
    out << "# Written by HANGBOOK_KEEP=1 build/tests/kept_test: name, what stands in plain words, number of "
           "figures, their fold, that of the words.\n";
    for (const Line& each : lines) {
      out << each.written() << '\n';
    }
    BOOST_REQUIRE(out.flush());
    return;
  }
  const auto kept = linesOf(path);
  std::size_t different = 0;
  std::string first;
  for (const Line& each : lines) {
    const auto same = kept.find(each.name());
    const std::string before = same == kept.end() ? "nothing" : same->second;
    if (!each.same(before)) {
      first = different++ == 0 ? "\n  kept " + before + "\n  now  " + each.written() : first;
    }
  }
  BOOST_TEST(different == 0U, different << " lines of " << file << " differ, the first:" << first);
  BOOST_TEST((!takesAll() || lines.size() == kept.size()), file << " has other lines");
}

} // namespace hangbook::testing
