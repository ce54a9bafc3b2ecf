// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/make_up.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <utility>

#include "quantity/error.h"

namespace hangbook::hang {
namespace {

/// What adding lengths may round, m.
constexpr double roundOff = 1e-9;

void check(std::span<const SteelLength> steels, const MakeUpWish& wish) {
  const auto refuse = [](const std::string& key, const char* expected) {
    throw Error(Trouble::badInput, expected, key);
  };
  if (steels.size() > 40) {
    refuse("steels", "expected at most 40 lengths");
  }
  for (std::size_t i = 0; i < steels.size(); ++i) {
    if (!(steels[i].length > 0.0 && steels[i].length <= 1000.0)) {
      refuse("steels[" + std::to_string(i) + "].length", "must be above 0 and at most 1000 m");
    }
  }
  if (!(wish.length > 0.0 && wish.length <= 1000.0)) {
    refuse("length", "must be above 0 and at most 1000 m");
  }
  if (!(wish.tolerance >= 0.0 && wish.tolerance <= 1000.0)) {
    refuse("tolerance", "must be 0 to 1000 m");
  }
  if (!(wish.shackle >= 0.0 && wish.shackle <= 10.0)) {
    refuse("shackle", "must be 0 to 10 m");
  }
  if (wish.mostSteels < 1 || wish.mostSteels > 12 || wish.moreShackles < 0 || wish.moreShackles > 20) {
    refuse("mostSteels", "expected 1 to 12 steels and 0 to 20 more shackles");
  }
}

class Search {
public:
  Search(std::span<const SteelLength> steels, const MakeUpWish& wish)
      : steels_(steels), wish_(wish), counts_(steels.size(), 0) {}

  std::optional<MakeUp> withSteels(int number) {
    best_.reset();
    fill(0, number, 0.0, number);
    return best_;
  }

private:
  void fill(std::size_t from, int left, double length, int number) {
    if (left == 0) {
      take(length, number);
      return;
    }
    if (from == steels_.size() || length > wish_.length + wish_.tolerance + roundOff) {
      return;
    }
    for (int count = std::min(left, steels_[from].available); count >= 0; --count) {
      counts_[from] = count;
      fill(from + 1, left - count, length + count * steels_[from].length, number);
    }
    counts_[from] = 0;
  }

  void take(double steels, int number) {
    for (int more = 0; more <= wish_.moreShackles; ++more) {
      const int shackles = number + 1 + more;
      const double length = steels + shackles * wish_.shackle;
      if (std::abs(length - wish_.length) <= wish_.tolerance + roundOff && better(shackles, length)) {
        best_ = MakeUp{counts_, shackles, length};
      }
    }
  }

  bool better(int shackles, double length) const {
    const auto miss = [this](double each) { return std::abs(each - wish_.length); };
    return !best_ ||
           std::pair(shackles, miss(length)) < std::pair(best_->shackles, miss(best_->length) - roundOff);
  }

  std::span<const SteelLength> steels_;
  const MakeUpWish& wish_;
  std::vector<int> counts_;
  std::optional<MakeUp> best_;
};

} // namespace

int MakeUp::pieces() const {
  return std::accumulate(steels.begin(), steels.end(), shackles);
}

std::optional<MakeUp> shortestMakeUp(std::span<const SteelLength> steels, const MakeUpWish& wish) {
  check(steels, wish);
  Search search(steels, wish);
  for (int number = 1; number <= wish.mostSteels; ++number) {
    if (auto found = search.withSteels(number)) {
      return found;
    }
  }
  return std::nullopt;
}

} // namespace hangbook::hang
