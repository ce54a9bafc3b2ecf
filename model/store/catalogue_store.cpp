// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/catalogue_store.h"

#include "store/catalogue_columns.h"
#include "store/records.h"

namespace hangbook::store {

namespace {

using namespace catalogue;

const QString byName = QStringLiteral("ORDER BY name");

RecordName nameOf(const CabinetType& type) {
  return {"cabinet_type", QStringLiteral("cabinet \"%1\"").arg(type.name)};
}
RecordName nameOf(const BarType& type) {
  return {"bar_type", QStringLiteral("bar \"%1\"").arg(type.name)};
}
RecordName nameOf(const HoistType& type) {
  return {"hoist_type", QStringLiteral("hoist \"%1\"").arg(type.name)};
}
RecordName nameOf(const ChainType& type) {
  return {"chain_type", QStringLiteral("chain \"%1\"").arg(type.name)};
}
RecordName nameOf(const HardwareType& type) {
  return {"hardware_type", QStringLiteral("hardware \"%1\"").arg(type.name)};
}
RecordName nameOf(const CartType& type) {
  return {"cart_type", QStringLiteral("cart \"%1\"").arg(type.name)};
}
RecordName nameOf(const StackingTable& table) {
  return {"stacking_table", QStringLiteral("stacking table \"%1\"").arg(table.name)};
}

/// Units and examination rules name a type of any kind; they follow its renaming here.
void followRenaming(Store& store, const char* kind, const QString& before, const QString& after) {
  for (const char* table : {"unit", "examination_rule"}) {
    store.run(QStringLiteral("UPDATE %1 SET type = :after WHERE kind = :kind AND type = :before")
                  .arg(QLatin1StringView(table)),
              {{"after", after}, {"kind", kind}, {"before", before}});
  }
}

QString storedName(Store& store, const RecordName& name, const QUuid& id) {
  const auto row = store.one(
      QStringLiteral("SELECT name FROM %1 WHERE id = :id").arg(QLatin1StringView(name.table)), {{"id", id}});
  return row ? row->text("name") : QString();
}

template <class Type, class Columns, class Lists>
Type saveType(Store& store, const Type& type, const char* kind, Columns columns, Lists lists) {
  return store.transact([&] {
    Type saved = type;
    const RecordName name = nameOf(type);
    inTermsOf(name, [&] {
      const QString before = type.id.isNull() ? type.name : storedName(store, name, type.id);
      writeByColumns(store, name, saved, columns);
      lists(saved);
      if (kind != nullptr && before != type.name) {
        followRenaming(store, kind, before, type.name);
      }
    });
    return saved;
  });
}

template <class Type>
void removeType(Store& store, const Type& type, const char* kind) {
  store.transact([&] {
    if (kind != nullptr &&
        store.one(QStringLiteral("SELECT count(*) AS n FROM unit WHERE kind = :kind AND type = :type"),
                  {{"kind", kind}, {"type", type.name}})
                ->integer("n") > 0) {
      throw Error(Trouble::notPossible,
                  nameOf(type).spoken.toStdString() + " is still the type of units of the fleet");
    }
    removeRecord(store, nameOf(type), type.id, type.revision);
  });
}

constexpr auto noLists = [](const auto&) {};

} // namespace

CabinetType save(Store& store, const CabinetType& type) {
  return saveType(store, type, "cabinet", cabinetColumns, noLists);
}

BarType save(Store& store, const BarType& type) {
  return saveType(store, type, "bar", barColumns, [&](const BarType& saved) {
    writeChildren(store, "bar_type_arrangement", saved.id, saved.arrangements, arrangementColumns);
  });
}

HoistType save(Store& store, const HoistType& type) {
  return saveType(store, type, "hoist", hoistColumns, noLists);
}

ChainType save(Store& store, const ChainType& type) {
  return saveType(store, type, "chain", chainColumns, noLists);
}

HardwareType save(Store& store, const HardwareType& type) {
  return saveType(store, type, "hardware", hardwareColumns, noLists);
}

CartType save(Store& store, const CartType& type) {
  return saveType(store, type, "cart", cartColumns, noLists);
}

StackingTable save(Store& store, const StackingTable& table) {
  return saveType(store, table, nullptr, stackingColumns, [&](const StackingTable& saved) {
    writeChildren(store, "stacking_bar", saved.id, saved.bars, nameColumns);
    writeChildren(store, "stacking_join", saved.id, saved.joins, joinColumns);
    writeChildren(store, "stacking_count", saved.id, saved.counts, countColumns);
    writeChildren(store, "stacking_lowest", saved.id, saved.lowest, nameColumns);
    writeChildren(store, "stacking_held", saved.id, saved.held, nameColumns);
  });
}

void remove(Store& store, const CabinetType& type) {
  removeType(store, type, "cabinet");
}
void remove(Store& store, const BarType& type) {
  removeType(store, type, "bar");
}
void remove(Store& store, const HoistType& type) {
  removeType(store, type, "hoist");
}
void remove(Store& store, const ChainType& type) {
  removeType(store, type, "chain");
}
void remove(Store& store, const HardwareType& type) {
  removeType(store, type, "hardware");
}
void remove(Store& store, const CartType& type) {
  removeType(store, type, "cart");
}
void remove(Store& store, const StackingTable& table) {
  removeType(store, table, nullptr);
}

Catalogue loadCatalogue(Store& store) {
  return store.reading([&] {
    Catalogue all;
    all.cabinets = readRecords<CabinetType>(store, "cabinet_type", cabinetColumns, byName);
    all.bars = readRecords<BarType>(store, "bar_type", barColumns, byName);
    auto arrangements = readChildren<PickArrangement>(store, "bar_type_arrangement", {}, arrangementColumns);
    for (BarType& bar : all.bars) {
      bar.arrangements = std::move(arrangements[bar.id]);
    }
    all.hoists = readRecords<HoistType>(store, "hoist_type", hoistColumns, byName);
    all.chains = readRecords<ChainType>(store, "chain_type", chainColumns, byName);
    all.hardware = readRecords<HardwareType>(store, "hardware_type", hardwareColumns, byName);
    all.carts = readRecords<CartType>(store, "cart_type", cartColumns, byName);
    all.tables = readRecords<StackingTable>(store, "stacking_table", stackingColumns, byName);
    auto bars = readChildren<QString>(store, "stacking_bar", {}, nameColumns);
    auto joins = readChildren<Join>(store, "stacking_join", {}, joinColumns);
    auto counts = readChildren<Count>(store, "stacking_count", {}, countColumns);
    auto lowest = readChildren<QString>(store, "stacking_lowest", {}, nameColumns);
    auto held = readChildren<QString>(store, "stacking_held", {}, nameColumns);
    for (StackingTable& table : all.tables) {
      table.bars = std::move(bars[table.id]);
      table.joins = std::move(joins[table.id]);
      table.counts = std::move(counts[table.id]);
      table.lowest = std::move(lowest[table.id]);
      table.held = std::move(held[table.id]);
    }
    return all;
  });
}

} // namespace hangbook::store
