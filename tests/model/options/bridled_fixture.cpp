// SPDX-License-Identifier: GPL-3.0-or-later
#include "bridled_fixture.h"

#include "quantity/quantity.h"
#include "show_fixture.h"

namespace hangbook::testing {

using options::Snapshot;

namespace {

catalogue::HardwareType steel(const char* name, double length) {
  catalogue::HardwareType type;
  type.name = QString::fromUtf8(name);
  type.kind = catalogue::HardwareKind::sling;
  type.limit = weightOf(kilograms(5000));
  type.mass = kilograms(1.5 * length);
  type.length = metres(length);
  type.stiffness = kilonewtons(7000);
  type.source = {QStringLiteral("leaflet 9"), QDate(2026, 2, 11)};
  return type;
}

} // namespace

Snapshot bridledShow() {
  Snapshot snapshot = testing::smallHarbourShow();
  venue::Venue& venue = snapshot.venue;
  for (const char* name : {"L1", "L2"}) {
    venue::Point front = *catalogue::find(venue.points, QString::fromUtf8(name));
    front.name += QStringLiteral(" front");
    front.x = metres(inMetres(front.x) + 4.0);
    venue.points.push_back(front);
    venue::Bridle bridle;
    bridle.name = QStringLiteral("B") + QString::fromUtf8(name);
    bridle.points = {QString::fromUtf8(name), front.name};
    bridle.z = metres(inMetres(front.z) - 2.5);
    bridle.steels = {QStringLiteral("steel 0.5"), QStringLiteral("steel 1"), QStringLiteral("steel 2")};
    bridle.shackle = QStringLiteral("shackle");
    bridle.source = {QStringLiteral("rigging plot, revision 2"), QDate(2026, 10, 12)};
    venue.bridles.push_back(bridle);
  }
  auto& hardware = snapshot.catalogue.hardware;
  hardware.push_back(steel("steel 0.5", 0.5));
  hardware.push_back(steel("steel 1", 1.0));
  hardware.push_back(steel("steel 2", 2.0));
  snapshot.show.hangs.resize(1);
  snapshot.show.hangs[0].points = {QStringLiteral("BL1"), QStringLiteral("BL2")};
  return snapshot;
}

} // namespace hangbook::testing
