// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/store_planning.h"

#include <algorithm>

#include <QJsonArray>

#include "actions/check_tour.h"
#include "actions/house_rules.h"
#include "actions/likings.h"
#include "desk/source/source.h"
#include "options/same_again.h"
#include "quantity/error.h"
#include "store/store.h"

namespace hangbook::desk {
namespace {

std::optional<options::Verdict> verdictFrom(const QString& word) {
  for (const auto each : {options::Verdict::holds, options::Verdict::tight, options::Verdict::unproven,
                          options::Verdict::fails}) {
    if (options::wordFor(each) == word) {
      return each;
    }
  }
  return std::nullopt;
}

CheckedHang hangFrom(const actions::CheckedShow& show, const QJsonObject& hang) {
  const auto text = [](const QJsonObject& of, const char* key) { return of[QLatin1String(key)].toString(); };
  const auto count = [&hang](const char* key) { return hang[QLatin1String(key)].toInt(); };
  const QJsonObject best = hang[QStringLiteral("best")].toObject();
  const QJsonObject chosen = hang[QStringLiteral("chosen")].toObject();
  CheckedHang made;
  made.show = show.show;
  made.hang = text(hang, "hang");
  made.options = hang[QStringLiteral("options")].toInteger();
  made.settings = hang[QStringLiteral("settings")].toInteger();
  made.holds = count("holds");
  made.tight = count("tight");
  made.unproven = count("unproven");
  made.fails = count("fails");
  made.best = verdictFrom(text(best, "verdict"));
  for (const auto& each : best[QStringLiteral("stack")].toArray()) {
    made.bestTypes << each.toString();
  }
  made.bestBecause = text(best, "because");
  made.chosen = verdictFrom(text(chosen, "verdict"));
  made.chosenBecause = text(chosen, "because");
  made.kept = show.kept;
  return made;
}

RouteCheck checkFrom(const actions::TourCheck& check) {
  RouteCheck made{{}, static_cast<int>(check.shows.size()), check.all, check.stopped};
  for (const actions::CheckedShow& show : check.shows) {
    if (const QString trouble = show.result[QStringLiteral("trouble")].toString(); !trouble.isEmpty()) {
      CheckedHang none;
      none.show = show.show;
      none.trouble = trouble;
      none.kept = show.kept;
      made.hangs.push_back(std::move(none));
    }
    for (const auto& each : show.result[QStringLiteral("hangs")].toArray()) {
      made.hangs.push_back(hangFrom(show, each.toObject()));
    }
  }
  return made;
}

} // namespace

PlanningSource& planningOf(Source& source) {
  auto* planning = dynamic_cast<PlanningSource*>(&source);
  if (planning == nullptr) {
    throw Error(Trouble::badInput, "what is shown comes from a source that cannot plan");
  }
  return *planning;
}

options::RankBy StorePlanning::likedRanking() {
  refuseWindowThread("the order of options");
  return actions::likedRanking(planned());
}

void StorePlanning::likeRanking(options::RankBy by) {
  refuseWindowThread("the order of options");
  actions::likeRanking(planned(), by);
}

std::optional<options::Choice> StorePlanning::chosenBefore(const ShowKey& show, const QString& hang,
                                                           SameAs when) {
  refuseWindowThread("what hung before");
  return when == SameAs::yesterday ? actions::chosenYesterday(planned(), show.tour, show.show, hang)
                                   : actions::chosenHereBefore(planned(), show.tour, show.show, hang);
}

std::optional<options::Option> StorePlanning::sameAgain(const options::Snapshot& snapshot,
                                                        const options::OptionKey& before,
                                                        const options::Progress& progress) {
  refuseWindowThread("the same again");
  return options::sameAgain(snapshot, before, progress);
}

WhatWouldDo StorePlanning::whatWouldDo(const options::Snapshot& snapshot, const options::Option& option,
                                       bool own, const options::Progress& progress) {
  refuseWindowThread("what would do");
  const bool at = own && option.setting.has_value();
  return {at ? options::easingsAt(snapshot, option.key, *option.setting, progress)
             : options::easingsOf(snapshot, option, progress),
          options::reservesOf(snapshot, option, progress)};
}

RouteCheck StorePlanning::checkTour(const QString& tour, bool afresh, const std::function<void(double)>& tell,
                                    const std::function<bool()>& stop) {
  refuseWindowThread("the check of a tour");
  const std::unique_ptr<store::Store> store = anotherStore();
  actions::CheckHow how;
  how.afresh = afresh;
  how.share = tell;
  how.stop = stop;
  return checkFrom(actions::checkTour(*store, tour, plannedToday(), how));
}

options::HouseEffect StorePlanning::changeHouse(const HouseWish& wish) {
  refuseWindowThread("a house rule");
  options::HouseEffect effect;
  note(actions::StatedFor{wish.site, wish.figure, {}}, wish.by, [&] {
    const venue::HouseFigure stated{wish.figure, wish.value.value_or(0.0), {}, wish.because, {}, {}};
    effect = wish.value
                 ? actions::stateHouseRule(planned(), wish.site, stated, wish.by, plannedToday(), wish.dryRun)
                 : actions::withdrawHouseRule(planned(), wish.site, wish.figure, wish.by, plannedToday(),
                                              wish.dryRun);
  });
  return effect;
}

options::SettingMap StorePlanning::settingMap(const options::Snapshot& snapshot,
                                              const options::Option& option,
                                              const options::Progress& progress) {
  refuseWindowThread("a map of settings");
  return options::settingMap(snapshot, option, progress);
}

} // namespace hangbook::desk
