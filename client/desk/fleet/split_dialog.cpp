// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/split_dialog.h"

#include <algorithm>

#include <QLineEdit>
#include <QSpinBox>

namespace hangbook::desk {

SplitDialog::SplitDialog(const fleet::Unit& batch, const QStringList& people, const QString& atDesk,
                         QWidget* parent)
    : AskDialog(QStringLiteral("split"), tr("Split %1").arg(batch.serial),
                tr("%1 has %2 pieces of %3 at %4. What is split off has the same history: nothing falls due "
                   "later than before. Print a label for it.")
                    .arg(batch.serial)
                    .arg(fleet::piecesOf(batch))
                    .arg(batch.type, batch.place),
                tr("Split it"), parent),
      serial_(batch.serial), pieces_(new QSpinBox(this)) {
  pieces_->setRange(1, std::max(1, fleet::piecesOf(batch) - 1));
  addField(tr("&Pieces"), QStringLiteral("Pieces"), tr("How many pieces"), pieces_);
  newSerial_ = addNeeded(tr("&New serial"), QStringLiteral("Serial"), tr("Serial of the new batch"),
                         tr("Needed: its own serial"));
  addBy(tr("Who splits it"), people, atDesk);
}

SplitRequest SplitDialog::request() const {
  return {serial_, pieces_->value(), newSerial_->text().trimmed(), by()};
}

} // namespace hangbook::desk
