// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/scan.h"
#include "quantity/error.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {

using fleet::Unit;
using fleet::UnitKind;
using Kind = ScanTask::Kind;
using Word = ScanAnswer::Word;

QString wordFor(ScanAnswer::Word word) {
  switch (word) {
  case Word::done:
    return QStringLiteral("done");
  case Word::again:
    return QStringLiteral("again");
  case Word::unknown:
    return QStringLiteral("unknown");
  case Word::wrongPlace:
    return QStringLiteral("wrong place");
  case Word::refused:
    return QStringLiteral("refused");
  case Word::undone:
    return QStringLiteral("undone");
  }
  return {};
}

void checkTask(store::Store& store, const ScanTask& task) {
  if (task.kind == Kind::ontoCart) {
    const std::optional<Unit> cart = store::loadUnit(store, task.cart);
    if (!cart || cart->kind != UnitKind::cart) {
      throw Error(Trouble::badInput, "\"" + task.cart.toStdString() + "\" is not the serial of a cart");
    }
    return;
  }
  if (task.place.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "a scan needs a place to book to");
  }
  const std::optional<fleet::NamedPlace> place = store::loadPlace(store, task.place);
  if (task.kind == Kind::ontoTruck && place && place->kind != fleet::PlaceKind::truck) {
    throw Error(Trouble::badInput, "\"" + task.place.toStdString() + "\" is not a truck");
  }
}

} // namespace hangbook::actions
