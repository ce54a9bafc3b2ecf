// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/store_planning.h"

#include "actions/likings.h"
#include "desk/source/source.h"
#include "options/same_again.h"
#include "quantity/error.h"

namespace hangbook::desk {

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

options::SettingMap StorePlanning::settingMap(const options::Snapshot& snapshot,
                                              const options::Option& option,
                                              const options::Progress& progress) {
  refuseWindowThread("a map of settings");
  return options::settingMap(snapshot, option, progress);
}

} // namespace hangbook::desk
