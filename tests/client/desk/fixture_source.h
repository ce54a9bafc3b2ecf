// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <functional>
#include <mutex>

#include "desk/source/batch_source.h"
#include "desk/source/planning_source.h"
#include "desk/source/source.h"

namespace hangbook::testing {

/// A small tour of two stops with a handful of units, as values.
desk::Overview smallOverview();

/// A source that answers from values and remembers what it was asked to write.
class FixtureSource : public desk::Source, public desk::BatchSource, public desk::PlanningSource {
public:
  explicit FixtureSource(desk::Overview overview) : overview_(std::move(overview)) {}

  /// Thrown by the next read or write, once.
  void failNext(const std::string& text);
  std::vector<desk::ChoiceRequest> chosen() const;
  std::vector<marks::MarkUsed> recorded() const;
  QStringList scanned() const;
  std::vector<fleet::Examination> examined() const;
  /// Options for which it was asked what would do, with "own " before those at a setting of somebody's own.
  QStringList advised() const;
  /// Asking what would do then never ends by itself, until nobody waits for it any more.
  void holdAdvice(bool hold) { hold_ = hold; }

  void splitBatch(const desk::SplitRequest& request) override;
  options::RankBy likedRanking() override;
  void likeRanking(options::RankBy by) override;
  std::optional<options::Choice> chosenBefore(const desk::ShowKey& show, const QString& hang,
                                              desk::SameAs when) override;
  std::optional<options::Option> sameAgain(const options::Snapshot& snapshot,
                                           const options::OptionKey& before,
                                           const options::Progress& progress) override;
  desk::WhatWouldDo whatWouldDo(const options::Snapshot& snapshot, const options::Option& option, bool own,
                                const options::Progress& progress) override;
  desk::RouteCheck checkTour(const QString& tour, bool afresh, const std::function<void(double)>& tell,
                             const std::function<bool()>& stop) override;
  options::HouseEffect changeHouse(const desk::HouseWish& wish) override;
  std::vector<desk::HouseWish> houseWishes() const;
  options::SettingMap settingMap(const options::Snapshot& snapshot, const options::Option& option,
                                 const options::Progress& progress) override;

private:
  desk::StoreLine readStoreLine() override;
  desk::Overview readOverview() override;
  options::Snapshot readSnapshot(const desk::ShowKey& show) override;
  options::ShowOptions decideOptions(const options::Snapshot& snapshot, const QString& hang,
                                     const options::Progress& progress) override;
  options::Option judgeOption(const options::Snapshot& snapshot, const options::OptionKey& key,
                              const options::Setting& setting) override;
  options::Scene drawScene(const options::Snapshot& snapshot, const options::Option& option) override;
  options::Option thawResults(const options::Choice& choice) override;
  void writeChoice(const desk::ChoiceRequest& request) override;
  void writeMark(const marks::MarkUsed& used) override;
  desk::UnitStory readStory(const QString& serial) override;
  actions::ScanAnswer writeScan(const actions::ScanTask& task, const QString& code,
                                const QString& by) override;
  actions::ScanAnswer writeTakeBack(const QUuid& scan, const QString& by) override;
  actions::Recorded writeExamination(const fleet::Examination& examination,
                                     const QStringList& files) override;
  actions::Recorded writeOccurrence(const fleet::Occurrence& occurrence, const QStringList& files) override;
  actions::Recorded writeState(const desk::StateChange& change) override;
  void writeDemo() override;
  QString writeFolder(const QString& folder, const QString& by) override;
  desk::ImportLook lookAtFile(const desk::ImportWish& wish) override;

  void throwIfAsked();

  mutable std::mutex mutex_;
  desk::Overview overview_;
  std::string fail_;
  std::vector<desk::ChoiceRequest> chosen_;
  std::vector<marks::MarkUsed> recorded_;
  QStringList scanned_;
  std::vector<fleet::Examination> examined_;
  QStringList advised_;
  std::vector<desk::HouseWish> houseWishes_;
  std::atomic<bool> hold_{false};
  options::RankBy ranking_ = options::RankBy::cover;
};

/// A small room with a hang of two cabinets in it, one of its rows not covered.
options::Scene sampleScene(double trim);

/// An option with every kind of figure, with that verdict; `number` makes it unlike the others.
options::Option sampleOption(int number, options::Verdict verdict);

} // namespace hangbook::testing
