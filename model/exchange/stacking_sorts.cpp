// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/stacking_sorts.h"

#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using namespace catalogue;

constexpr std::array arrangements = {std::pair{Picks::sidePair, "side-pair"},
                                     std::pair{Picks::foreAftPair, "fore-aft-pair"},
                                     std::pair{Picks::single, "single"}};
constexpr std::array joints = {std::pair{JointKind::seated, "seated"}, std::pair{JointKind::pinned, "pinned"},
                               std::pair{JointKind::pivot, "pivot"}};

const std::vector<BarType>& barsOf(const Data& data) {
  return data.catalogue.bars;
}

const std::vector<StackingTable>& tablesOf(const Data& data) {
  return data.catalogue.tables;
}

/// The same bar may be picked up in the same way at other holes: then that is another way.
QString labelOfPicks(const PickArrangement& picks) {
  QStringList label(writeWord<Picks>(picks.picks, arrangements));
  label << (picks.spacing ? writeQuantity(*picks.spacing) : QString());
  for (const auto& place : {picks.front, picks.rear, picks.only}) {
    label << (place ? writePlaces({&*place, 1}) : QString());
  }
  label.removeAll(QString());
  return label.join(QLatin1Char(' '));
}

QString labelOfJoin(const Join& join) {
  return join.above + QStringLiteral(" > ") + join.below + QLatin1Char(' ') +
         writeWord<JointKind>(join.kind, joints);
}

QString labelOfCount(const catalogue::Count& count) {
  return count.type;
}

template <class List>
void cabinetsMustBeKnown(Work& work, const At& at, const char* heading, const List& types) {
  for (const QString& type : types) {
    mustBeKnown(at, QString::fromLatin1(heading), type, work.cabinets, "type of cabinet");
  }
}

} // namespace

std::unique_ptr<Sort> picksSort() {
  using Line = Part<PickArrangement>;
  Columns<Line> columns = {
      name<Line>("bar", HANGBOOK_FIELD(parent)),
      word<Line>("arrangement", HANGBOOK_FIELD(value.picks), arrangements, Need::key),
      figure<Line>("spacing", "m", HANGBOOK_FIELD(value.spacing), Bound::size, Need::keyOrEmpty),
      place<Line>("front pick", HANGBOOK_FIELD(value.front), Need::keyOrEmpty),
      place<Line>("rear pick", HANGBOOK_FIELD(value.rear), Need::keyOrEmpty),
      place<Line>("only pick", HANGBOOK_FIELD(value.only), Need::keyOrEmpty),
      figure<Line>("limit", "kN", HANGBOOK_FIELD(value.limit), Bound::limit),
      yesNo<Line>("limit includes factors", HANGBOOK_FIELD(value.limitIncludesFactors)),
      integer<Line>("most cabinets", HANGBOOK_FIELD(value.mostCabinets), Bound::pieces),
  };
  auto handling = partHandling<BarType, PickArrangement>("picks", "bar", &Work::bars, barsOf,
                                                         &BarType::arrangements, labelOfPicks);
  return std::make_unique<SortOf<Line>>("picks", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> tableSort() {
  using Line = StackingTable;
  Columns<Line> columns = {
      name<Line>("name", HANGBOOK_FIELD(name)),
      text<Line>("maker", HANGBOOK_FIELD(maker)),
      list<Line>("bars", HANGBOOK_FIELD(bars)),
      text<Line>("chain", HANGBOOK_FIELD(chain)),
      list<Line>("lowest", HANGBOOK_FIELD(lowest)),
      list<Line>("held", HANGBOOK_FIELD(held)),
      text<Line>("source", HANGBOOK_FIELD(source.text)),
      date<Line>("source date", HANGBOOK_FIELD(source.date)),
  };
  auto handling = recordHandling<Line>(
      &Work::tables, [](const Line& table) { return table.name; }, tablesOf);
  handling.check = [](Work& work, const Line& table, const At& at) {
    for (const QString& bar : table.bars) {
      mustBeKnown(at, "bars", bar, work.bars, "bar");
    }
    mustBeKnown(at, "chain", table.chain, work.chains, "chain");
    cabinetsMustBeKnown(work, at, "lowest", table.lowest);
    cabinetsMustBeKnown(work, at, "held", table.held);
  };
  return std::make_unique<SortOf<Line>>("table", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> joinSort() {
  using Line = Part<Join>;
  Columns<Line> columns = {
      name<Line>("table", HANGBOOK_FIELD(parent)),
      text<Line>("above", HANGBOOK_FIELD(value.above)),
      name<Line>("below", HANGBOOK_FIELD(value.below)),
      word<Line>("joint", HANGBOOK_FIELD(value.kind), joints, Need::key),
      angles<Line>("angles", HANGBOOK_FIELD(value.angles)),
      travel<Line>("travel", HANGBOOK_FIELD(value.travel)),
      figure<Line>("pin limit", "kN", HANGBOOK_FIELD(value.pinLimit), Bound::limit),
      figure<Line>("contact limit", "kN", HANGBOOK_FIELD(value.contactLimit), Bound::limit),
      number<Line>("side share", "", HANGBOOK_FIELD(value.sideShare), Bound::share),
      yesNo<Line>("limit includes factors", HANGBOOK_FIELD(value.limitIncludesFactors)),
      figure<Line>("opens to", "°", HANGBOOK_FIELD(value.opensTo), Bound::angle),
      figure<Line>("stop limit", "kN", HANGBOOK_FIELD(value.stopLimit), Bound::limit),
  };
  columns[1].need = Need::keyOrEmpty; // empty: straight under the bar
  auto handling = partHandling<StackingTable, Join>("join", "table", &Work::tables, tablesOf,
                                                    &StackingTable::joins, labelOfJoin);
  handling.check = [](Work& work, const Line& line, const At& at) {
    mustBeKnown(at, "above", line.value.above, work.cabinets, "type of cabinet");
    mustBeKnown(at, "below", line.value.below, work.cabinets, "type of cabinet");
  };
  return std::make_unique<SortOf<Line>>("join", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> countSort() {
  using Line = Part<catalogue::Count>;
  Columns<Line> columns = {
      name<Line>("table", HANGBOOK_FIELD(parent)),
      name<Line>("type", HANGBOOK_FIELD(value.type)),
      integer<Line>("least", HANGBOOK_FIELD(value.least), Bound::pieces),
      integer<Line>("most", HANGBOOK_FIELD(value.most), Bound::pieces, Need::needed),
  };
  auto handling = partHandling<StackingTable, catalogue::Count>("count", "table", &Work::tables, tablesOf,
                                                                &StackingTable::counts, labelOfCount);
  handling.check = [](Work& work, const Line& line, const At& at) {
    mustBeKnown(at, "type", line.value.type, work.cabinets, "type of cabinet");
    if (line.value.least > line.value.most) {
      at.fault("most", QString::number(line.value.most), "no fewer than the least");
    }
  };
  return std::make_unique<SortOf<Line>>("count", std::move(columns), std::move(handling));
}

} // namespace hangbook::exchange
