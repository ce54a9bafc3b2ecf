// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/split_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/name_box.h"

namespace hangbook::desk {

SplitDialog::SplitDialog(const fleet::Unit& batch, const QStringList& people, const QString& atDesk,
                         QWidget* parent)
    : QDialog(parent), serial_(batch.serial), pieces_(new QSpinBox(this)), newSerial_(new QLineEdit(this)),
      by_(nameBox(QStringLiteral("splitBy"), tr("Who splits it"), people, atDesk, this)) {
  setObjectName(QStringLiteral("splitDialog"));
  setWindowTitle(tr("Split %1").arg(batch.serial));
  const int pieces = fleet::piecesOf(batch);
  pieces_->setObjectName(QStringLiteral("splitPieces"));
  pieces_->setAccessibleName(tr("How many pieces"));
  pieces_->setRange(1, std::max(1, pieces - 1));
  newSerial_->setObjectName(QStringLiteral("splitSerial"));
  newSerial_->setAccessibleName(tr("Serial of the new batch"));
  newSerial_->setPlaceholderText(tr("Needed: its own serial"));
  auto* says =
      new QLabel(tr("%1 has %2 pieces of %3 at %4. What is split off has the same history: nothing falls due "
                    "later than before. Print a label for it.")
                     .arg(batch.serial)
                     .arg(pieces)
                     .arg(batch.type, batch.place),
                 this);
  says->setWordWrap(true);
  auto* form = new QFormLayout;
  form->addRow(tr("&Pieces"), pieces_);
  form->addRow(tr("&New serial"), newSerial_);
  form->addRow(tr("&By"), by_);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(tr("Split it"), QDialogButtonBox::AcceptRole);
  accept_->setObjectName(QStringLiteral("splitAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(says);
  all->addLayout(form);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 60);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(newSerial_, &QLineEdit::textChanged, this, &SplitDialog::check);
  connect(by_, &QComboBox::editTextChanged, this, &SplitDialog::check);
  check();
}

SplitRequest SplitDialog::request() const {
  return {serial_, pieces_->value(), newSerial_->text().trimmed(), by_->currentText().trimmed()};
}

void SplitDialog::check() {
  accept_->setEnabled(!newSerial_->text().trimmed().isEmpty() && !by_->currentText().trimmed().isEmpty());
}

} // namespace hangbook::desk
