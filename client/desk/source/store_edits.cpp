// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/store_edits.h"

#include "actions/facts.h"
#include "desk/source/source.h"
#include "quantity/error.h"
#include "store/store.h"

namespace hangbook::desk {

EditSource& editsOf(Source& source) {
  auto* edits = dynamic_cast<EditSource*>(&source);
  if (edits == nullptr) {
    throw Error(Trouble::badInput, "what is shown comes from a source that keeps no edits");
  }
  return *edits;
}

RecordSource& recordsOf(Source& source) {
  auto* records = dynamic_cast<RecordSource*>(&source);
  if (records == nullptr) {
    throw Error(Trouble::badInput, "what is shown comes from a source whose records cannot be edited");
  }
  return *records;
}

void StoreEdits::undo() {
  refuseWindowThread("undoing");
  edits_.undo(planned(), plannedToday());
}

void StoreEdits::redo() {
  refuseWindowThread("doing again");
  edits_.redo(planned(), plannedToday());
}

void StoreEdits::withdraw(const ShowKey& show, const QString& hang, const QString& reason,
                          const QString& by) {
  refuseWindowThread("a choice");
  const actions::ChosenFor part{show.tour, show.show, hang, {}};
  note(part, by, [&] {
    const actions::PlanPart stands = actions::asItStands(planned(), part);
    const auto& choice = std::get<actions::ChosenFor>(stands).choice;
    if (!choice) {
      throw Error(Trouble::notPossible, "nothing is chosen for it any more", hang.toStdString());
    }
    actions::withdrawChoice(planned(), *choice, reason, by);
  });
}

void StoreEdits::saveRecord(const exchange::RecordName& record, const exchange::RecordText& text,
                            const QString& by) {
  refuseWindowThread("a record");
  const exchange::RecordName named{record.kind, record.sort, exchange::nameIn(record, text)};
  note(actions::RecordAs{named, text}, by, [&] { actions::saveRecord(planned(), {record, text}, by); });
}

void StoreEdits::removeRecord(const exchange::RecordName& record, const QString& by) {
  refuseWindowThread("a record");
  note(actions::RecordAs{record, {}}, by, [&] { actions::removeRecord(planned(), record, by); });
}

exchange::Data StoreEdits::plugData(const exchange::HangName& hang) {
  refuseWindowThread("plugs");
  return actions::plugData(planned(), hang);
}

void StoreEdits::savePlugs(const exchange::HangName& hang, const std::vector<QStringList>& rows,
                           const QString& by) {
  refuseWindowThread("plugs");
  const actions::PluggedFor wanted{hang, rows};
  note(wanted, by, [&] { actions::savePlugs(planned(), wanted, by); });
}

exchange::Import StoreEdits::importNoted(exchange::Kind kind, const QString& file, const QByteArray& bytes,
                                         const exchange::Importer& importer, const exchange::CsvForm& form) {
  actions::NotedImport noted = actions::importNoted(planned(), kind, file, bytes, importer, form);
  if (noted.before) {
    edits_.add({std::move(*noted.before), std::move(*noted.after), importer.by});
  }
  return std::move(noted.import);
}

void StoreEdits::note(const actions::PlanPart& part, const QString& by, const std::function<void()>& work) {
  if (auto edit = actions::noted(planned(), part, by, work)) {
    edits_.add(std::move(*edit));
  }
}

void StoreEdits::tellEdits(Overview& overview) const {
  const auto copyOf = [](const actions::PlanEdit* edit) {
    return edit == nullptr ? nullptr : std::make_shared<const actions::PlanEdit>(*edit);
  };
  overview.toUndo = copyOf(edits_.toUndo());
  overview.toRedo = copyOf(edits_.toRedo());
}

} // namespace hangbook::desk
