// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/cabling_store.h"

#include "store/records.h"
#include "store/words.h"

namespace hangbook::store {
namespace {

using calendar::Cabling;
using calendar::Plug;
using namespace catalogue;

constexpr Word<Carries> carriesWords[] = {{Carries::loudspeaker, "loudspeaker"},
                                          {Carries::signal, "signal"},
                                          {Carries::power, "power"},
                                          {Carries::signalAndPower, "signal-and-power"}};

constexpr auto connectorColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io.word("carries", type.carries, carriesWords);
};

constexpr auto socketColumns = [](auto& io, auto& socket) {
  recordColumns(io, socket);
  io("cabinet", socket.cabinet);
  io("name", socket.name);
  io.reference("connector", socket.connector);
};

constexpr auto endColumns = [](auto& io, auto& end) {
  recordColumns(io, end);
  io("loom", end.loom);
  io("name", end.name);
  io.reference("connector", end.connector);
  io("colour", end.colour);
  io("reach_m", end.reach);
};

constexpr auto plugColumns = [](auto& io, auto& plug) {
  recordColumns(io, plug);
  io("tour", plug.tour);
  io("show", plug.show);
  io("hang", plug.hang);
  io("element", plug.element);
  io("socket", plug.socket);
  io("cabinet", plug.cabinet);
  io("loom", plug.loom);
  io("label", plug.label);
  io("loom_end", plug.end);
  io("rack", plug.rack);
  io("channel", plug.channel);
};

template <class Record, class Columns>
Record saved(Store& store, const Record& record, const RecordName& name, Columns columns) {
  return store.transact([&] {
    Record written = record;
    inTermsOf(name, [&] { writeByColumns(store, name, written, columns); });
    return written;
  });
}

RecordName nameOf(const ConnectorType& type) {
  return {"connector_type", QStringLiteral("connector \"%1\"").arg(type.name)};
}

RecordName nameOf(const Socket& socket) {
  return {"cabinet_socket", QStringLiteral("socket \"%1\" of %2").arg(socket.name, socket.cabinet)};
}

RecordName nameOf(const LoomEnd& end) {
  return {"loom_end", QStringLiteral("end \"%1\" of %2").arg(end.name, end.loom)};
}

RecordName nameOf(const Plug& plug) {
  return {"hang_plug", QStringLiteral("plug of cabinet %1 of hang \"%2\" of %3")
                           .arg(QString::number(plug.element), plug.hang, plug.show)};
}

} // namespace

Cabling loadConnections(Store& store) {
  return store.reading([&] {
    Cabling all;
    all.connectors = readRecords<ConnectorType>(store, "connector_type", connectorColumns,
                                                QStringLiteral("ORDER BY name"));
    all.sockets =
        readRecords<Socket>(store, "cabinet_socket", socketColumns, QStringLiteral("ORDER BY cabinet, name"));
    all.ends = readRecords<LoomEnd>(store, "loom_end", endColumns, QStringLiteral("ORDER BY loom, name"));
    return all;
  });
}

Cabling loadCabling(Store& store, const QString& tour, const QString& show) {
  return store.reading([&] {
    Cabling all = loadConnections(store);
    const QString order = QStringLiteral(" ORDER BY tour, show, hang, element, socket");
    all.plugs = show.isEmpty()
                    ? readRecords<Plug>(store, "hang_plug", plugColumns, order)
                    : readRecords<Plug>(store, "hang_plug", plugColumns,
                                        QStringLiteral("WHERE tour = :tour AND show = :show") + order,
                                        {{"tour", tour}, {"show", show}});
    return all;
  });
}

ConnectorType save(Store& store, const ConnectorType& type) {
  return saved(store, type, nameOf(type), connectorColumns);
}

Socket save(Store& store, const Socket& socket) {
  return saved(store, socket, nameOf(socket), socketColumns);
}

LoomEnd save(Store& store, const LoomEnd& end) {
  return saved(store, end, nameOf(end), endColumns);
}

Plug save(Store& store, const Plug& plug) {
  return saved(store, plug, nameOf(plug), plugColumns);
}

void remove(Store& store, const ConnectorType& type) {
  removeRecord(store, nameOf(type), type.id, type.revision);
}

void remove(Store& store, const Socket& socket) {
  removeRecord(store, nameOf(socket), socket.id, socket.revision);
}

void remove(Store& store, const LoomEnd& end) {
  removeRecord(store, nameOf(end), end.id, end.revision);
}

void remove(Store& store, const Plug& plug) {
  removeRecord(store, nameOf(plug), plug.id, plug.revision);
}

} // namespace hangbook::store
