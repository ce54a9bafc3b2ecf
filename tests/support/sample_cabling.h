// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/cabling_store.h"
#include "support/sample_house.h"

namespace hangbook::testing {

/// One connector, a socket that takes it, an end of a loom and a plug of the sample show.
struct SampleCabling {
  catalogue::ConnectorType connector;
  catalogue::Socket socket;
  catalogue::LoomEnd end;
  calendar::Plug plug;

  SampleCabling() {
    connector.name = QStringLiteral("Teasel 8");
    connector.maker = QStringLiteral("Teasel Connectors");
    connector.carries = catalogue::Carries::signalAndPower;
    connector.source = {QStringLiteral("sheet 2"), QDate(2026, 2, 10)};
    socket.cabinet = QStringLiteral("Marram bass");
    socket.name = QStringLiteral("in");
    socket.connector = connector.name;
    end.loom = QStringLiteral("shackle 12"); // that it is a loom is held by the import
    end.name = QStringLiteral("A");
    end.connector = connector.name;
    end.colour = QStringLiteral("yellow");
    end.reach = metres(21.5);
    const calendar::Show show = sampleShow(QStringLiteral("Skerrymouth"), QStringLiteral("Gannet Hall"));
    plug.tour = show.tour;
    plug.show = show.name;
    plug.hang = show.hangs.front().name;
    plug.element = 3;
    plug.socket = socket.name;
    plug.cabinet = socket.cabinet;
    plug.loom = end.loom;
    plug.label = QStringLiteral("left 1");
    plug.end = end.name;
    plug.rack = QStringLiteral("stage left");
    plug.channel = QStringLiteral("2");
  }

  /// Into a store that `fill` has filled.
  void saveTo(store::Store& store) const {
    save(store, connector);
    save(store, socket);
    save(store, end);
    save(store, plug);
  }
};

} // namespace hangbook::testing
