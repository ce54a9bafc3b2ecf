// SPDX-License-Identifier: GPL-3.0-or-later
// What stands around the rules (load cells, stock, carts, house rules) on
// shows no two parts of which are alike, against what was kept.
#include <boost/test/unit_test.hpp>

#include <QJsonObject>

#include "kept/option_lines.h"
#include "kept/unlike_show.h"
#include "options/cart_plan.h"
#include "options/house_change.h"
#include "options/option_json.h"
#include "options/ranking.h"
#include "options/same_again.h"
#include "options/search.h"
#include "options/side_by_side.h"
#include "options/stock_day.h"
#include "options/weigh.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Option;
using options::Snapshot;

namespace {

void word(Line& line, const QString& text) {
  line.word(text.toStdString());
}

/// What each of the readings would be, off by parts of their own.
void weighed(Line& line, const Snapshot& snapshot, const Option& option, Chance& by, double off) {
  const auto at = by.oneIn(2) ? options::CellAt::hook : options::CellAt::point;
  std::vector<options::CellReading> readings;
  for (const options::PickLoad& pick : option.pickLoads) {
    readings.push_back({pick.name, pick.loadKn * by.between(1.0 - off, 1.0 + off) + 0.4});
  }
  const options::Weighed all = options::weigh(snapshot, option, at, readings);
  for (const options::WeighedPick& pick : all.picks) {
    word(line, pick.name);
    line.number(pick.computedKn);
    line.number(pick.percent);
    line.number(pick.beyond ? 1 : 0);
  }
  line.number(all.tolerancePercent);
  word(line, all.toleranceSource);
  for (const options::Assumption& each : all.assumptions) {
    word(line, each.what);
    for (const double would : each.wouldKn) {
      line.number(would);
    }
    line.number(each.missKn);
    line.number(each.explains ? 1 : 0);
  }
}

void inStock(Line& line, const Snapshot& snapshot, const Option& option) {
  const options::Stock stock{snapshot.units, snapshot.examinationRules, snapshot.examinations,
                             snapshot.occurrences};
  options::Demand one{QStringLiteral("Lanternfish Parade"),
                      QStringLiteral("Harbour night"),
                      snapshot.show.awayFrom,
                      snapshot.show.awayTo,
                      {},
                      {}};
  options::addKey(option.key, QStringLiteral("chain"), one.numbers);
  options::addHardware(snapshot.show.hangs.front(), 2, one.numbers);
  std::vector<options::Demand> demands{one};
  for (const options::Choice& choice : snapshot.otherChoices) {
    options::Demand other{choice.tour, choice.show, choice.awayFrom, choice.awayTo, {}, {}};
    options::addKey(choice.key, options::chainOf(snapshot.catalogue, choice), other.numbers);
    demands.push_back(other);
  }
  for (const options::TypeOnDay& type : options::stockOn(QDate(2027, 4, 3), stock, demands)) {
    word(line, type.type);
    for (const int number : {type.owned, type.hired, type.away, type.quarantined, type.due, type.unruled,
                             type.wanted, type.fit(), type.free(), static_cast<int>(type.takers.size())}) {
      line.number(number);
    }
  }
  for (const options::Shortage& each : options::shortagesOf(stock, demands)) {
    word(line, each.show + each.type + each.day.toString(Qt::ISODate));
    for (const int number : {each.lacking, each.examine, each.release, each.hire}) {
      line.number(number);
    }
  }
}

void onCarts(Line& line, const Snapshot& snapshot, const Option& one, const Option& other) {
  for (const options::PlannedCart& cart :
       options::planCarts(snapshot.catalogue, {{QStringLiteral("left"), one.key.stack},
                                               {QStringLiteral("right"), other.key.stack}})) {
    word(line, cart.cart + cart.cabinet + cart.hangs.join(u' '));
    line.number(cart.number);
    line.number(cart.gross ? std::optional(inKilograms(*cart.gross)) : std::nullopt);
    line.number(cart.floor ? std::optional(inMetres(*cart.floor)) : std::nullopt);
  }
}

options::Choice chosen(const Snapshot& snapshot, const Option& option) {
  options::Choice choice;
  choice.tour = snapshot.tour.name;
  choice.show = snapshot.show.name;
  choice.hang = option.key.hang;
  choice.option = option.id;
  choice.key = option.key;
  choice.verdict = option.verdict;
  if (option.setting) {
    choice.setting = *option.setting;
  }
  return choice;
}

void houseRules(Line& line, Snapshot snapshot, const Option& option, Chance& by) {
  snapshot.choices.push_back(chosen(snapshot, option));
  std::vector<venue::HouseFigure> rules = snapshot.tour.house;
  for (const char* figure : {"least-trim", "mass-doubt", "lift-share", "side-difference"}) {
    rules.push_back({QLatin1String(figure),
                     by.between(0.5, 6.0),
                     {},
                     {},
                     QStringLiteral("Runa Vell"),
                     QDate(2026, 11, 3)});
  }
  rules.push_back(
      {QStringLiteral("joint-side-share"), 0.93, {}, {}, QStringLiteral("Runa Vell"), QDate(2026, 11, 4)});
  rules.push_back(
      {QStringLiteral("secondary-drop"), 0.3, {}, {}, QStringLiteral("Runa Vell"), QDate(2026, 11, 4)});
  for (const options::HouseSite& site :
       {options::HouseSite{options::HousePlace::tour, {}, snapshot.tour.name},
        options::HouseSite{options::HousePlace::venue, {}, snapshot.venue.name},
        options::HouseSite{options::HousePlace::show, snapshot.tour.name, snapshot.show.name},
        options::HouseSite{options::HousePlace::show, QStringLiteral("another"), snapshot.show.name}}) {
    const options::HouseEffect effect = options::effectOf({snapshot}, site, rules);
    line.number(effect.judged);
    for (const options::VerdictChange& each : effect.changed) {
      word(line, each.hang + each.option + wordFor(each.before) + wordFor(each.now) + each.because);
    }
  }
}

void compared(Line& line, const options::HangOptions& found) {
  std::vector<const Option*> some;
  for (std::size_t i = 0; i < found.options.size() && some.size() < 3; i += 2) {
    some.push_back(&found.options[i]);
  }
  for (const options::CompareRow& row : options::sideBySide(some)) {
    word(line, row.what + row.cells.join(u'|') + (row.differs ? u'!' : u'='));
  }
  word(line, options::beatenBy(found).join(u' '));
  options::HangOptions ranked = found;
  for (const options::RankBy by : options::allRankings()) {
    options::rank(ranked, {by, found.options.back().key});
    for (const Option& each : ranked.options) {
      word(line, each.id);
    }
  }
}

/// Written as JSON, read back and written again; one key taken out at a time is refused with the same words.
void readBack(Line& line, const Option& option) {
  const QJsonObject object = toJson(option);
  line.number(toJson(options::optionFromJson(object)) == object ? 1 : 0);
  for (const QString& key : object.keys()) {
    QJsonObject without = object;
    without.remove(key);
    try {
      add(line, QJsonValue(toJson(options::optionFromJson(without))));
    } catch (const Error& error) {
      line.word(error.what());
    }
  }
}

void demanded(Line& line, const Snapshot& snapshot) {
  std::vector<options::Choice> choices = snapshot.otherChoices;
  choices.insert(choices.end(), snapshot.choices.begin(), snapshot.choices.end());
  const options::Demand demand = options::demandOf(snapshot.catalogue, snapshot.show, choices, {});
  word(line, demand.open.join(u' '));
  for (const auto& [what, number] : demand.numbers) {
    word(line, what.second);
    line.number(number);
  }
  for (const options::Choice* each : options::newestOf(choices)) {
    word(line, each->show + each->hang);
    line.number(each->revision);
  }
  for (const options::RankBy by : options::allRankings()) {
    word(line, wordFor(by));
    line.number(options::rankBy(wordFor(by)) == by ? 1 : 0);
  }
}

template <class Figures>
void addLine(std::vector<Line>& lines, std::string name, Figures figures) {
  Line line(std::move(name));
  try {
    figures(line);
  } catch (const Error& error) {
    line.plain("!");
    line.word(error.what());
  }
  lines.push_back(line);
}

void around(std::vector<Line>& lines, std::uint64_t seed) {
  const Snapshot snapshot = unlikeShow(seed);
  const options::HangOptions found = options::decide(snapshot, QStringLiteral("left")).hangs.front();
  if (found.options.empty() || found.options.size() > 30) {
    return;
  }
  const std::string name = "around " + std::to_string(seed);
  Chance by(seed);
  const Option& first = found.options.front();
  const Option& last = found.options.back();
  addLine(lines, name + " compared", [&](Line& line) { compared(line, found); });
  addLine(lines, name + " stock", [&](Line& line) { inStock(line, snapshot, first); });
  addLine(lines, name + " carts", [&](Line& line) { onCarts(line, snapshot, first, last); });
  addLine(lines, name + " house", [&](Line& line) { houseRules(line, snapshot, first, by); });
  addLine(lines, name + " read back", [&](Line& line) { readBack(line, first); });
  addLine(lines, name + " demand", [&](Line& line) { demanded(line, snapshot); });
  if (first.hangInput) {
    addLine(lines, name + " cells", [&](Line& line) { weighed(line, snapshot, first, by, 0.02); });
    addLine(lines, name + " cells off", [&](Line& line) { weighed(line, snapshot, first, by, 0.4); });
  }
  if (seed % 5 == 0) {
    addLine(lines, name + " again", [&](Line& line) {
      const auto again = options::sameAgain(snapshot, last.key);
      word(line, again ? again->id : QStringLiteral("none"));
    });
  }
}

void partOfThem(std::uint64_t part) {
  std::vector<Line> lines;
  for (std::uint64_t seed = 100 + part; seed < 190; seed += 4) {
    if (looksAt(seed)) {
      around(lines, seed);
    }
  }
  compareWithKept(lines, partFile("around", part));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(what_stands_around_comes_out_as_kept_1) {
  partOfThem(0);
}
BOOST_AUTO_TEST_CASE(what_stands_around_comes_out_as_kept_2) {
  partOfThem(1);
}
BOOST_AUTO_TEST_CASE(what_stands_around_comes_out_as_kept_3) {
  partOfThem(2);
}
BOOST_AUTO_TEST_CASE(what_stands_around_comes_out_as_kept_4) {
  partOfThem(3);
}

BOOST_AUTO_TEST_SUITE_END()
