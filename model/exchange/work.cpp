// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/work.h"

#include <algorithm>

namespace hangbook::exchange {
namespace {

template <class Record>
QString nameOf(const Record& record) {
  return record.name;
}

QString serialOf(const fleet::Unit& unit) {
  return unit.serial;
}

QString socketKey(const catalogue::Socket& socket) {
  return joined({socket.cabinet, socket.name});
}
QString loomEndKey(const catalogue::LoomEnd& end) {
  return joined({end.loom, end.name});
}
QString plugKey(const calendar::Plug& plug) {
  return joined({plug.tour, plug.show, plug.hang, QString::number(plug.element), plug.socket});
}
QString hungKey(const calendar::Hung& hung) {
  return joined({hung.tour, hung.show, hung.hang, QString::number(hung.element)});
}
QString showKey(const calendar::Show& show) {
  return joined({show.tour, show.name});
}

QString chosenKey(const Chosen& chosen) {
  return joined({chosen.tour, chosen.show, chosen.hang});
}

// Facts are what they say: a second telling of the same is the same fact.
QString examinationWords(const fleet::Examination& fact) {
  return joined({fact.serial, fact.rule, fact.date.toString(Qt::ISODate), QString::number(int(fact.result)),
                 fact.examiner, fact.certificate, fact.remark, fact.corrects.toString()});
}

QString exactly(const std::optional<Angle>& angle) {
  return angle ? QString::fromStdString(print(*angle)) : QString();
}

QString markWords(const marks::MarkUsed& fact) {
  return joined({joined(fact.stack), fact.bar, fact.chain, fact.chainSerial, exactly(fact.tilt),
                 QString::number(fact.mark), exactly(fact.measured), fact.tour, fact.show, fact.hang,
                 fact.place, fact.weather, fact.date.toString(Qt::ISODate), fact.by,
                 fact.corrects.toString()});
}

} // namespace

QString joined(const QStringList& parts) {
  return parts.join(QChar(0x1f));
}

Work::Work(const Data& before, const Importer& who)
    : after(before), importer(who), cabinets(after.catalogue.cabinets, nameOf),
      bars(after.catalogue.bars, nameOf), hoists(after.catalogue.hoists, nameOf),
      chains(after.catalogue.chains, nameOf), hardware(after.catalogue.hardware, nameOf),
      carts(after.catalogue.carts, nameOf), tables(after.catalogue.tables, nameOf),
      connectors(after.cabling.connectors, nameOf), sockets(after.cabling.sockets, socketKey),
      loomEnds(after.cabling.ends, loomEndKey), plugs(after.cabling.plugs, plugKey),
      people(after.people, nameOf), rules(after.examinationRules, nameOf), places(after.places, nameOf),
      units(after.units, serialOf), examinations(after.examinations, examinationWords),
      venues(after.venues, nameOf), tours(after.tours, nameOf), shows(after.shows, showKey),
      hung(after.hung, hungKey), chosen(after.chosen, chosenKey), marks(after.marks, markWords) {}

Count& Work::count(const QString& sort) {
  const auto found = std::ranges::find(counts, sort, &Count::sort);
  if (found != counts.end()) {
    return *found;
  }
  counts.push_back({sort});
  return counts.back();
}

} // namespace hangbook::exchange
