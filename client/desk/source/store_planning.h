// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "desk/source/planning_source.h"
#include "desk/source/store_edits.h"

namespace hangbook::store {
class Store;
}

namespace hangbook::desk {

/// Planning on a store that somebody else keeps open.
class StorePlanning : public PlanningSource, public StoreEdits {
public:
  options::RankBy likedRanking() override;
  void likeRanking(options::RankBy by) override;
  std::optional<options::Choice> chosenBefore(const ShowKey& show, const QString& hang, SameAs when) override;
  std::optional<options::Option> sameAgain(const options::Snapshot& snapshot,
                                           const options::OptionKey& before,
                                           const options::Progress& progress) override;
  WhatWouldDo whatWouldDo(const options::Snapshot& snapshot, const options::Option& option, bool own,
                          const options::Progress& progress) override;
  RouteCheck checkTour(const QString& tour, bool afresh, const std::function<void(double)>& tell,
                       const std::function<bool()>& stop) override;
  options::HouseEffect changeHouse(const HouseWish& wish) override;
  options::SettingMap settingMap(const options::Snapshot& snapshot, const options::Option& option,
                                 const options::Progress& progress) override;

private:
  store::Store& planned() override = 0;
  /// Another one on the same place, for work that must not hold up the rest.
  virtual std::unique_ptr<store::Store> anotherStore() = 0;
  QDate plannedToday() const override = 0;
};

} // namespace hangbook::desk
