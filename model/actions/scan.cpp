// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/scan.h"

#include <algorithm>

#include "actions/scan_parts.h"
#include "actions/usable.h"
#include "quantity/error.h"
#include "store/catalogue_store.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {
namespace {

using fleet::Act;
using fleet::Movement;
using fleet::Unit;
using fleet::UnitKind;
using fleet::UnitState;
using Kind = ScanTask::Kind;
using Word = ScanAnswer::Word;

QString stateInWords(UnitState state) {
  switch (state) {
  case UnitState::ready:
    return QStringLiteral("ready");
  case UnitState::away:
    return QStringLiteral("away");
  case UnitState::quarantined:
    return QStringLiteral("quarantined");
  case UnitState::inRepair:
    return QStringLiteral("in repair");
  case UnitState::writtenOff:
    return QStringLiteral("written off");
  }
  return {};
}

bool holdsState(UnitState state) {
  return state == UnitState::quarantined || state == UnitState::inRepair || state == UnitState::writtenOff;
}

Act actOf(Kind kind) {
  switch (kind) {
  case Kind::out:
    return Act::out;
  case Kind::in:
    return Act::in;
  case Kind::ontoCart:
    return Act::ontoCart;
  case Kind::ontoTruck:
    return Act::ontoTruck;
  case Kind::transfer:
    return Act::transfer;
  }
  return Act::unsaid;
}

/// One scan at work: what it found and what it will record.
class Scan {
public:
  Scan(store::Store& store, const ScanTask& task, const QString& code, const QDateTime& now,
       const QString& by)
      : store_(store), task_(task), code_(code), now_(now), by_(by) {}

  ScanAnswer run() {
    const std::optional<Unit> found = store::loadUnit(store_, code_);
    if (!found) {
      throw Cannot{Word::unknown, QStringLiteral("no unit has the serial \"%1\"").arg(code_)};
    }
    unit_ = *found;
    std::vector<Unit> load;
    if (unit_.kind == UnitKind::cart) {
      load = store::loadUnitsOnCart(store_, unit_.serial);
    }
    mustNotBeWrittenOff(unit_);
    if (isThereAlready(unit_) &&
        std::ranges::all_of(load, [&](const Unit& each) { return isThereAlready(each); })) {
      throw Cannot{Word::again, alreadyText()};
    }
    mustBeHere();
    mustBeAllowed(unit_);
    for (const Unit& each : load) {
      mustBeAllowed(each);
    }
    ScanAnswer answer{Word::done, code_, {}, {}, QUuid::createUuid()};
    move(unit_, answer);
    for (const Unit& each : load) {
      move(each, answer);
    }
    answer.text = doneText(static_cast<int>(load.size()));
    return answer;
  }

private:
  void mustNotBeWrittenOff(const Unit& unit) const {
    if (unit.state == UnitState::writtenOff) {
      throw Cannot{Word::refused, QStringLiteral("%1 is written off").arg(unit.serial)};
    }
  }

  /// Nothing would change.
  bool isThereAlready(const Unit& unit) const {
    switch (task_.kind) {
    case Kind::out:
      return unit.state == UnitState::away && unit.place == task_.place && isForShow(unit);
    case Kind::in:
      return unit.state != UnitState::away && unit.place == task_.place;
    case Kind::ontoCart:
      return unit.cart == task_.cart;
    case Kind::ontoTruck:
    case Kind::transfer:
      return unit.place == task_.place;
    }
    return false;
  }

  bool isForShow(const Unit& unit) const {
    const std::optional<Movement> last = store::loadLastMovement(store_, unit.serial);
    return last && task_.show && last->show == task_.show->name && last->tour == task_.show->tour;
  }

  QString alreadyText() const {
    const std::optional<Movement> last = store::loadLastMovement(store_, unit_.serial);
    QString text = task_.kind == Kind::ontoCart
                       ? QStringLiteral("%1 is on cart %2 already").arg(unit_.serial, task_.cart)
                       : QStringLiteral("%1 is at %2 already").arg(unit_.serial, task_.place);
    if (last) {
      text += QStringLiteral(" (%1 UTC, %2)")
                  .arg(last->happenedAt.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm")), last->by);
    }
    return text;
  }

  void mustBeHere() const {
    if (!task_.from.isEmpty() && unit_.place != task_.from) {
      throw Cannot{Word::wrongPlace, QStringLiteral("%1 is recorded at \"%2\", not at \"%3\"")
                                         .arg(unit_.serial, unit_.place, task_.from)};
    }
    // What is away with one show cannot leave for another: it was never booked in.
    if (task_.kind == Kind::out && unit_.state == UnitState::away && !isForShow(unit_)) {
      throw Cannot{Word::wrongPlace, QStringLiteral("%1 is recorded as away at \"%2\"%3: scan it in first")
                                         .arg(unit_.serial, unit_.place, awayWith(unit_))};
    }
    if (task_.kind == Kind::ontoCart && cart_().place != unit_.place && unit_.state == UnitState::away) {
      throw Cannot{Word::wrongPlace,
                   QStringLiteral("%1 is recorded as away at \"%2\", cart %3 stands at \"%4\"")
                       .arg(unit_.serial, unit_.place, task_.cart, cart_().place)};
    }
  }

  QString awayWith(const Unit& unit) const {
    const std::optional<Movement> last = store::loadLastMovement(store_, unit.serial);
    return last && !last->show.isEmpty() ? QStringLiteral(" with \"%1\"").arg(last->show) : QString();
  }

  const Unit& cart_() const {
    if (!cartUnit_) {
      cartUnit_ = store::loadUnit(store_, task_.cart);
      if (!cartUnit_ || cartUnit_->kind != UnitKind::cart) {
        throw Error(Trouble::badInput, "\"" + task_.cart.toStdString() + "\" is not a cart of the fleet");
      }
    }
    return *cartUnit_;
  }

  void mustBeAllowed(const Unit& unit) {
    if (task_.kind == Kind::out) {
      const Usable usable = isUsable(store_, unit, *task_.show);
      if (!usable.yes) {
        throw Cannot{Word::refused, unit.serial == unit_.serial
                                        ? usable.why
                                        : QStringLiteral("cart %1 stays: %2").arg(unit_.serial, usable.why)};
      }
      if (!usable.why.isEmpty()) {
        remarks_ << usable.why;
      }
    }
    if (task_.kind == Kind::ontoCart) {
      mustFitCart(unit);
    }
  }

  void mustFitCart(const Unit& unit) {
    const Unit& cart = cart_();
    if (unit.kind == UnitKind::cart) {
      throw Cannot{Word::refused, QStringLiteral("%1 is a cart; a cart rides on no other").arg(unit.serial)};
    }
    if (cart.state == UnitState::away) {
      throw Cannot{Word::refused, QStringLiteral("cart %1 is away at \"%2\"").arg(cart.serial, cart.place)};
    }
    const auto types = store::loadCatalogue(store_).carts;
    const auto type = std::ranges::find(types, cart.type, &catalogue::CartType::name);
    if (type == types.end()) {
      return;
    }
    if (!type->carries.isEmpty() && type->carries != unit.type) {
      throw Cannot{Word::refused, QStringLiteral("%1 is a %2; cart %3 carries %4")
                                      .arg(unit.serial, unit.type, cart.serial, type->carries)};
    }
    int load = 0;
    for (const Unit& each : store::loadUnitsOnCart(store_, cart.serial)) {
      load += piecesOf(each);
    }
    if (type->most && load + piecesOf(unit) > *type->most) {
      throw Cannot{
          Word::refused,
          QStringLiteral("cart %1 is full: %2 of %3 on it").arg(cart.serial).arg(load).arg(*type->most)};
    }
  }

  Movement movementOf(const Unit& unit) {
    Movement fact;
    fact.serial = unit.serial;
    fact.act = actOf(task_.kind);
    fact.toPlace = task_.place;
    fact.toState = unit.state;
    fact.toCart = unit.cart;
    fact.cartPosition = unit.cartPosition;
    const std::optional<Movement> last = store::loadLastMovement(store_, unit.serial);
    fact.happenedAt = last ? std::max(now_, last->happenedAt) : now_;
    if (last && unit.state == UnitState::away) {
      fact.tour = last->tour;
      fact.show = last->show;
    }
    return fact;
  }

  void move(const Unit& unit, ScanAnswer& answer) {
    Movement fact = movementOf(unit);
    switch (task_.kind) {
    case Kind::out:
      fact.toState = UnitState::away;
      fact.tour = task_.show->tour;
      fact.show = task_.show->name;
      break;
    case Kind::in:
      fact.toState = holdsState(unit.state) ? unit.state : UnitState::ready;
      fact.tour.clear();
      fact.show.clear();
      break;
    case Kind::ontoCart:
      fact.toPlace = cart_().place;
      fact.toCart = task_.cart;
      fact.cartPosition = nextPlaceOnCart();
      break;
    case Kind::ontoTruck:
    case Kind::transfer:
      break;
    }
    // A thing that is scanned by itself leaves a cart that stands elsewhere; with its cart it stays on it.
    if (task_.kind != Kind::ontoCart && unit.serial == unit_.serial && !unit.cart.isEmpty()) {
      const std::optional<Unit> cart = store::loadUnit(store_, unit.cart);
      if (!cart || cart->place != fact.toPlace) {
        remarks_ << QStringLiteral("taken off cart %1").arg(unit.cart);
        fact.toCart.clear();
        fact.cartPosition.reset();
      }
    }
    fact.scan = answer.scan;
    fact.by = by_;
    store::append(store_, fact);
    answer.serials << unit.serial;
  }

  int nextPlaceOnCart() const {
    int last = 0;
    for (const Unit& each : store::loadUnitsOnCart(store_, task_.cart)) {
      last = std::max(last, each.cartPosition.value_or(0));
    }
    return last + 1;
  }

  QString doneText(int riding) const {
    QString text = unit_.serial + QStringLiteral(" (%1)").arg(unit_.type);
    if (unit_.pieces) {
      text += QStringLiteral(", %1 pieces").arg(*unit_.pieces);
    }
    switch (task_.kind) {
    case Kind::out:
      text += QStringLiteral(": out to \"%1\", at \"%2\"").arg(task_.show->name, task_.place);
      break;
    case Kind::in:
      text += QStringLiteral(": in at \"%1\"").arg(task_.place);
      if (holdsState(unit_.state)) {
        text += QStringLiteral(", still ") + stateInWords(unit_.state);
      }
      break;
    case Kind::ontoCart:
      text += QStringLiteral(": on cart %1").arg(task_.cart);
      break;
    case Kind::ontoTruck:
      text += QStringLiteral(": in \"%1\"").arg(task_.place);
      break;
    case Kind::transfer:
      text += QStringLiteral(": at \"%1\"").arg(task_.place);
      break;
    }
    if (riding > 0) {
      text += QStringLiteral("; with %1 on it").arg(riding);
    }
    for (const QString& remark : remarks_) {
      text += QStringLiteral("; ") + remark;
    }
    return text;
  }

  store::Store& store_;
  const ScanTask& task_;
  QString code_;
  QDateTime now_;
  QString by_;
  Unit unit_;
  mutable std::optional<Unit> cartUnit_;
  QStringList remarks_;
};

} // namespace

ScanAnswer scan(store::Store& store, const ScanTask& task, const QString& code, const QDateTime& now,
                const QString& by) {
  const QString serial = code.trimmed();
  try {
    return withDeed(store, by, {"scan", serial, task.kind == Kind::ontoCart ? task.cart : task.place},
                    [&](const QString& who) { return Scan(store, task, serial, now, who).run(); });
  } catch (const Cannot& cannot) {
    return {cannot.word, serial, cannot.text, {}, {}};
  }
}

} // namespace hangbook::actions
