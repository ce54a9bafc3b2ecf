// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/find_index.h"

#include <algorithm>
#include <array>

#include "desk/source/source.h"

namespace hangbook::desk {
namespace {

enum Rank { exact, recentOne, begins, wordBegins, within, ranks };

bool sameThing(const Findable& a, const Findable& b) {
  return a.place == b.place && a.key == b.key && a.part == b.part &&
         a.text.section(QStringLiteral(" · "), 0, 0) == b.text.section(QStringLiteral(" · "), 0, 0);
}

Rank rankOf(const QString& text, const QString& first) {
  const QString name = text.section(QStringLiteral(" · "), 0, 0);
  if (name.compare(first, Qt::CaseInsensitive) == 0) {
    return exact;
  }
  if (name.startsWith(first, Qt::CaseInsensitive)) {
    return begins;
  }
  for (qsizetype at = text.indexOf(first, 0, Qt::CaseInsensitive); at >= 0;
       at = text.indexOf(first, at + 1, Qt::CaseInsensitive)) {
    if (at == 0 || !text[at - 1].isLetterOrNumber()) {
      return wordBegins;
    }
  }
  return within;
}

} // namespace

FindIndex::FindIndex(const Overview& overview) {
  refuseWindowThread("what can be found");
  all_ = findablesOf(overview);
}

Found FindIndex::find(const QString& words, const std::vector<Findable>& recent, int most,
                      const std::function<bool()>& stop) const {
  refuseWindowThread("the search");
  const QString whole = words.simplified();
  const QStringList each = whole.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  std::array<std::vector<Findable>, ranks> buckets;
  for (const Findable& before : recent) {
    const auto now = std::ranges::find_if(all_, [&](const Findable& one) { return sameThing(one, before); });
    const bool fits = now != all_.end() && std::ranges::all_of(each, [&](const QString& word) {
                        return now->text.contains(word, Qt::CaseInsensitive);
                      });
    if (fits && rankOf(now->text, whole) != exact) {
      buckets[recentOne].push_back(*now);
    }
  }
  Found found;
  int fitting = 0;
  for (std::size_t i = 0; i < all_.size(); ++i) {
    if (stop && i % 4096 == 0 && stop()) {
      return {};
    }
    const Findable& one = all_[i];
    const bool fits = each.isEmpty() ? one.key.isEmpty() // places and help
                                     : std::ranges::all_of(each, [&](const QString& word) {
                                         return one.text.contains(word, Qt::CaseInsensitive);
                                       });
    if (!fits) {
      continue;
    }
    ++fitting;
    auto& bucket = buckets[each.isEmpty() ? within : rankOf(one.text, whole)];
    if (static_cast<int>(bucket.size()) < most && std::ranges::count(buckets[recentOne], one) == 0) {
      bucket.push_back(one);
    }
  }
  for (auto& bucket : buckets) {
    for (Findable& one : bucket) {
      if (static_cast<int>(found.first.size()) < most) {
        found.first.push_back(std::move(one));
      }
    }
  }
  found.more = std::max(0, fitting - static_cast<int>(found.first.size()));
  return found;
}

} // namespace hangbook::desk
