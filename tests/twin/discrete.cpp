// SPDX-License-Identifier: GPL-3.0-or-later
#include "twin/discrete.h"

#include <algorithm>
#include <cmath>

#include "options/option.h"

namespace hangbook::testing {
namespace {

/// Lists of numbers and truths as the solver reads them.
class Lists {
public:
  explicit Lists(QString rows) : rows_(std::move(rows)) {}
  void add(int value) { values_.append(QString::number(value)); }
  void add(bool value) { values_.append(value ? QStringLiteral("true") : QStringLiteral("false")); }
  /// `shape`: the second and third extent, as ", 1..4" each.
  QString text(const QString& shape) const {
    const int extents = 1 + static_cast<int>(shape.count(QLatin1Char(',')));
    return QStringLiteral("array%1d(1..%2%3, [%4])")
        .arg(extents)
        .arg(rows_, shape, values_.join(QLatin1Char(',')));
  }

private:
  QString rows_;
  QStringList values_;
};

bool has(const std::vector<QString>& names, const QString& name) {
  return std::count(names.begin(), names.end(), name) > 0;
}

int millimetres(Length length) {
  return static_cast<int>(std::lround(1000.0 * inMetres(length)));
}

const catalogue::Count* rowOf(const catalogue::StackingTable& table, const QString& type) {
  const auto found = std::find_if(table.counts.begin(), table.counts.end(),
                                  [&](const catalogue::Count& row) { return row.type == type; });
  return found == table.counts.end() ? nullptr : &*found;
}

} // namespace

Discrete::Discrete(std::vector<options::Snapshot> shows) : shows_(std::move(shows)) {
  const auto atLeast = [](int& most, std::size_t size) { most = std::max(most, static_cast<int>(size)); };
  for (std::size_t show = 0; show < shows_.size(); ++show) {
    const options::Snapshot& snapshot = shows_[show];
    const catalogue::Catalogue& catalogue = snapshot.catalogue;
    atLeast(types_, catalogue.cabinets.size());
    atLeast(bars_, catalogue.bars.size());
    atLeast(hoists_, catalogue.hoists.size());
    for (std::size_t table = 0; table < catalogue.tables.size(); ++table) {
      tables_.emplace_back(static_cast<int>(show), static_cast<int>(table));
      int most = 0;
      for (const catalogue::Count& row : catalogue.tables[table].counts) {
        most += row.most;
      }
      longest_ = std::max(longest_, most);
    }
    std::vector<Place>& places = places_.emplace_back();
    for (const QString& name : snapshot.show.hangs.front().points) {
      if (const venue::Point* point = catalogue::find(snapshot.venue.points, name)) {
        places.push_back({name, millimetres(point->x), millimetres(point->y)});
      }
    }
    atLeast(points_, places.size());
  }
}

QString Discrete::text() const {
  return tablesText() + casesText();
}

QString Discrete::tablesText() const {
  const QString rows = QStringLiteral("tables");
  Lists caseOf(rows);
  Lists underBar(rows);
  Lists mayStandUnder(rows);
  Lists least(rows);
  Lists most(rows);
  Lists mayBeLowest(rows);
  Lists takesBar(rows);
  for (const auto& [number, place] : tables_) {
    const options::Snapshot& snapshot = shows_[static_cast<std::size_t>(number)];
    const catalogue::StackingTable& table = snapshot.catalogue.tables[static_cast<std::size_t>(place)];
    const auto joined = [&](const QString& above, const QString& below) {
      return std::any_of(table.joins.begin(), table.joins.end(), [&](const catalogue::Join& join) {
        return join.above == above && join.below == below;
      });
    };
    caseOf.add(number + 1);
    for (const catalogue::CabinetType& type : snapshot.catalogue.cabinets) { // as many in every show
      const catalogue::Count* row = rowOf(table, type.name);
      underBar.add(joined({}, type.name));
      least.add(row == nullptr ? 0 : row->least);
      most.add(row == nullptr ? 0 : row->most);
      mayBeLowest.add(has(table.lowest, type.name));
      for (const catalogue::CabinetType& below : snapshot.catalogue.cabinets) {
        mayStandUnder.add(joined(type.name, below.name));
      }
    }
    for (std::size_t bar = 0; bar < static_cast<std::size_t>(bars_); ++bar) {
      takesBar.add(bar < snapshot.catalogue.bars.size() &&
                   has(table.bars, snapshot.catalogue.bars[bar].name));
    }
  }
  return QStringLiteral("tables = %1;\ncaseOf = %2;\nunderBar = %3;\nmayStandUnder = %4;\nleast = %5;\n"
                        "most = %6;\nmayBeLowest = %7;\ntakesBar = %8;\n")
      .arg(QString::number(tables_.size()), caseOf.text({}), underBar.text(QStringLiteral(", 1..types")),
           mayStandUnder.text(QStringLiteral(", 1..types, 1..types")),
           least.text(QStringLiteral(", 1..types")), most.text(QStringLiteral(", 1..types")),
           mayBeLowest.text(QStringLiteral(", 1..types")), takesBar.text(QStringLiteral(", 1..bars")));
}

QString Discrete::casesText() const {
  const QString rows = QStringLiteral("cases");
  Lists picksOf(rows);
  Lists pointCount(rows);
  Lists hoistCount(rows);
  Lists px(rows);
  Lists py(rows);
  for (std::size_t show = 0; show < shows_.size(); ++show) {
    const catalogue::Catalogue& catalogue = shows_[show].catalogue;
    const std::vector<Place>& places = places_[show];
    for (std::size_t bar = 0; bar < static_cast<std::size_t>(bars_); ++bar) {
      for (const auto picks :
           {catalogue::Picks::sidePair, catalogue::Picks::foreAftPair, catalogue::Picks::single}) {
        picksOf.add(bar < catalogue.bars.size() &&
                    std::any_of(catalogue.bars[bar].arrangements.begin(),
                                catalogue.bars[bar].arrangements.end(),
                                [&](const auto& arrangement) { return arrangement.picks == picks; }));
      }
    }
    pointCount.add(static_cast<int>(places.size()));
    hoistCount.add(static_cast<int>(catalogue.hoists.size()));
    for (std::size_t point = 0; point < static_cast<std::size_t>(points_); ++point) {
      px.add(point < places.size() ? places[point].x : 0);
      py.add(point < places.size() ? places[point].y : 0);
    }
  }
  return QStringLiteral("cases = %1;\ntypes = %2;\nbars = %3;\npoints = %4;\nhoists = %5;\nlongest = %6;\n")
             .arg(shows_.size())
             .arg(types_)
             .arg(bars_)
             .arg(points_)
             .arg(hoists_)
             .arg(longest_) +
         QStringLiteral("picksOf = %1;\npointCount = %2;\nhoistCount = %3;\npx = %4;\npy = %5;\n")
             .arg(picksOf.text(QStringLiteral(", 1..bars, 1..3")), pointCount.text({}), hoistCount.text({}),
                  px.text(QStringLiteral(", 1..points")), py.text(QStringLiteral(", 1..points")));
}

QString Discrete::optionOf(const QByteArray& line) const {
  const QList<QByteArray> numbers = line.split(' ');
  if (numbers.size() != longest_ + 6) {
    return {};
  }
  const auto at = [&](int place) { return static_cast<std::size_t>(numbers[place].toInt()); };
  const int number = tables_[at(0) - 1].first;
  const options::Snapshot& snapshot = shows_[static_cast<std::size_t>(number)];
  const std::vector<Place>& places = places_[static_cast<std::size_t>(number)];
  const catalogue::Catalogue& catalogue = snapshot.catalogue;
  options::OptionKey key;
  key.hang = snapshot.show.hangs.front().name;
  for (int i = 1; i <= longest_ && at(i) > 0; ++i) {
    key.stack.append(catalogue.cabinets[at(i) - 1].name);
  }
  key.bar = catalogue.bars[at(longest_ + 1) - 1].name;
  key.picks = static_cast<catalogue::Picks>(at(longest_ + 2) - 1);
  key.hoist = catalogue.hoists[at(longest_ + 3) - 1].name;
  key.points.append(places[at(longest_ + 4) - 1].name);
  if (at(longest_ + 5) > 0) {
    key.points.append(places[at(longest_ + 5) - 1].name);
  }
  return QString::number(number) + QLatin1Char(' ') + options::idOf(key);
}

} // namespace hangbook::testing
