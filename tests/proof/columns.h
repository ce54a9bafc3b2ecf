// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <QString>
#include <QStringList>

#include "exchange/import.h"

/// Every column that a figure may come in by, as the dictionary of exchange has it, and what is worse for it.
namespace hangbook::testing {

/// One line of a file: its texts by heading.
struct Row {
  QStringList headings;
  QStringList cells;

  QString operator[](const char* heading) const;
  void set(const QString& heading, const QString& text);
};

/// A worse text for a cell; empty where there is none.
using Worse = std::function<QString(const QString& text, const Row& row)>;

/// What the property tests know of one column.
struct Column {
  exchange::Kind kind;
  const char* record;
  const char* heading;
  /// How it gets worse, each with the rules that this holds for; none: `why` tells.
  struct Way {
    Worse worse;
    std::vector<const char*> only; ///< empty: all rules
  };
  std::vector<Way> ways;
  std::string why; ///< no direction is worse for any rule, or (of `only`) why not for the others
};

/// One for each column of types, units, venues and shows, in no order.
const std::vector<Column>& columns();

/// An empty cell there is a statement of its own, not a figure that nobody knows. In words, empty where it is
/// not.
std::string emptyMeans(const QString& record, const QString& heading);

} // namespace hangbook::testing
