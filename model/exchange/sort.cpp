// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sort.h"

#include <algorithm>

namespace hangbook::exchange {

int At::columnOf(const QString& heading) const {
  const auto found = std::ranges::find(*names_, heading);
  return found == names_->end() ? -1 : (*view_.where)[static_cast<std::size_t>(found - names_->begin())];
}

void At::fault(const QString& heading, const QString& read, const QString& expected) const {
  const int column = columnOf(heading);
  const QString written = column < 0 ? heading : (*view_.headings)[static_cast<std::size_t>(column)].written;
  work_->faults.push_back({view_.number, written, read, expected});
}

QString At::cell(const QString& heading) const {
  const int column = columnOf(heading);
  return column < 0 ? QString() : (*view_.cells)[column];
}

} // namespace hangbook::exchange
