// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/demand.h"

#include <algorithm>
#include <iterator>

namespace hangbook::options {

using fleet::UnitKind;

void addKey(const OptionKey& key, const QString& chain, Numbers& into) {
  for (const QString& type : key.stack) {
    ++into[{UnitKind::cabinet, type}];
  }
  ++into[{UnitKind::bar, key.bar}];
  into[{UnitKind::hoist, key.hoist}] += static_cast<int>(key.points.size());
  if (!chain.isEmpty()) {
    ++into[{UnitKind::chain, chain}];
  }
}

QString chainOf(const catalogue::Catalogue& catalogue, const Choice& choice) {
  const auto* table = catalogue::find(catalogue.tables, choice.key.table);
  return table != nullptr && choice.setting.mark ? table->chain : QString();
}

void addHardware(const calendar::Hang& hang, int picks, Numbers& into) {
  for (const QStringList* list : {&hang.rigging, &hang.secondary}) {
    for (const QString& type : *list) {
      into[{UnitKind::hardware, type}] += picks;
    }
  }
}

void addLooms(const OptionKey& key, const std::vector<calendar::Plug>& plugsOfHang,
              std::set<std::pair<QString, QString>>& looms) {
  for (const calendar::Plug& plug : plugsOfHang) {
    if (plug.element >= 1 && plug.element <= key.stack.size() &&
        key.stack[plug.element - 1] == plug.cabinet) {
      looms.emplace(plug.loom, plug.label);
    }
  }
}

std::vector<const Choice*> newestOf(const std::vector<Choice>& choices) {
  std::vector<const Choice*> newest;
  for (const Choice& each : choices) {
    const auto same = std::find_if(newest.begin(), newest.end(), [&](const Choice* other) {
      return other->tour == each.tour && other->show == each.show && other->hang == each.hang;
    });
    if (same == newest.end()) {
      newest.push_back(&each);
    } else if (each.revision > (*same)->revision) {
      *same = &each;
    }
  }
  return newest;
}

Demand demandOf(const catalogue::Catalogue& catalogue, const calendar::Show& show,
                const std::vector<Choice>& choices, const std::vector<calendar::Plug>& plugs) {
  std::set<std::pair<QString, QString>> looms; // of all hangs: one loom may end in both
  Demand demand{show.tour, show.name, show.awayFrom, show.awayTo, {}, {}};
  const auto newest = newestOf(choices);
  for (const calendar::Hang& hang : show.hangs) {
    const auto choice = std::ranges::find_if(newest, [&](const Choice* each) {
      return each->tour == show.tour && each->show == show.name && each->hang == hang.name;
    });
    if (choice == newest.end()) {
      demand.open << hang.name;
      continue;
    }
    addKey((*choice)->key, chainOf(catalogue, **choice), demand.numbers);
    addHardware(hang, static_cast<int>((*choice)->key.points.size()), demand.numbers);
    std::vector<calendar::Plug> ofHang;
    std::ranges::copy_if(plugs, std::back_inserter(ofHang), [&](const calendar::Plug& each) {
      return each.tour == show.tour && each.show == show.name && each.hang == hang.name;
    });
    addLooms((*choice)->key, ofHang, looms);
  }
  for (const auto& [type, label] : looms) {
    ++demand.numbers[{UnitKind::loom, type}];
  }
  return demand;
}

} // namespace hangbook::options
