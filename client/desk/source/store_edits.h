// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "actions/plan_edit.h"
#include "desk/source/edit_source.h"
#include "desk/source/record_source.h"

namespace hangbook::desk {

/// Remembers what is edited on a store that somebody else keeps open.
class StoreEdits : public EditSource, public RecordSource {
public:
  void undo() override;
  void redo() override;
  void saveRecord(const exchange::RecordName& record, const exchange::RecordText& text,
                  const QString& by) override;
  void removeRecord(const exchange::RecordName& record, const QString& by) override;
  exchange::Data plugData(const exchange::HangName& hang) override;
  void savePlugs(const exchange::HangName& hang, const std::vector<QStringList>& rows,
                 const QString& by) override;
  void withdraw(const ShowKey& show, const QString& hang, const QString& reason, const QString& by) override;

protected:
  /// Runs `work`, which edits that part of the plans, so that it can be undone.
  void note(const actions::PlanPart& part, const QString& by, const std::function<void()>& work);
  /// As `actions::importFile`, so that it can be undone where that can be.
  exchange::Import importNoted(exchange::Kind kind, const QString& file, const QByteArray& bytes,
                               const exchange::Importer& importer, const exchange::CsvForm& form);
  /// What can be undone and done again now, for the menus.
  void tellEdits(Overview& overview) const;

private:
  virtual store::Store& planned() = 0;
  virtual QDate plannedToday() const = 0;

  actions::PlanEdits edits_;
};

} // namespace hangbook::desk
