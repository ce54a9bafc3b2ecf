// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo_tour.h"

#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <map>

#include "demo/demo.h"

namespace hangbook {
namespace {

using namespace exchange;

Importer somebody() {
  return {QStringLiteral("Casimir Wold"), QDateTime(demoToday(), QTime(18, 0), Qt::UTC)};
}

void take(Kind kind, const QByteArray& bytes, Data& into) {
  Import import = readFile(kind, bytes, into, somebody());
  QString faults;
  for (const Fault& fault : import.faults) {
    faults += text(fault) + QLatin1Char('\n');
  }
  BOOST_REQUIRE_MESSAGE(faults.isEmpty(), wordFor(kind).toStdString() << "\n" << faults.toStdString());
  into = std::move(import.after);
}

} // namespace

QDate demoToday() {
  return QDate(2026, 11, 25);
}

const Data& demoTour() {
  static const Data data = [] {
    Data all;
    for (const demo::File& file : demo::files()) {
      take(kindFrom(file.kind), file.bytes, all);
    }
    return all;
  }();
  return data;
}

Data throughFiles(const Data& data) {
  Data all;
  for (const Kind kind : allKinds()) {
    take(kind, writeFile(kind, data), all);
  }
  return all;
}

options::ShowOptions optionsOf(const Data& data, const QString& show, const std::optional<QString>& hang) {
  options::Snapshot snapshot;
  snapshot.catalogue = data.catalogue;
  const auto found = std::ranges::find(data.shows, show, &calendar::Show::name);
  BOOST_REQUIRE(found != data.shows.end());
  snapshot.show = *found;
  snapshot.tour = *catalogue::find(data.tours, snapshot.show.tour);
  snapshot.venue = *catalogue::find(data.venues, snapshot.show.venue);
  snapshot.units = data.units;
  snapshot.examinationRules = data.examinationRules;
  snapshot.examinations = data.examinations;
  snapshot.today = demoToday();
  return options::decide(snapshot, hang);
}

const options::ShowOptions& demoOptions(const QString& show) {
  static std::map<QString, options::ShowOptions> known;
  const auto found = known.find(show);
  return found != known.end() ? found->second
                              : known.emplace(show, optionsOf(demoTour(), show)).first->second;
}

} // namespace hangbook
