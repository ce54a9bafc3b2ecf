// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/plans.h"
#include "actions/scan.h"
#include "support/sample_house.h"

namespace hangbook::testing {

inline const QString technician = QStringLiteral("Ada Fenn");
inline const QString bay = QStringLiteral("bay 1");
inline const QDateTime monday(QDate(2027, 3, 1), QTime(8, 0), Qt::UTC);

inline fleet::Unit unitOf(const QString& serial, fleet::UnitKind kind, const QString& type) {
  fleet::Unit unit;
  unit.serial = serial;
  unit.kind = kind;
  unit.type = type;
  unit.place = bay;
  return unit;
}

/// The sample house with six cabinets that are examined all year, two carts, two hoists, a batch of shackles.
inline void fillWarehouse(store::Store& store) {
  fill(store);
  const auto add = [&](const char* serial, fleet::UnitKind kind, const char* type) {
    store::save(store, unitOf(QString::fromLatin1(serial), kind, QString::fromLatin1(type)), technician,
                QStringLiteral("entered"));
  };
  const QString cart = sampleCart(QStringLiteral("Marram bass")).name;
  add("C1", fleet::UnitKind::cart, cart.toLatin1().constData());
  add("C2", fleet::UnitKind::cart, cart.toLatin1().constData());
  for (const char* serial : {"B1", "B2", "B3", "B4", "B5", "B6"}) {
    add(serial, fleet::UnitKind::cabinet, "Marram bass");
    fleet::Examination fact;
    fact.serial = QString::fromLatin1(serial);
    fact.rule = sampleRule().name;
    fact.date = QDate(2027, 2, 1);
    fact.by = technician;
    store::append(store, fact);
  }
  fleet::Unit shackles =
      unitOf(QStringLiteral("SH-1"), fleet::UnitKind::hardware, QStringLiteral("shackle 12"));
  shackles.pieces = 40;
  store::save(store, shackles, technician, QStringLiteral("entered"));
}

inline actions::ScanTask taskOut(store::Store& store) {
  actions::ScanTask task;
  task.kind = actions::ScanTask::Kind::out;
  task.show = store::loadShows(store).front();
  task.place = QStringLiteral("truck 1");
  return task;
}

inline actions::ScanTask taskIn() {
  actions::ScanTask task;
  task.place = bay;
  return task;
}

inline actions::ScanTask taskOnto(const char* cart) {
  actions::ScanTask task;
  task.kind = actions::ScanTask::Kind::ontoCart;
  task.cart = QString::fromLatin1(cart);
  return task;
}

} // namespace hangbook::testing
