// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/cabling.h"

#include <algorithm>

namespace hangbook::build {
namespace {

const catalogue::Socket* socketOf(const calendar::Cabling& cabling, const QString& type,
                                  const QString& name) {
  const auto found = std::ranges::find_if(cabling.sockets, [&](const catalogue::Socket& each) {
    return each.cabinet == type && each.name == name;
  });
  return found == cabling.sockets.end() ? nullptr : &*found;
}

Plugged pluggedOf(const calendar::Cabling& cabling, const calendar::Plug& plug) {
  Plugged into{plug.socket, plug.loom, plug.label, plug.end, {}, {}, {}, plug.rack, plug.channel};
  const auto end = std::ranges::find_if(cabling.ends, [&plug](const catalogue::LoomEnd& each) {
    return each.loom == plug.loom && each.name == plug.end;
  });
  if (end != cabling.ends.end()) {
    into.connector = end->connector;
    into.colour = end->colour;
    into.reach = end->reach ? std::optional(inMetres(*end->reach)) : std::nullopt;
  }
  return into;
}

Plugs plugsOfOne(const calendar::Cabling& cabling, const calendar::Show& show, const QString& hang,
                 int element, const QString& type) {
  Plugs made;
  for (const catalogue::Socket& socket : cabling.sockets) {
    if (socket.cabinet == type) {
      made.sockets << (socket.connector.isEmpty()
                           ? socket.name
                           : QStringLiteral("%1 for %2").arg(socket.name, socket.connector));
    }
  }
  for (const calendar::Plug& plug : cabling.plugs) {
    if (plug.tour != show.tour || plug.show != show.name || plug.hang != hang || plug.element != element) {
      continue;
    }
    if (plug.cabinet != type) {
      made.otherwise =
          QStringLiteral("what is stated for cabinet %1 is for a %2").arg(element).arg(plug.cabinet);
      continue;
    }
    Plugged into = pluggedOf(cabling, plug);
    const catalogue::Socket* socket = socketOf(cabling, type, plug.socket);
    if (into.connector.isEmpty() && socket != nullptr) {
      into.connector = socket->connector;
    }
    made.all.push_back(std::move(into));
  }
  return made;
}

} // namespace

std::vector<Plugs> plugsOf(const calendar::Cabling& cabling, const calendar::Show& show, const QString& hang,
                           const QStringList& types) {
  std::vector<Plugs> made;
  for (qsizetype i = 0; i < types.size(); ++i) {
    made.push_back(plugsOfOne(cabling, show, hang, static_cast<int>(i) + 1, types[i]));
  }
  return made;
}

} // namespace hangbook::build
