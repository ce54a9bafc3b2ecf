// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/split_batch.h"

#include <set>

#include <QHash>

#include "quantity/error.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {
namespace {

[[noreturn]] void refuse(const fleet::Unit& unit, const std::string& why) {
  throw Error(Trouble::notPossible, "unit \"" + unit.serial.toStdString() + "\" " + why);
}

/// The facts that no later one corrects, oldest first, as told of another unit.
template <class Fact>
std::vector<Fact> toldOf(const QString& serial, const std::vector<Fact>& facts) {
  std::set<QUuid> corrected;
  for (const Fact& each : facts) {
    corrected.insert(each.corrects);
  }
  std::vector<Fact> told;
  for (const Fact& each : facts) {
    if (!corrected.contains(each.id)) {
      told.push_back(each);
      told.back().serial = serial;
      told.back().corrects = {};
    }
  }
  return told;
}

void retell(store::Store& store, const QString& from, const QString& to) {
  for (fleet::Movement each : toldOf(to, store::loadMovements(store, from))) {
    each.id = {};
    each.scan = {}; // to take a scan back is not to move these again
    store::append(store, each);
  }
  QHash<QUuid, QUuid> examinations;
  for (fleet::Examination each : toldOf(to, store::loadExaminations(store, from))) {
    const QUuid before = std::exchange(each.id, QUuid());
    examinations.insert(before, store::append(store, each).id);
  }
  for (fleet::Occurrence each : toldOf(to, store::loadOccurrences(store, from))) {
    each.id = {};
    store::append(store, each);
  }
  for (fleet::UnitDocument each : store::loadDocuments(store, from)) {
    if (!each.examination.isNull() && !examinations.contains(each.examination)) {
      continue; // it certified an examination that was corrected
    }
    each.id = {};
    each.serial = to;
    each.examination = examinations.value(each.examination);
    store::append(store, each, store::loadDocumentBytes(store, each.sha256));
  }
}

} // namespace

fleet::Unit splitBatch(store::Store& store, const QString& serial, int pieces, const QString& newSerial,
                       const QString& by) {
  const QString wanted = newSerial.trimmed();
  return withDeed(store, by, {"split batch", serial, wanted}, [&](const QString& who) {
    const std::optional<fleet::Unit> found = store::loadUnit(store, serial);
    if (!found) {
      throw Error(Trouble::badInput, "no unit has the serial \"" + serial.toStdString() + '"');
    }
    const fleet::Unit& whole = *found;
    if (!whole.pieces || *whole.pieces < 2) {
      refuse(whole, "is no batch of several pieces");
    }
    if (pieces < 1 || pieces >= *whole.pieces) {
      throw Error(Trouble::badInput, "1 to " + std::to_string(*whole.pieces - 1) + " of the " +
                                         std::to_string(*whole.pieces) + " pieces can be split off, not " +
                                         std::to_string(pieces));
    }
    if (whole.state == fleet::UnitState::away) {
      refuse(whole, "is away; split it when it is back");
    }
    if (whole.state == fleet::UnitState::writtenOff) {
      refuse(whole, "is written off");
    }
    if (wanted.isEmpty()) {
      throw Error(Trouble::badInput, "the new batch needs a serial");
    }
    if (store::loadUnit(store, wanted)) {
      throw Error(Trouble::badInput,
                  "there is a unit with the serial \"" + wanted.toStdString() + "\" already");
    }
    fleet::Unit rest = whole;
    rest.pieces = *whole.pieces - pieces;
    rest.typed.erase(QStringLiteral("pieces"));
    const QString reason = QStringLiteral("%1 pieces split off as %2").arg(pieces).arg(wanted);
    store::save(store, rest, who, reason);
    fleet::Unit part = whole;
    part.id = {};
    part.revision = 0;
    part.serial = wanted;
    part.pieces = pieces;
    part.typed.erase(QStringLiteral("pieces"));
    part.cartPosition = {}; // the whole one keeps its place on the cart
    store::save(store, part, who, QStringLiteral("split off from %1").arg(serial));
    retell(store, serial, wanted);
    return *store::loadUnit(store, wanted);
  });
}

} // namespace hangbook::actions
