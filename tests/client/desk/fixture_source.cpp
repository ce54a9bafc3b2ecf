// SPDX-License-Identifier: GPL-3.0-or-later
#include "fixture_source.h"

#include <algorithm>
#include <array>
#include <thread>

#include "actions/fleet_work.h"
#include "actions/scan.h"
#include "desk/importing/import_wish.h"
#include "desk/source/due_lines.h"
#include "quantity/error.h"

namespace hangbook::testing {

using options::Verdict;

options::Option sampleOption(int number, Verdict verdict) {
  options::Option option;
  option.key = {.hang = QStringLiteral("left"),
                .stack = QStringList(number % 4 + 2, QStringLiteral("Marram bass"))
                         << QStringLiteral("Marram upper"),
                .table = QStringLiteral("Marram flown"),
                .bar = QStringLiteral("Marram bar"),
                .picks = catalogue::Picks::sidePair,
                .hoist = number % 2 == 0 ? QStringLiteral("Hoist 1 t") : QStringLiteral("Hoist 500 kg"),
                .points = {QStringLiteral("P%1").arg(number), QStringLiteral("P%1").arg(number + 1)}};
  option.id = QStringLiteral("option%1").arg(number);
  option.verdict = verdict;
  if (number % 3 == 0) {
    option.key.stack << QStringLiteral("Marram downfill");
    option.downfill = true;
  }
  if (verdict != Verdict::fails) {
    option.setting = options::Setting{
        .tiltDeg = -4.5 + number, .panDeg = 0, .trimM = 7.25, .mark = 30 + number, .holesDeg = {}};
    option.trimWindow =
        options::TrimWindow{7.25, 9.5, QStringLiteral("lowest-edge"), QStringLiteral("headroom")};
  }
  option.points = {{option.key.points[0],
                    3.4,
                    4.1,
                    5.0,
                    {{QStringLiteral("pick"), 3.0}, {QStringLiteral("hoist"), 0.4}},
                    0.0,
                    3.5,
                    4.2},
                   {option.key.points[1],
                    3.2 + 0.1 * number,
                    4.0,
                    {},
                    {{QStringLiteral("pick"), 3.2 + 0.1 * number}},
                    0.0,
                    3.3 + 0.1 * number,
                    4.1}};
  option.aims = {{1, -4.5}, {2, -9.0}};
  option.marks = {{30 + number, -7.35}, {29 + number, -8.6}, {31 + number, std::nullopt}};
  option.coveredPercent = 90.0 + number;
  option.massKg = 250.0 + number;
  options::Finding load{.rule = QStringLiteral("point-load"),
                        .verdict = verdict,
                        .value = 3.4,
                        .limit = 5.0,
                        .unit = QStringLiteral("kN"),
                        .usePercent = 68.0,
                        .source = QStringLiteral("Venue's sheet, revision 3"),
                        .text = QStringLiteral("P1 carries 3.40 kN at rest of 5.00 kN."),
                        .nominal = 3.3};
  options::Finding wind{.rule = QStringLiteral("wind"),
                        .verdict = Verdict::holds,
                        .applies = false,
                        .value = {},
                        .limit = {},
                        .unit = {},
                        .usePercent = {},
                        .source = {},
                        .text = QStringLiteral("Indoors: no wind."),
                        .nominal = {}};
  options::Finding zone{.rule = QStringLiteral("zone-load"),
                        .verdict = Verdict::unproven,
                        .value = {},
                        .limit = 20.0,
                        .unit = QStringLiteral("kN"),
                        .usePercent = {},
                        .source = {},
                        .text = QStringLiteral("The load of other departments on truss A is not known."),
                        .nominal = {}};
  option.findings = {load, wind};
  if (verdict == Verdict::unproven) {
    option.findings.push_back(zone);
  }
  return option;
}

options::Scene sampleScene(double trim) {
  options::Scene scene;
  scene.hang = QStringLiteral("left");
  scene.from = {-4.0, -0.5};
  scene.to = {40.0, 14.0};
  scene.lowSteel = 11.0;
  scene.sections.push_back(
      {QStringLiteral("floor"), {{4.0, 0.0}, {36.0, 2.0}}, {{4.0, 1.2}, {36.0, 3.2}}, true});
  scene.missed.push_back({QStringLiteral("floor"), {{35.5, 3.1}, {36.0, 3.2}}});
  scene.hoists.push_back({QStringLiteral("P1"),
                          {0.0, 12.0},
                          {},
                          {0.0, trim + 2.0},
                          options::ScenePlace{0.0, trim + 2.6},
                          options::ScenePlace{0.0, trim + 2.0}});
  scene.barOutline = {{-0.6, trim + 1.6}, {0.4, trim + 1.6}, {0.4, trim + 1.8}, {-0.6, trim + 1.8}};
  for (int i = 0; i < 2; ++i) {
    const double top = trim + 1.4 - 0.7 * i;
    scene.cabinets.push_back({QStringLiteral("Marram bass"),
                              i + 1,
                              {{-0.7, top}, {0.1, top}, {0.1, top - 0.7}, {-0.7, top - 0.7}},
                              -4.5,
                              true});
  }
  scene.chain = options::SceneChain{{-0.6, trim + 1.6}, {-0.7, trim + 0.4}, 37, 0.3};
  scene.centreOfGravity = options::ScenePlace{-0.2, trim + 0.8};
  scene.pickLine = {{0.0, trim + 2.0}, {0.0, trim}};
  scene.dimensions.push_back({QStringLiteral("trim"), {1.5, 0.0}, {1.5, trim}, trim});
  scene.edges.push_back({1, true, {0.1, trim + 1.0}, {36.0, trim - 2.0}});
  scene.edges.push_back({1, false, {0.1, trim + 1.0}, {6.0, 0.0}});
  return scene;
}

desk::Overview smallOverview() {
  desk::Overview all;
  all.today = QDate(2027, 4, 1);
  all.tours.push_back({{}, QStringLiteral("Test tour"), QStringLiteral("Test act"), {}});
  for (int i = 0; i < 2; ++i) {
    venue::Venue venue;
    venue.name = i == 0 ? QStringLiteral("Sluice Hall") : QStringLiteral("Kiln Yard");
    venue.town = i == 0 ? QStringLiteral("Oxmere") : QStringLiteral("Dunstow");
    venue.timeZone = QStringLiteral("Europe/Berlin");
    venue.lowSteel = metres(11.0);
    venue.points.push_back({.name = QStringLiteral("P1"),
                            .x = metres(0),
                            .y = metres(5),
                            .z = metres(12),
                            .capacity = kilonewtons(5),
                            .basis = catalogue::Basis::atRest,
                            .zone = {},
                            .source = {}});
    all.venues.push_back(venue);
    calendar::Show show;
    show.tour = QStringLiteral("Test tour");
    show.name = i == 0 ? QStringLiteral("Oxmere night") : QStringLiteral("Dunstow night");
    show.venue = venue.name;
    show.from = show.to = QDate(2027, 4, 3 + 2 * i);
    show.hangs.push_back({});
    show.hangs.back().name = QStringLiteral("left");
    show.hangs.push_back({});
    show.hangs.back().name = QStringLiteral("right");
    all.shows.push_back(show);
  }
  for (const auto* name : {"bass", "upper", "downfill"}) {
    catalogue::CabinetType type;
    type.family = QStringLiteral("Marram");
    type.name = QStringLiteral("Marram ") + QLatin1String(name);
    type.downfill = type.name.endsWith(QLatin1String("downfill"));
    type.mass = kilograms(92);
    all.catalogue.cabinets.push_back(type);
  }
  constexpr std::array serials{"MB-10", "MB-9", "MB-2", "MH-1"};
  for (const char* serial : serials) {
    fleet::Unit unit;
    unit.serial = QLatin1String(serial);
    unit.type = QStringLiteral("Marram bass");
    unit.place = QStringLiteral("warehouse bay 1");
    all.units.push_back(unit);
  }
  all.units[1].state = fleet::UnitState::quarantined;
  all.units[2].weighed = kilograms(92.5);
  fleet::ExaminationRule rule;
  rule.name = QStringLiteral("yearly look");
  rule.kind = fleet::UnitKind::cabinet;
  rule.months = 12;
  all.rules.push_back(rule);
  fleet::Examination done;
  done.serial = QStringLiteral("MB-10");
  done.rule = rule.name;
  done.date = QDate(2026, 4, 30);
  all.examinations.push_back(done);
  done.serial = QStringLiteral("MB-2");
  done.date = QDate(2025, 8, 31);
  all.examinations.push_back(done);
  all.people.push_back({{}, 0, QStringLiteral("Ide Quarrel"), QStringLiteral("crew chief")});
  all.due = desk::dueLines(all);
  return all;
}

void FixtureSource::splitBatch(const desk::SplitRequest& request) {
  const std::lock_guard lock(mutex_);
  const auto whole = std::ranges::find(overview_.units, request.serial, &fleet::Unit::serial);
  fleet::Unit part = *whole;
  whole->pieces = fleet::piecesOf(*whole) - request.pieces;
  part.serial = request.newSerial;
  part.pieces = request.pieces;
  overview_.units.push_back(part);
}

void FixtureSource::failNext(const std::string& text) {
  const std::lock_guard lock(mutex_);
  fail_ = text;
}

std::vector<desk::ChoiceRequest> FixtureSource::chosen() const {
  const std::lock_guard lock(mutex_);
  return chosen_;
}

std::vector<marks::MarkUsed> FixtureSource::recorded() const {
  const std::lock_guard lock(mutex_);
  return recorded_;
}

QStringList FixtureSource::scanned() const {
  const std::lock_guard lock(mutex_);
  return scanned_;
}

std::vector<fleet::Examination> FixtureSource::examined() const {
  const std::lock_guard lock(mutex_);
  return examined_;
}

desk::UnitStory FixtureSource::readStory(const QString& serial) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  desk::UnitStory story;
  for (const fleet::Examination& each : overview_.examinations) {
    if (each.serial == serial) {
      story.examinations.push_back(each);
    }
  }
  return story;
}

actions::ScanAnswer FixtureSource::writeScan(const actions::ScanTask& task, const QString& code,
                                             const QString& by) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  scanned_ << code + u'/' + by;
  const auto unit = std::ranges::find(overview_.units, code, &fleet::Unit::serial);
  if (unit == overview_.units.end()) {
    return {actions::ScanAnswer::Word::unknown, code, QStringLiteral("no unit has it"), {}, {}};
  }
  if (unit->place == task.place) {
    return {actions::ScanAnswer::Word::again, code, QStringLiteral("is there already"), {}, {}};
  }
  unit->place = task.place;
  return {actions::ScanAnswer::Word::done, code, QStringLiteral("is in"), {code}, QUuid::createUuid()};
}

actions::ScanAnswer FixtureSource::writeTakeBack(const QUuid& scan, const QString&) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  return {actions::ScanAnswer::Word::undone, {}, QStringLiteral("is where it was"), {}, scan};
}

actions::Recorded FixtureSource::writeExamination(const fleet::Examination& examination, const QStringList&) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  examined_.push_back(examination);
  std::erase_if(overview_.examinations, [&](const fleet::Examination& each) {
    return each.serial == examination.serial && each.rule == examination.rule;
  });
  overview_.examinations.push_back(examination);
  actions::Recorded what;
  what.examination = examination;
  what.quarantined = examination.result == fleet::ExaminationResult::fail;
  if (what.quarantined) {
    std::ranges::find(overview_.units, examination.serial, &fleet::Unit::serial)->state =
        fleet::UnitState::quarantined;
    what.shows = {{QStringLiteral("Test tour"), QStringLiteral("Oxmere night"), QDate(2027, 4, 2), false, 1}};
  }
  return what;
}

actions::Recorded FixtureSource::writeOccurrence(const fleet::Occurrence& occurrence, const QStringList&) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  actions::Recorded what;
  what.occurrence = occurrence;
  what.quarantined = occurrence.kind == fleet::OccurrenceKind::fault;
  return what;
}

actions::Recorded FixtureSource::writeState(const desk::StateChange& change) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  std::ranges::find(overview_.units, change.serial, &fleet::Unit::serial)->state = change.state;
  return {};
}

void FixtureSource::throwIfAsked() {
  if (!fail_.empty()) {
    throw Error(Trouble::store, std::exchange(fail_, {}));
  }
}

desk::StoreLine FixtureSource::readStoreLine() {
  return {QStringLiteral("fixture"), QStringLiteral("in memory")};
}

desk::Overview FixtureSource::readOverview() {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  return overview_;
}

options::Snapshot FixtureSource::readSnapshot(const desk::ShowKey& show) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  options::Snapshot snapshot;
  snapshot.catalogue = overview_.catalogue;
  snapshot.show = *desk::findShow(overview_, show);
  snapshot.venue = *desk::findVenue(overview_, snapshot.show.venue);
  snapshot.today = overview_.today;
  return snapshot;
}

options::ShowOptions FixtureSource::decideOptions(const options::Snapshot& snapshot, const QString& hang,
                                                  const options::Progress& progress) {
  options::ShowOptions all{snapshot.show.tour, snapshot.show.name, snapshot.show.venue, {}};
  all.hangs.push_back({hang, {8, 1000, 10, {}, QStringLiteral("tilt in steps of 0.5°")}, {}});
  constexpr std::array verdicts{Verdict::holds, Verdict::holds, Verdict::tight, Verdict::unproven,
                                Verdict::fails};
  for (int i = 0; i < 10; ++i) {
    if (progress && !progress(i / 10.0)) {
      throw options::Cancelled{};
    }
    options::Option option = sampleOption(i, verdicts.at(static_cast<std::size_t>(i / 2)));
    option.key.hang = hang;
    all.hangs.back().options.push_back(option);
  }
  return all;
}

options::Option FixtureSource::judgeOption(const options::Snapshot&, const options::OptionKey& key,
                                           const options::Setting& setting) {
  options::Option option = sampleOption(0, setting.trimM > 9.5 ? Verdict::fails : Verdict::holds);
  option.key = key;
  option.setting = setting;
  return option;
}

options::Scene FixtureSource::drawScene(const options::Snapshot&, const options::Option& option) {
  return sampleScene(option.setting ? option.setting->trimM : 0.0);
}

options::Option FixtureSource::thawResults(const options::Choice& choice) {
  options::Option option = sampleOption(0, choice.verdict);
  option.key = choice.key;
  option.setting = choice.setting;
  option.pickLoads = {{QStringLiteral("left"), 3.0, {QStringLiteral("P1")}}};
  option.datumHeightM = 9.1;
  return option;
}

void FixtureSource::writeChoice(const desk::ChoiceRequest& request) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  chosen_.push_back(request);
  std::erase_if(overview_.choices, [&](const options::Choice& each) {
    return each.show == request.show.show && each.hang == request.hang;
  });
  options::Choice choice;
  choice.revision = request.expectedRevision + 1;
  choice.tour = request.show.tour;
  choice.show = request.show.show;
  choice.hang = request.hang;
  choice.key = request.key;
  choice.setting = request.setting;
  choice.verdict = request.reason.isEmpty() ? Verdict::holds : Verdict::unproven;
  choice.reason = request.reason;
  choice.by = request.by;
  overview_.choices.push_back(choice);
}

QStringList FixtureSource::advised() const {
  const std::lock_guard lock(mutex_);
  return advised_;
}

options::RankBy FixtureSource::likedRanking() {
  const std::lock_guard lock(mutex_);
  return ranking_;
}

void FixtureSource::likeRanking(options::RankBy by) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  ranking_ = by;
}

std::optional<options::Choice> FixtureSource::chosenBefore(const desk::ShowKey& show, const QString& hang,
                                                           desk::SameAs when) {
  const std::lock_guard lock(mutex_);
  if (when == desk::SameAs::hereBefore) {
    return std::nullopt;
  }
  for (const options::Choice& each : overview_.choices) {
    if (each.show != show.show && each.hang == hang) {
      return each;
    }
  }
  return std::nullopt;
}

std::optional<options::Option> FixtureSource::sameAgain(const options::Snapshot&,
                                                        const options::OptionKey& before,
                                                        const options::Progress&) {
  options::Option option = sampleOption(0, Verdict::holds);
  return option.key.stack == before.stack ? std::optional(option) : std::nullopt;
}

desk::WhatWouldDo FixtureSource::whatWouldDo(const options::Snapshot&, const options::Option& option,
                                             bool own, const options::Progress& progress) {
  {
    const std::lock_guard lock(mutex_);
    throwIfAsked();
    advised_ << (own ? QStringLiteral("own ") + option.id : option.id);
  }
  while (hold_) {
    if (!progress(0.5)) {
      throw options::Cancelled{};
    }
    std::this_thread::yield();
  }
  desk::WhatWouldDo found;
  found.easings.option = option.id;
  found.easings.verdict = option.verdict;
  found.easings.runs = 17;
  if (option.verdict == Verdict::fails) {
    found.easings.singles.push_back(
        {.changes = {{.kind = QStringLiteral("low-steel"),
                      .words = QStringLiteral("low steel at 11.34 m instead of 11.00 m (0.34 m higher)"),
                      .unit = QStringLiteral("m"),
                      .step = 0.01,
                      .figures = {{QStringLiteral("low steel"), 11.0, 11.34, 34}}}},
         .verdict = Verdict::tight,
         .oneStepLess = Verdict::fails,
         .option = option.id,
         .setting = options::Setting{-4.5, 0, 7.25, 31, {}},
         .coveredPercent = 98});
  } else if (option.verdict != Verdict::unproven) {
    found.reserves.push_back({.kind = QStringLiteral("mass"),
                              .unit = QStringLiteral("kg"),
                              .step = 1,
                              .steps = 187,
                              .most = 5000,
                              .from = 20,
                              .last = 206,
                              .then = Verdict::fails,
                              .rule = QStringLiteral("point-load"),
                              .text = QStringLiteral("P1 carries 5.01 kN at rest of 5.00 kN."),
                              .words = QStringLiteral("186 kg more on the bar")});
  } else {
    found.easings.ask.push_back({QStringLiteral("zone-load"), QStringLiteral("Truss A is not known.")});
  }
  return found;
}

desk::RouteCheck FixtureSource::checkTour(const QString& tour, bool afresh,
                                          const std::function<void(double)>& tell,
                                          const std::function<bool()>& stop) {
  const desk::Overview overview = [this] {
    const std::lock_guard lock(mutex_);
    throwIfAsked();
    return overview_;
  }();
  desk::RouteCheck check;
  for (const calendar::Show& show : overview.shows) {
    ++check.all;
    if (show.tour != tour || check.stopped) {
      continue;
    }
    desk::CheckedHang hang;
    hang.show = show.name;
    hang.hang = QStringLiteral("left");
    hang.options = 10;
    hang.settings = 1000;
    hang.holds = check.shows == 0 ? 4 : 0;
    hang.fails = check.shows == 0 ? 6 : 10;
    hang.best = check.shows == 0 ? Verdict::holds : Verdict::fails;
    hang.bestTypes = QStringList{QStringLiteral("Marram bass")};
    hang.bestBecause = check.shows == 0 ? QString() : QStringLiteral("headroom");
    hang.kept = !afresh;
    check.hangs.push_back(hang);
    ++check.shows;
    tell(0.5);
    while (hold_ && !stop()) {
      std::this_thread::yield();
    }
    check.stopped = stop();
  }
  return check;
}

options::HouseEffect FixtureSource::changeHouse(const desk::HouseWish& wish) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  houseWishes_.push_back(wish);
  options::HouseEffect effect;
  effect.judged = 2;
  effect.changed.push_back({QStringLiteral("Test tour"), QStringLiteral("Oxmere night"),
                            QStringLiteral("left"), QStringLiteral("option0"), Verdict::holds, Verdict::fails,
                            QStringLiteral("There is 0.20 m of 0.30 m.")});
  return effect;
}

std::vector<desk::HouseWish> FixtureSource::houseWishes() const {
  const std::lock_guard lock(mutex_);
  return houseWishes_;
}

options::SettingMap FixtureSource::settingMap(const options::Snapshot&, const options::Option& option,
                                              const options::Progress&) {
  {
    const std::lock_guard lock(mutex_);
    throwIfAsked();
    advised_ << QStringLiteral("map ") + option.id;
  }
  options::SettingMap map;
  if (!option.setting) {
    map.impossible = QStringLiteral("the chain is too short");
    return map;
  }
  map.mark = option.setting->mark;
  map.runs = 1234;
  const QString low = QStringLiteral("lowest-edge");
  for (int i = 0; i < 5; ++i) {
    options::SettingColumn column{option.setting->tiltDeg + 0.5 * (i - 2), {}, {}};
    if (i == 0) {
      column.shutBy = QStringList{QStringLiteral("travel")};
    } else {
      column.stretches.push_back({7.0,
                                  9.0,
                                  low,
                                  i < 3 ? QStringLiteral("headroom") : QStringLiteral("cover"),
                                  {{7.0, 8.5, Verdict::holds}, {8.51, 9.0, Verdict::tight}}});
    }
    map.columns.push_back(column);
  }
  for (int mark = *map.mark - 1; mark <= *map.mark + 1; ++mark) {
    map.marks.push_back({mark, {{option.setting->tiltDeg, Verdict::holds}}});
  }
  return map;
}

void FixtureSource::writeMark(const marks::MarkUsed& used) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  recorded_.push_back(used);
  overview_.marks.insert(overview_.marks.begin(), used);
}

void FixtureSource::writeDemo() {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  overview_ = smallOverview();
}

desk::ImportLook FixtureSource::lookAtFile(const desk::ImportWish&) {
  throw Error(Trouble::badInput, "these values hold no files"); // the journeys import on a real store
}

QString FixtureSource::writeFolder(const QString&, const QString&) {
  const std::lock_guard lock(mutex_);
  throwIfAsked();
  overview_ = smallOverview();
  return QStringLiteral("Read 2 shows.");
}

} // namespace hangbook::testing
