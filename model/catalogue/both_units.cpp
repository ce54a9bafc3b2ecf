// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalogue/both_units.h"

#include "quantity/both_units.h"

namespace hangbook::catalogue {

std::vector<std::string> namesWithQuantities(const Catalogue& all) {
  std::vector<std::string> names;
  const auto addAll = [&names](const auto& list) {
    for (const auto& each : list) {
      std::string name = each.name.toStdString();
      if (hangbook::inBothUnits(name) != name) {
        names.push_back(std::move(name));
      }
    }
  };
  addAll(all.cabinets);
  addAll(all.bars);
  addAll(all.hoists);
  addAll(all.chains);
  addAll(all.hardware);
  addAll(all.carts);
  addAll(all.tables);
  return names;
}

QString inBothUnits(const QString& text, const std::vector<std::string>& names) {
  return QString::fromStdString(hangbook::inBothUnits(text.toStdString(), names));
}

} // namespace hangbook::catalogue
