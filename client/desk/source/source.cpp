// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/source.h"

#include <stdexcept>
#include <string>

#include <QCoreApplication>
#include <QThread>

#include "actions/fleet_work.h"
#include "actions/scan.h"
#include "desk/importing/import_wish.h"
#include "desk/source/due_lines.h"

namespace hangbook::desk {

void refuseWindowThread(const char* what) {
  const auto* application = QCoreApplication::instance();
  if (application != nullptr && QThread::currentThread() == application->thread()) {
    throw std::logic_error(std::string(what) + " was asked for on the window's thread");
  }
}

StoreLine Source::storeLine() {
  refuseWindowThread("the store's name");
  return readStoreLine();
}

Overview Source::overview() {
  refuseWindowThread("the overview");
  return workedOut(readOverview());
}

options::Snapshot Source::snapshot(const ShowKey& show) {
  refuseWindowThread("a show's snapshot");
  return readSnapshot(show);
}

options::ShowOptions Source::decide(const options::Snapshot& snapshot, const QString& hang,
                                    const options::Progress& progress) {
  refuseWindowThread("a search");
  return decideOptions(snapshot, hang, progress);
}

options::Option Source::judge(const options::Snapshot& snapshot, const options::OptionKey& key,
                              const options::Setting& setting) {
  refuseWindowThread("a judgement");
  return judgeOption(snapshot, key, setting);
}

options::Scene Source::scene(const options::Snapshot& snapshot, const options::Option& option) {
  refuseWindowThread("a scene");
  return drawScene(snapshot, option);
}

options::Option Source::frozenResults(const options::Choice& choice) {
  refuseWindowThread("a frozen choice");
  return thawResults(choice);
}

void Source::choose(const ChoiceRequest& request) {
  refuseWindowThread("a choice");
  writeChoice(request);
}

void Source::recordMark(const marks::MarkUsed& used) {
  refuseWindowThread("a mark's record");
  writeMark(used);
}

UnitStory Source::story(const QString& serial) {
  refuseWindowThread("a unit's story");
  return readStory(serial);
}

actions::ScanAnswer Source::scan(const actions::ScanTask& task, const QString& code, const QString& by) {
  refuseWindowThread("a scan");
  return writeScan(task, code, by);
}

actions::ScanAnswer Source::takeBack(const QUuid& scan, const QString& by) {
  refuseWindowThread("a scan's correction");
  return writeTakeBack(scan, by);
}

actions::Recorded Source::examine(const fleet::Examination& examination, const QStringList& files) {
  refuseWindowThread("an examination's record");
  return writeExamination(examination, files);
}

actions::Recorded Source::recordOccurrence(const fleet::Occurrence& occurrence, const QStringList& files) {
  refuseWindowThread("a record of what happened");
  return writeOccurrence(occurrence, files);
}

actions::Recorded Source::setState(const StateChange& change) {
  refuseWindowThread("a unit's state");
  return writeState(change);
}

void Source::fillWithDemo() {
  refuseWindowThread("the demo");
  writeDemo();
}

QString Source::importFolder(const QString& folder, const QString& by) {
  refuseWindowThread("an import");
  return writeFolder(folder, by);
}

ImportLook Source::importFile(const ImportWish& wish) {
  refuseWindowThread("an import");
  return lookAtFile(wish);
}

} // namespace hangbook::desk
