// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include "build/cabling.h"

using namespace hangbook;
using namespace hangbook::build;

namespace {

calendar::Cabling stated() {
  calendar::Cabling all;
  const auto socket = [&all](const char* cabinet, const char* connector) {
    catalogue::Socket& made = all.sockets.emplace_back();
    made.cabinet = QString::fromUtf8(cabinet);
    made.name = QStringLiteral("in");
    made.connector = QString::fromUtf8(connector);
  };
  const auto end = [&all](const char* name, const char* connector, const char* colour) {
    catalogue::LoomEnd& made = all.ends.emplace_back();
    made.loom = QStringLiteral("loom");
    made.name = QString::fromUtf8(name);
    made.connector = QString::fromUtf8(connector);
    made.colour = QString::fromUtf8(colour);
    return &made;
  };
  const auto plug = [&all](int element, const char* type, const char* into, const char* rack,
                           const char* channel) {
    calendar::Plug& made = all.plugs.emplace_back();
    made.tour = QStringLiteral("tour");
    made.show = QStringLiteral("show");
    made.hang = QStringLiteral("left");
    made.element = element;
    made.socket = QStringLiteral("in");
    made.cabinet = QString::fromUtf8(type);
    made.loom = QStringLiteral("loom");
    made.label = QStringLiteral("left 1");
    made.end = QString::fromUtf8(into);
    made.rack = QString::fromUtf8(rack);
    made.channel = QString::fromUtf8(channel);
  };
  socket("bass", "eight");
  socket("downfill", "");
  end("A", "eight", "yellow")->reach = metres(21.5);
  end("B", "", "");
  plug(1, "bass", "A", "stage left", "3");
  plug(2, "bass", "B", "", "");
  return all;
}

std::vector<Plugs> plugsFor(const QStringList& types, const char* hang = "left") {
  calendar::Show show;
  show.tour = QStringLiteral("tour");
  show.name = QStringLiteral("show");
  return plugsOf(stated(), show, QString::fromUtf8(hang), types);
}

std::string said(int element, const char* type, const Plugs& plugs, UnitSystem units = UnitSystem::metric) {
  return plugWords(element, QString::fromUtf8(type), plugs, units).toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(plugging)

BOOST_AUTO_TEST_CASE(what_is_stated_is_called_out) {
  const auto plugs = plugsFor({QStringLiteral("bass"), QStringLiteral("bass")});
  BOOST_TEST(said(1, "bass", plugs[0]) == "Plug cabinet 1, bass: socket in: loom “left 1”, end A, connector "
                                          "eight, colour yellow, reach 21.50 m, rack "
                                          "stage left, channel 3; cable dressed clear of arms and chain");
  BOOST_TEST(said(1, "bass", plugs[0], UnitSystem::usCustomary).find("reach 70.54 ft") != std::string::npos);
  BOOST_TEST(unplugWords(1, plugs[0].all).toStdString() == "Unplug cabinet 1: loom “left 1”, end A");
}

BOOST_AUTO_TEST_CASE(what_is_not_stated_says_so_and_nothing_is_made_up) {
  const auto plugs = plugsFor({QStringLiteral("bass"), QStringLiteral("bass"), QStringLiteral("bass")});
  // The connector is the one that the cabinet's socket is stated to take; colour and channel nobody states.
  BOOST_TEST(
      said(2, "bass", plugs[1]) ==
      "Plug cabinet 2, bass: socket in: loom “left 1”, end B, connector eight, colour not stated, rack and "
      "channel not stated; cable dressed clear of arms and chain");
  BOOST_TEST(said(3, "bass", plugs[2]) == "Plug cabinet 3, bass: loom, connector, colour and channel not "
                                          "stated: follow the maker's data (sockets: in "
                                          "for eight); cable dressed clear of arms and chain");
  BOOST_TEST(unplugWords(3, plugs[2].all).toStdString() == "Unplug cabinet 3");
}

BOOST_AUTO_TEST_CASE(a_plug_of_another_type_of_cabinet_is_not_used) {
  const auto plugs = plugsFor({QStringLiteral("downfill")});
  BOOST_TEST(plugs[0].all.empty());
  BOOST_TEST(
      said(1, "downfill", plugs[0]) ==
      "Plug cabinet 1, downfill: loom, connector, colour and channel not stated: follow the maker's data "
      "(sockets: in); what is stated for cabinet 1 is for a bass; cable dressed clear of arms and chain");
}

BOOST_AUTO_TEST_CASE(another_hang_takes_nothing_of_it) {
  BOOST_TEST(plugsFor({QStringLiteral("bass")}, "right")[0].all.empty());
}

BOOST_AUTO_TEST_SUITE_END()
