// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/cabling_sorts.h"

#include <array>

#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using namespace catalogue;
using calendar::Plug;

constexpr std::array carried = {std::pair{Carries::loudspeaker, "loudspeaker"},
                                std::pair{Carries::signal, "signal"}, std::pair{Carries::power, "power"},
                                std::pair{Carries::signalAndPower, "signal and power"}};

bool isLoom(Work& work, const QString& name) {
  const HardwareType* loom = work.hardware.find(name);
  return loom != nullptr && loom->kind == HardwareKind::loom;
}

bool hasSockets(const Work& work, const QString& cabinet) {
  return std::ranges::any_of(work.after.cabling.sockets,
                             [&cabinet](const Socket& each) { return each.cabinet == cabinet; });
}

/// What the cabinet takes; empty where that is not stated. Puts down a fault where it has no such socket.
QString connectorOfSocket(Work& work, const Plug& plug, const At& at) {
  if (plug.socket.isEmpty() || !hasSockets(work, plug.cabinet)) {
    return {};
  }
  const Socket* socket = work.sockets.find(joined({plug.cabinet, plug.socket}));
  if (socket == nullptr) {
    at.fault("socket", plug.socket, QStringLiteral("a socket of %1").arg(plug.cabinet));
    return {};
  }
  return socket->connector;
}

/// Whether the end goes into another cabinet of the show too.
bool isTaken(const Work& work, const Plug& plug) {
  return std::ranges::count_if(work.after.cabling.plugs, [&plug](const Plug& each) {
           return each.tour == plug.tour && each.show == plug.show && each.loom == plug.loom &&
                  each.label == plug.label && each.end == plug.end;
         }) > 1;
}

void checkEnd(Work& work, const Plug& plug, const At& at) {
  const QString takes = connectorOfSocket(work, plug, at);
  if (!isLoom(work, plug.loom)) {
    at.fault("loom", plug.loom, "a type of hardware of the kind loom that is in this file or in the store");
    return;
  }
  const LoomEnd* end = work.loomEnds.find(joined({plug.loom, plug.end}));
  if (end == nullptr) {
    at.fault("end", plug.end, QStringLiteral("an end of %1").arg(plug.loom));
    return;
  }
  if (!takes.isEmpty() && !end->connector.isEmpty() && takes != end->connector) {
    at.fault("end", plug.end,
             QStringLiteral("an end with a %1, which %2 takes at \"%3\"; this one has a %4")
                 .arg(takes, plug.cabinet, plug.socket, end->connector));
  }
  if (isTaken(work, plug)) {
    at.fault(
        "end", plug.end,
        QStringLiteral("each end of a loom once in a show; looms of one type are told apart by a label"));
  }
}

void checkPlug(Work& work, const Plug& plug, const At& at) {
  mustBeHang(work, plug, at);
  mustBeKnown(at, "type", plug.cabinet, work.cabinets, "type of cabinet");
  if (plug.rack.isEmpty() && !plug.channel.isEmpty()) {
    at.fault("rack", {}, QStringLiteral("the rack whose channel %1 is meant").arg(plug.channel));
  }
  checkEnd(work, plug, at);
}

} // namespace

std::unique_ptr<Sort> connectorSort() {
  using Line = ConnectorType;
  auto handling = recordHandling<Line>(
      &Work::connectors, [](const Line& line) { return line.name; },
      [](const Data& data) -> const std::vector<Line>& { return data.cabling.connectors; });
  return std::make_unique<SortOf<Line>>("connector",
                                        withSource<Line>({
                                            name<Line>("name", HANGBOOK_FIELD(name)),
                                            text<Line>("maker", HANGBOOK_FIELD(maker)),
                                            word<Line>("carries", HANGBOOK_FIELD(carries), carried),
                                        }),
                                        std::move(handling));
}

std::unique_ptr<Sort> socketSort() {
  using Line = Socket;
  auto handling = recordHandling<Line>(
      &Work::sockets,
      [](const Line& line) {
        return joined({line.cabinet, line.name});
      },
      [](const Data& data) -> const std::vector<Line>& { return data.cabling.sockets; });
  handling.check = [](Work& work, const Line& line, const At& at) {
    mustBeKnown(at, "cabinet", line.cabinet, work.cabinets, "type of cabinet");
    mustBeKnown(at, "connector", line.connector, work.connectors, "kind of connector");
  };
  return std::make_unique<SortOf<Line>>("socket",
                                        withSource<Line>({
                                            name<Line>("cabinet", HANGBOOK_FIELD(cabinet)),
                                            name<Line>("name", HANGBOOK_FIELD(name)),
                                            text<Line>("connector", HANGBOOK_FIELD(connector)),
                                        }),
                                        std::move(handling));
}

std::unique_ptr<Sort> loomEndSort() {
  using Line = LoomEnd;
  auto handling = recordHandling<Line>(
      &Work::loomEnds,
      [](const Line& line) {
        return joined({line.loom, line.name});
      },
      [](const Data& data) -> const std::vector<Line>& { return data.cabling.ends; });
  handling.check = [](Work& work, const Line& line, const At& at) {
    mustBeKnown(at, "connector", line.connector, work.connectors, "kind of connector");
    if (!isLoom(work, line.loom)) {
      at.fault("loom", line.loom, "a type of hardware of the kind loom that is in this file or in the store");
      return;
    }
    const std::optional<Length> length = work.hardware.find(line.loom)->length;
    if (length && line.reach && *line.reach > *length) {
      at.fault("reach", at.cell("reach"),
               QStringLiteral("no more than the loom's length, %1").arg(writeQuantity(*length)));
    }
  };
  return std::make_unique<SortOf<Line>>(
      "loom end",
      withSource<Line>({
          name<Line>("loom", HANGBOOK_FIELD(loom)),
          name<Line>("name", HANGBOOK_FIELD(name)),
          text<Line>("connector", HANGBOOK_FIELD(connector)),
          text<Line>("colour", HANGBOOK_FIELD(colour)),
          figure<Line>("reach", "m", HANGBOOK_FIELD(reach), Bound::loomLength),
      }),
      std::move(handling));
}

std::unique_ptr<Sort> plugSort() {
  using Line = Plug;
  auto handling = recordHandling<Line>(
      &Work::plugs,
      [](const Line& line) {
        return joined({line.tour, line.show, line.hang, QString::number(line.element), line.socket});
      },
      [](const Data& data) -> const std::vector<Line>& { return data.cabling.plugs; });
  handling.check = checkPlug;
  return std::make_unique<SortOf<Line>>(
      "plug",
      withSource<Line>({
          name<Line>("tour", HANGBOOK_FIELD(tour)),
          name<Line>("show", HANGBOOK_FIELD(show)),
          name<Line>("hang", HANGBOOK_FIELD(hang)),
          integer<Line>("cabinet", HANGBOOK_FIELD(element), Bound::carried, Need::key),
          text<Line>("socket", HANGBOOK_FIELD(socket), Need::keyOrEmpty),
          text<Line>("type", HANGBOOK_FIELD(cabinet), Need::needed),
          text<Line>("loom", HANGBOOK_FIELD(loom), Need::needed),
          text<Line>("label", HANGBOOK_FIELD(label)),
          text<Line>("end", HANGBOOK_FIELD(end), Need::needed),
          text<Line>("rack", HANGBOOK_FIELD(rack)),
          text<Line>("channel", HANGBOOK_FIELD(channel)),
      }),
      std::move(handling));
}

} // namespace hangbook::exchange
