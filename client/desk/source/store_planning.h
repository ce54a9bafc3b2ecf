// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/planning_source.h"

namespace hangbook::store {
class Store;
}

namespace hangbook::desk {

/// Planning on a store that somebody else keeps open.
class StorePlanning : public PlanningSource {
public:
  options::RankBy likedRanking() override;
  void likeRanking(options::RankBy by) override;
  std::optional<options::Choice> chosenBefore(const ShowKey& show, const QString& hang, SameAs when) override;
  std::optional<options::Option> sameAgain(const options::Snapshot& snapshot,
                                           const options::OptionKey& before,
                                           const options::Progress& progress) override;
  WhatWouldDo whatWouldDo(const options::Snapshot& snapshot, const options::Option& option, bool own,
                          const options::Progress& progress) override;
  options::SettingMap settingMap(const options::Snapshot& snapshot, const options::Option& option,
                                 const options::Progress& progress) override;

private:
  virtual store::Store& planned() = 0;
  virtual QDate plannedToday() const = 0;
};

} // namespace hangbook::desk
