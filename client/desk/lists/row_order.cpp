// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/row_order.h"

#include <algorithm>
#include <iterator>
#include <numeric>

#include <QLocale>

#include "desk/lists/natural.h"
#include "desk/lists/table_model.h"

namespace hangbook::desk {
namespace {

constexpr std::size_t askedAtOnce = 256; // cells: each may have to be worded
constexpr std::size_t sortedAtOnce = 1024;

} // namespace

void RowOrder::begin(const QAbstractItemModel& source, int column, Qt::SortOrder direction) {
  source_ = &source;
  column_ = column;
  direction_ = direction;
  const auto count = static_cast<std::size_t>(source.rowCount());
  if (rows_.size() != count || column < 0) {
    rows_.resize(count);
    std::iota(rows_.begin(), rows_.end(), 0);
  }
  keys_.clear();
  at_ = 0;
  stage_ = column < 0 || count == 0 ? Stage::done : Stage::asking;
}

void RowOrder::step() {
  switch (stage_) {
  case Stage::asking:
    ask();
    break;
  case Stage::sorting:
    sortRuns();
    break;
  case Stage::merging:
    mergeRuns();
    break;
  case Stage::done:
    break;
  }
}

void RowOrder::ask() {
  const std::size_t count = rows_.size();
  keys_.resize(count);
  for (const std::size_t end = std::min(count, at_ + askedAtOnce); at_ < end; ++at_) {
    const QVariant value = source_->index(static_cast<int>(at_), column_).data(orderRole);
    if (value.isValid()) {
      const bool number = value.typeId() == QMetaType::Double;
      keys_[at_].is = number ? Key::Is::number : Key::Is::text;
      keys_[at_].number = number ? value.toDouble() : 0.0;
      keys_[at_].text = number ? QString() : value.toString();
    }
  }
  if (at_ == count) {
    sorting_.resize(count);
    std::iota(sorting_.begin(), sorting_.end(), 0);
    at_ = 0;
    run_ = sortedAtOnce;
    stage_ = Stage::sorting;
  }
}

int RowOrder::compare(const Key& one, const Key& other) {
  if (one.is == Key::Is::number && other.is == Key::Is::number) {
    return one.number < other.number ? -1 : (other.number < one.number ? 1 : 0);
  }
  const auto textOf = [](const Key& key) {
    return key.is == Key::Is::number ? QString::number(key.number, 'g', QLocale::FloatingPointShortest)
                                     : key.text;
  };
  return compareNatural(textOf(one), textOf(other));
}

bool RowOrder::before(int one, int other) const {
  const Key& a = keys_[static_cast<std::size_t>(one)];
  const Key& b = keys_[static_cast<std::size_t>(other)];
  const bool aKnown = a.is != Key::Is::missing;
  const bool bKnown = b.is != Key::Is::missing;
  if (!aKnown || !bKnown) {
    return aKnown && !bKnown;
  }
  const int order = compare(a, b);
  return direction_ == Qt::AscendingOrder ? order < 0 : order > 0;
}

void RowOrder::sortRuns() {
  const auto less = [this](int one, int other) { return before(one, other); };
  const std::size_t end = std::min(sorting_.size(), at_ + run_);
  const auto from = sorting_.begin() + static_cast<std::ptrdiff_t>(at_);
  const auto to = sorting_.begin() + static_cast<std::ptrdiff_t>(end);
  if (!std::is_sorted(from, to, less)) { // as lists that the store has sorted are
    std::stable_sort(from, to, less);
  }
  at_ = end;
  if (at_ == sorting_.size()) {
    at_ = 0;
    merged_.clear();
    merged_.reserve(sorting_.size());
    stage_ = Stage::merging;
  }
}

void RowOrder::mergeRuns() {
  if (run_ >= sorting_.size()) {
    finish();
    return;
  }
  const auto less = [this](int one, int other) { return before(one, other); };
  const auto iterator = [this](std::size_t at) {
    return sorting_.begin() + static_cast<std::ptrdiff_t>(std::min(at, sorting_.size()));
  };
  const auto from = iterator(at_);
  const auto middle = iterator(at_ + run_);
  const auto to = iterator(at_ + 2 * run_);
  if (middle == to || !less(*middle, *std::prev(middle))) { // in order as they stand
    merged_.insert(merged_.end(), from, to);
  } else {
    std::merge(from, middle, middle, to, std::back_inserter(merged_), less);
  }
  at_ += 2 * run_;
  if (at_ >= sorting_.size()) {
    sorting_.swap(merged_);
    merged_.clear();
    at_ = 0;
    run_ *= 2;
  }
}

void RowOrder::finish() {
  rows_.swap(sorting_);
  keys_ = {};
  sorting_ = {};
  merged_ = {};
  stage_ = Stage::done;
}

} // namespace hangbook::desk
