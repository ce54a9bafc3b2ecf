// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <utility>

#include "exchange/import.h"
#include "exchange/kind_sorts.h"

namespace hangbook::exchange {
namespace {

constexpr std::array words = {std::pair{Kind::types, "types"}, std::pair{Kind::people, "people"},
                              std::pair{Kind::units, "units"}, std::pair{Kind::venues, "venues"},
                              std::pair{Kind::shows, "shows"}, std::pair{Kind::marks, "marks"}};

} // namespace

QString wordFor(Kind kind) {
  return writeWord<Kind>(kind, words);
}

Kind kindFrom(const QString& word) {
  try {
    return readWord<Kind>({word.trimmed(), {}, {}}, words);
  } catch (const Unreadable& trouble) {
    throw Error(Trouble::badInput, "expected " + trouble.expected.toStdString(),
                "--kind " + word.toStdString());
  }
}

const std::vector<Kind>& allKinds() {
  static const std::vector<Kind> kinds = {Kind::types,  Kind::people, Kind::units,
                                          Kind::venues, Kind::shows,  Kind::marks};
  return kinds;
}

const Sorts& sortsOf(Kind kind) {
  switch (kind) {
  case Kind::types:
    return typeSorts();
  case Kind::units:
    return unitSorts();
  case Kind::venues:
    return venueSorts();
  case Kind::shows:
    return showSorts();
  case Kind::people:
    return peopleSorts();
  case Kind::marks:
    return markSorts();
  }
  throw Error(Trouble::badInput, "a kind of file that there is none of");
}

std::vector<Heading> headingsTogether(const Sorts& sorts) {
  std::vector<Heading> together;
  for (const auto& sort : sorts) {
    for (const Heading& heading : sort->headings()) {
      if (std::ranges::none_of(together, [&](const Heading& each) { return each.name == heading.name; })) {
        together.push_back(heading);
      }
    }
  }
  return together;
}

QString writtenHeading(const Heading& heading) {
  const QString unit = QString::fromUtf8(heading.unit);
  return unit.isEmpty() ? heading.name : heading.name + QStringLiteral(" [%1]").arg(unit);
}

QStringList headingsOf(Kind kind) {
  QStringList all(recordHeading());
  for (const Heading& heading : headingsTogether(sortsOf(kind))) {
    all << writtenHeading(heading);
  }
  return all;
}

QString recordHeading() {
  return QStringLiteral("record");
}

} // namespace hangbook::exchange
