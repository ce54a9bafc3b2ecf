// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hung_sort.h"

#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using calendar::Hung;
using fleet::UnitKind;

/// Whether the unit hangs at another place of the show too.
bool hangsTwice(const Work& work, const Hung& hung) {
  return std::ranges::count_if(work.after.hung, [&hung](const Hung& each) {
           return each.tour == hung.tour && each.show == hung.show && each.serial == hung.serial;
         }) > 1;
}

void checkUnit(Work& work, const Hung& hung, const At& at) {
  const fleet::Unit* unit = work.units.find(hung.serial);
  if (unit == nullptr) {
    at.fault("serial", hung.serial, "a unit that is in the store");
  } else if (unit->pieces || unit->kind != (hung.element == 0 ? UnitKind::bar : UnitKind::cabinet)) {
    at.fault("serial", hung.serial,
             hung.element == 0 ? QStringLiteral("a bar: this is place 0")
                               : QStringLiteral("a cabinet with a serial of its own"));
  } else if (hangsTwice(work, hung)) {
    at.fault("serial", hung.serial, "each unit once in a show");
  }
}

} // namespace

std::unique_ptr<Sort> hungSort() {
  using Line = Hung;
  auto handling = recordHandling<Line>(
      &Work::hung,
      [](const Line& line) {
        return joined({line.tour, line.show, line.hang, QString::number(line.element)});
      },
      [](const Data& data) -> const std::vector<Line>& { return data.hung; });
  handling.check = [](Work& work, const Line& line, const At& at) {
    mustBeHang(work, line, at);
    if (!line.serial.isEmpty()) {
      checkUnit(work, line, at);
    }
  };
  return std::make_unique<SortOf<Line>>(
      "hung unit",
      withSource<Line>({
          name<Line>("tour", HANGBOOK_FIELD(tour)),
          name<Line>("show", HANGBOOK_FIELD(show)),
          name<Line>("hang", HANGBOOK_FIELD(hang)),
          integer<Line>("cabinet", HANGBOOK_FIELD(element), Bound::pieces, Need::key),
          text<Line>("serial", HANGBOOK_FIELD(serial)),
      }),
      std::move(handling));
}

} // namespace hangbook::exchange
