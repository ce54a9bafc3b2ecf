// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "desk/source/overview.h"
#include "options/scene.h"
#include "options/search.h"
#include "options/snapshot.h"

namespace hangbook::actions {
struct ScanTask;   // actions/scan.h
struct ScanAnswer; // actions/scan.h
struct Recorded;   // actions/fleet_work.h
} // namespace hangbook::actions

namespace hangbook::desk {

struct ImportWish; // importing/import_wish.h
struct ImportLook; // importing/import_wish.h

/// What the store is, for the status line.
struct StoreLine {
  QString name{};     ///< the file's name, or the server and database
  QString location{}; ///< whole path or address, for the tooltip
};

/// What somebody wants to choose.
struct ChoiceRequest {
  ShowKey show{};
  QString hang{};
  options::OptionKey key{};
  options::Setting setting{};
  QString by{};
  QString reason{};
  int expectedRevision = 0; ///< of the choice that stands there now; 0 = none
};

/// All that is recorded of one unit, oldest first, corrected facts too.
struct UnitStory {
  std::vector<fleet::Movement> movements{};
  std::vector<fleet::Examination> examinations{};
  std::vector<fleet::Occurrence> occurrences{};
  std::vector<fleet::UnitDocument> documents{};
};

/// Another state for a unit.
struct StateChange {
  QString serial{};
  fleet::UnitState state = fleet::UnitState::ready;
  QString reason{};
  QString by{};
};

/// Where the window gets its facts from and to whom it hands what people do. Everything here may take long:
/// each function refuses to run on the window's thread (throws std::logic_error) and is called by Work.
/// Throws hangbook::Error with words for people.
class Source {
public:
  Source() = default;
  Source(const Source&) = delete;
  Source& operator=(const Source&) = delete;
  virtual ~Source() = default;

  StoreLine storeLine();
  Overview overview();
  options::Snapshot snapshot(const ShowKey& show);
  options::ShowOptions decide(const options::Snapshot& snapshot, const QString& hang,
                              const options::Progress& progress);
  options::Option judge(const options::Snapshot& snapshot, const options::OptionKey& key,
                        const options::Setting& setting);
  options::Scene scene(const options::Snapshot& snapshot, const options::Option& option);

  /// The results as they were frozen with a choice.
  options::Option frozenResults(const options::Choice& choice);

  void choose(const ChoiceRequest& request);
  void recordMark(const marks::MarkUsed& used);
  UnitStory story(const QString& serial);
  /// One code of the scanner, booked or answered in words. Checks the task first.
  actions::ScanAnswer scan(const actions::ScanTask& task, const QString& code, const QString& by);
  actions::ScanAnswer takeBack(const QUuid& scan, const QString& by);
  /// `files` are names of files to be kept with it.
  actions::Recorded examine(const fleet::Examination& examination, const QStringList& files);
  actions::Recorded recordOccurrence(const fleet::Occurrence& occurrence, const QStringList& files);
  actions::Recorded setState(const StateChange& change);
  void fillWithDemo();
  /// Reads every spreadsheet of a folder in one transaction; answers what was read, in words.
  QString importFolder(const QString& folder, const QString& by);
  /// Looks at one spreadsheet, or takes it in.
  ImportLook importFile(const ImportWish& wish);

  /// Lets go of the store: the last thing that the thread which asked for all of this does.
  void close() { closeStore(); }

private:
  virtual void closeStore() {}
  virtual StoreLine readStoreLine() = 0;
  virtual Overview readOverview() = 0;
  virtual options::Snapshot readSnapshot(const ShowKey& show) = 0;
  virtual options::ShowOptions decideOptions(const options::Snapshot& snapshot, const QString& hang,
                                             const options::Progress& progress) = 0;
  virtual options::Option judgeOption(const options::Snapshot& snapshot, const options::OptionKey& key,
                                      const options::Setting& setting) = 0;
  virtual options::Scene drawScene(const options::Snapshot& snapshot, const options::Option& option) = 0;
  virtual options::Option thawResults(const options::Choice& choice) = 0;
  virtual void writeChoice(const ChoiceRequest& request) = 0;
  virtual void writeMark(const marks::MarkUsed& used) = 0;
  virtual UnitStory readStory(const QString& serial) = 0;
  virtual actions::ScanAnswer writeScan(const actions::ScanTask& task, const QString& code,
                                        const QString& by) = 0;
  virtual actions::ScanAnswer writeTakeBack(const QUuid& scan, const QString& by) = 0;
  virtual actions::Recorded writeExamination(const fleet::Examination& examination,
                                             const QStringList& files) = 0;
  virtual actions::Recorded writeOccurrence(const fleet::Occurrence& occurrence,
                                            const QStringList& files) = 0;
  virtual actions::Recorded writeState(const StateChange& change) = 0;
  virtual void writeDemo() = 0;
  virtual QString writeFolder(const QString& folder, const QString& by) = 0;
  virtual ImportLook lookAtFile(const ImportWish& wish) = 0;
};

/// Throws std::logic_error on the thread that the window lives on.
void refuseWindowThread(const char* what);

} // namespace hangbook::desk
