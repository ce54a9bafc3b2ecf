// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/plug_dialog.h"

#include <algorithm>

#include "desk/data/part_table.h"
#include "desk/source/record_source.h"

namespace hangbook::desk {

PlugDialog::PlugDialog(Session& session, const exchange::HangName& hang, const exchange::Data& before,
                       QWidget* parent)
    : EditDialog(session, QStringLiteral("plugs"), parent), hang_(hang), before_(before),
      first_(exchange::plugTexts(hang, before)),
      table_(new PartTable(QStringLiteral("plugs"), tr("Plugs of the hang"), tr("&Add a plug"),
                           formFields(exchange::plugFields()), this)) {
  setObjectName(QStringLiteral("plugDialog"));
  setWindowTitle(tr("Plugs of %1, %2").arg(hang.show, hang.hang));
  table_->setNote(
      tr("A row for each end of a loom in a cabinet. Cabinet is its number in the stack, 1 at the "
         "bar, and type its type: where another stands there, the plug is not meant for it. Each end "
         "goes in once in a show; a channel needs its rack."));
  layOut(table_, tr("Nothing is computed with plugs: they are printed on the build sheet. What is not stated "
                    "stays the maker's data."));
  resize(1100, 560);
  table_->setRows(first_);
  connect(table_, &PartTable::changed, this, [this] { check(); });
  check();
}

bool PlugDialog::differs() const {
  return table_->rows() != first_;
}

void PlugDialog::check() {
  read_ = exchange::readPlugs(hang_, table_->rows(), before_);
  table_->setFaults(read_.faults);
  if (read_.faults.empty()) {
    judge({});
    return;
  }
  const exchange::FieldFault& first = read_.faults.front();
  judge(tr("Plug in row %1: %2. Fields to mend: %3.")
            .arg(QString::number(first.row + 1), faultWords(first), QString::number(read_.faults.size())));
}

void PlugDialog::save() {
  if (sending() || !read_.faults.empty()) {
    return;
  }
  const std::vector<QStringList> rows = table_->rows();
  setEffect(tr("%1 plugs before, %2 now.").arg(first_.size()).arg(rows.size()));
  send(
      tr("Saving …"),
      [source = session().source(), hang = hang_, rows, who = by()](Watch&) {
        recordsOf(*source).savePlugs(hang, rows, who);
        return true;
      },
      [this](bool) { accept(); });
}

} // namespace hangbook::desk
