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

void StoreEdits::saveRecord(const exchange::RecordName& record, const QStringList& texts, const QString& by) {
  refuseWindowThread("a record");
  const actions::RecordAs part{record, texts};
  note(part, by, [&] { actions::saveRecord(planned(), part, by); });
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
