// SPDX-License-Identifier: GPL-3.0-or-later
#include "marks/observed.h"

#include <algorithm>
#include <map>

#include "options/rig.h"
#include "options/stacks.h"
#include "quantity/error.h"

namespace hangbook::marks {
namespace {

void say(QString* whyNot, const QString& text) {
  if (whyNot != nullptr) {
    *whyNot = text;
  }
}

/// The rig of a stack by a table that permits it; none, with why.
std::optional<options::Rig> rigOf(const catalogue::Catalogue& catalogue, const QStringList& types,
                                  const QString& bar, const QString& chain, QString* whyNot) {
  const auto* barType = catalogue::find(catalogue.bars, bar);
  const auto* chainType = catalogue::find(catalogue.chains, chain);
  if (barType == nullptr || barType->arrangements.empty() || chainType == nullptr) {
    say(whyNot, QStringLiteral("its bar or chain is not in the makers' data"));
    return std::nullopt;
  }
  for (const catalogue::StackingTable& table : catalogue.tables) {
    if (table.chain != chain || std::ranges::find(table.bars, bar) == table.bars.end()) {
      continue;
    }
    options::Stack stack;
    for (qsizetype i = 0; i < types.size(); ++i) {
      const auto* cabinet = catalogue::find(catalogue.cabinets, types[i]);
      const QString above = i == 0 ? QString() : types[i - 1];
      const auto join = std::ranges::find_if(table.joins, [&](const catalogue::Join& each) {
        return each.above == above && each.below == types[i];
      });
      if (cabinet == nullptr || join == table.joins.end()) {
        break;
      }
      stack.cabinets.push_back(cabinet);
      stack.joins.push_back(&*join);
      if (join->kind == catalogue::JointKind::pivot) {
        stack.held = static_cast<int>(i) + 1;
      }
    }
    if (static_cast<qsizetype>(stack.cabinets.size()) != types.size() || stack.held == 0) {
      continue;
    }
    calendar::Hang without;
    without.cableMass = kilograms(0.0); // masses do not enter the triangle
    // Geometry alone: what masses are, and what figures may be off by, does not come into it.
    options::Rig rig = options::rigFor(stack, *barType, barType->arrangements.front(), chainType, without,
                                       options::Snapshot{}, options::House({}, {}, {}));
    if (!rig.missing.isEmpty()) {
      say(whyNot, QStringLiteral("not known: %1").arg(rig.missing.join(QStringLiteral(", "))));
      return std::nullopt;
    }
    return rig;
  }
  say(whyNot, QStringLiteral("no stacking table with this chain and a pivot permits its stack"));
  return std::nullopt;
}

std::optional<hang::PivotTriangle> triangleOf(options::Rig rig, const std::vector<double>& holesDeg,
                                              QString* whyNot) {
  if (holesDeg.size() != rig.holes.size()) {
    say(whyNot, QStringLiteral("which holes its joints were pinned in is not recorded"));
    return std::nullopt;
  }
  options::useHoles(rig, holesDeg);
  return hang::pivotTriangle(rig.hang.bar, rig.hang.stack, rig.hang.chain->held);
}

std::vector<double> inDegreesOf(const std::vector<Angle>& angles) {
  std::vector<double> made;
  std::ranges::transform(angles, std::back_inserter(made), [](Angle each) { return inDegrees(each); });
  return made;
}

} // namespace

std::optional<ChainFigures> chainFigures(const catalogue::Catalogue& catalogue, const QString& type) {
  const auto* chain = catalogue::find(catalogue.chains, type);
  if (chain == nullptr || !chain->pitch || !chain->fixedLength) {
    return std::nullopt;
  }
  return ChainFigures{inMetres(*chain->pitch), inMetres(*chain->fixedLength), chain->discardStretchPercent};
}

std::optional<hang::PivotTriangle> triangleOf(const catalogue::Catalogue& catalogue, const QStringList& stack,
                                              const QString& bar, const QString& chain,
                                              const std::vector<double>& holesDeg, QString* whyNot) {
  const auto rig = rigOf(catalogue, stack, bar, chain, whyNot);
  return rig ? triangleOf(*rig, holesDeg, whyNot) : std::nullopt;
}

Observed observedOf(const catalogue::Catalogue& catalogue, const MarkUsed& used) {
  Observed made;
  if (!used.measured) {
    made.whyNot = QStringLiteral("no angle was measured");
    return made;
  }
  const auto figures = chainFigures(catalogue, used.chain);
  if (!figures) {
    made.whyNot = QStringLiteral("pitch or fixed length of %1 is not known").arg(used.chain);
    return made;
  }
  const auto rig = rigOf(catalogue, used.stack, used.bar, used.chain, &made.whyNot);
  if (!rig) {
    return made;
  }
  const std::vector<double> holes = inDegreesOf(used.holes);
  const auto triangle = triangleOf(*rig, holes, &made.whyNot);
  if (!triangle) {
    return made;
  }
  Observation seen{*triangle, used.mark, inDegrees(*used.measured), {}};
  for (std::size_t i = 0; i < rig->holes.size(); ++i) {
    for (const double other : rig->holes[i].anglesDeg) {
      if (other == holes[i]) {
        continue;
      }
      std::vector<double> slipped = holes;
      slipped[i] = other;
      if (const auto turned = triangleOf(*rig, slipped, nullptr)) {
        seen.slips.push_back({QStringLiteral("cabinet %1 was pinned in another hole: %2° in place of %3°")
                                  .arg(rig->holes[i].element + 1)
                                  .arg(other, 0, 'f', 1)
                                  .arg(holes[i], 0, 'f', 1)
                                  .toStdString(),
                              *turned, figures->pitch, figures->fixed});
      }
    }
  }
  for (const catalogue::ChainType& other : catalogue.chains) {
    if (const auto its = chainFigures(catalogue, other.name); its && other.name != used.chain) {
      seen.slips.push_back({QStringLiteral("it was another chain: %1").arg(other.name).toStdString(),
                            *triangle, its->pitch, its->fixed});
    }
  }
  made.observation = std::move(seen);
  return made;
}

std::vector<ChainBook> chainBooks(const catalogue::Catalogue& catalogue, const std::vector<MarkUsed>& used) {
  std::map<std::pair<QString, QString>, ChainBook> books;
  std::map<std::pair<QString, QString>, std::vector<Observation>> seen;
  for (const MarkUsed& each : used) {
    const std::pair key{each.chain, each.chainSerial};
    ChainBook& book = books[key];
    book.chain = each.chain;
    book.serial = each.chainSerial;
    if (each.chainSerial.isEmpty()) {
      book.leftOut.emplace_back(each, QStringLiteral("which chain it was is not recorded"));
      continue;
    }
    Observed observed = observedOf(catalogue, each);
    if (!observed.observation) {
      book.leftOut.emplace_back(each, observed.whyNot);
      continue;
    }
    book.records.push_back(each);
    seen[key].push_back(std::move(*observed.observation));
  }
  std::vector<ChainBook> all;
  for (auto& [key, book] : books) {
    if (const auto figures = chainFigures(catalogue, book.chain)) {
      book.learned = learn(seen[key], *figures);
    }
    all.push_back(std::move(book));
  }
  return all;
}

} // namespace hangbook::marks
