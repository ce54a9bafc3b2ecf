// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/changes.h"

namespace hangbook::exchange {
namespace {

/// Work changes records where they stand and puts new ones behind them, so that the lists begin alike.
template <class Record>
void compare(const std::vector<Record>& before, const std::vector<Record>& after, std::vector<Record>& added,
             std::vector<Record>& changed) {
  for (std::size_t at = 0; at < after.size(); ++at) {
    if (at >= before.size()) {
      added.push_back(after[at]);
    } else if (!(after[at] == before[at])) {
      changed.push_back(after[at]);
    }
  }
}

} // namespace

Changes changesBetween(const Data& before, const Data& after) {
  Changes all;
  const auto each = [&](auto of) { compare(of(before), of(after), of(all.added), of(all.changed)); };
  each([](auto& data) -> auto& { return data.catalogue.cabinets; });
  each([](auto& data) -> auto& { return data.catalogue.bars; });
  each([](auto& data) -> auto& { return data.catalogue.hoists; });
  each([](auto& data) -> auto& { return data.catalogue.chains; });
  each([](auto& data) -> auto& { return data.catalogue.hardware; });
  each([](auto& data) -> auto& { return data.catalogue.carts; });
  each([](auto& data) -> auto& { return data.catalogue.tables; });
  each([](auto& data) -> auto& { return data.cabling.connectors; });
  each([](auto& data) -> auto& { return data.cabling.sockets; });
  each([](auto& data) -> auto& { return data.cabling.ends; });
  each([](auto& data) -> auto& { return data.cabling.plugs; });
  each([](auto& data) -> auto& { return data.people; });
  each([](auto& data) -> auto& { return data.examinationRules; });
  each([](auto& data) -> auto& { return data.places; });
  each([](auto& data) -> auto& { return data.units; });
  each([](auto& data) -> auto& { return data.examinations; });
  each([](auto& data) -> auto& { return data.venues; });
  each([](auto& data) -> auto& { return data.tours; });
  each([](auto& data) -> auto& { return data.shows; });
  each([](auto& data) -> auto& { return data.hung; });
  each([](auto& data) -> auto& { return data.chosen; });
  each([](auto& data) -> auto& { return data.marks; });
  return all;
}

} // namespace hangbook::exchange
