// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "catalogue/bar.h"
#include "catalogue/cabinet.h"
#include "catalogue/lifting.h"
#include "catalogue/stacking.h"

namespace hangbook::catalogue {

/// All makers' data, as a value. Each list is in order of name.
struct Catalogue {
  std::vector<CabinetType> cabinets;
  std::vector<BarType> bars;
  std::vector<HoistType> hoists;
  std::vector<ChainType> chains;
  std::vector<HardwareType> hardware;
  std::vector<CartType> carts;
  std::vector<StackingTable> tables;
  bool operator==(const Catalogue&) const = default;
};

/// The record of that name, or nullptr.
template <class Type>
const Type* find(const std::vector<Type>& list, const QString& name) {
  for (const Type& each : list) {
    if (each.name == name) {
      return &each;
    }
  }
  return nullptr;
}

} // namespace hangbook::catalogue
