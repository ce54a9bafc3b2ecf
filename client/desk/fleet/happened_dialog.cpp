// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/happened_dialog.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <QFileDialog>
#include <QHBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/name_box.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {

using fleet::OccurrenceKind;

HappenedDialog::HappenedDialog(const fleet::Unit& unit, QDate today, const QStringList& people,
                               const QString& atDesk, QWidget* parent)
    : QDialog(parent), unit_(unit), kind_(new QComboBox(this)), date_(new QDateEdit(today, this)),
      uses_(new QSpinBox(this)), hours_(new QDoubleSpinBox(this)), remark_(new QLineEdit(this)),
      file_(new QLineEdit(this)),
      by_(nameBox(QStringLiteral("happenedBy"), tr("Who records it"), people, atDesk, this)),
      follows_(new QLabel(this)),
      fileAsker_([this] { return QFileDialog::getOpenFileName(this, tr("Photograph or other file")); }) {
  setObjectName(QStringLiteral("happenedDialog"));
  setWindowTitle(tr("What happened to %1").arg(unit.serial));
  kind_->setObjectName(QStringLiteral("happenedKind"));
  kind_->setAccessibleName(tr("What happened"));
  for (const OccurrenceKind each :
       {OccurrenceKind::fault, OccurrenceKind::exceptional, OccurrenceKind::use, OccurrenceKind::assembly}) {
    kind_->addItem(wordOf(each), static_cast<int>(each));
  }
  date_->setObjectName(QStringLiteral("happenedDate"));
  date_->setAccessibleName(tr("Day"));
  date_->setCalendarPopup(true);
  date_->setDisplayFormat(QStringLiteral("yyyy-MM-dd")); // as the lists write it
  date_->setMaximumDate(today);
  uses_->setObjectName(QStringLiteral("happenedUses"));
  uses_->setAccessibleName(tr("How often"));
  uses_->setRange(0, 1000000);
  uses_->setSpecialValueText(tr("not counted"));
  hours_->setObjectName(QStringLiteral("happenedHours"));
  hours_->setAccessibleName(tr("How long"));
  hours_->setRange(0, 1e6);
  hours_->setDecimals(1);
  hours_->setSuffix(tr(" h"));
  hours_->setSpecialValueText(tr("not counted"));
  remark_->setObjectName(QStringLiteral("happenedRemark"));
  remark_->setAccessibleName(tr("In words"));
  file_->setObjectName(QStringLiteral("happenedFile"));
  file_->setAccessibleName(tr("Photograph or other file"));
  file_->setPlaceholderText(tr("May be left out"));
  auto* browse = new QPushButton(tr("…"), this);
  browse->setObjectName(QStringLiteral("happenedBrowse"));
  browse->setAccessibleName(tr("Look for the file"));
  browse->setAutoDefault(false);
  browse->setFixedWidth(browse->fontMetrics().height() * 2);
  auto* fileLine = new QHBoxLayout;
  fileLine->setSpacing(space::small);
  fileLine->addWidget(file_, 1);
  fileLine->addWidget(browse);
  connect(browse, &QPushButton::clicked, this, [this] {
    if (const QString name = fileAsker_(); !name.isEmpty()) {
      file_->setText(name);
    }
  });
  follows_->setObjectName(QStringLiteral("happenedFollows"));
  follows_->setWordWrap(true);
  auto* form = new QFormLayout;
  form->addRow(tr("&What"), kind_);
  form->addRow(tr("&Day"), date_);
  form->addRow(tr("&Times used"), uses_);
  form->addRow(tr("&Hours used"), hours_);
  form->addRow(tr("&In words"), remark_);
  form->addRow(tr("&Photograph"), fileLine);
  form->addRow(tr("&By"), by_);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(tr("Record it"), QDialogButtonBox::AcceptRole);
  accept_->setObjectName(QStringLiteral("happenedAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addLayout(form);
  all->addWidget(follows_);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 60);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(kind_, &QComboBox::currentIndexChanged, this, &HappenedDialog::check);
  connect(remark_, &QLineEdit::textChanged, this, &HappenedDialog::check);
  connect(uses_, &QSpinBox::valueChanged, this, &HappenedDialog::check);
  connect(hours_, &QDoubleSpinBox::valueChanged, this, &HappenedDialog::check);
  connect(by_, &QComboBox::editTextChanged, this, &HappenedDialog::check);
  check();
}

OccurrenceKind HappenedDialog::kind() const {
  return static_cast<OccurrenceKind>(kind_->currentData().toInt());
}

fleet::Occurrence HappenedDialog::occurrence() const {
  fleet::Occurrence fact;
  fact.serial = unit_.serial;
  fact.kind = kind();
  fact.date = date_->date();
  if (kind() == OccurrenceKind::use && uses_->value() > 0) {
    fact.uses = uses_->value();
  }
  if (kind() == OccurrenceKind::use && hours_->value() > 0.0) {
    fact.hours = hours_->value();
  }
  fact.place = unit_.place;
  fact.remark = remark_->text().trimmed();
  fact.by = by_->currentText().trimmed();
  return fact;
}

QStringList HappenedDialog::files() const {
  const QString name = file_->text().trimmed();
  return name.isEmpty() ? QStringList() : QStringList(name);
}

void HappenedDialog::check() {
  const bool use = kind() == OccurrenceKind::use;
  uses_->setEnabled(use);
  hours_->setEnabled(use);
  const bool remarkNeeded = kind() == OccurrenceKind::fault || kind() == OccurrenceKind::exceptional;
  remark_->setPlaceholderText(remarkNeeded ? tr("Needed: what was seen") : tr("May be left out"));
  switch (kind()) {
  case OccurrenceKind::fault:
    follows_->setText(
        tr("%1 is quarantined at once, and the shows that counted on it are named.").arg(unit_.serial));
    break;
  case OccurrenceKind::exceptional:
    follows_->setText(tr("Where a rule asks for an examination after such an event, one is due now."));
    break;
  case OccurrenceKind::use:
    follows_->setText(tr("Counts towards rules that count uses or hours."));
    break;
  case OccurrenceKind::assembly:
    follows_->setText(
        tr("Where a rule asks for an examination after assembly at a new site, one is due now."));
    break;
  }
  accept_->setEnabled(!by_->currentText().trimmed().isEmpty() &&
                      (!remarkNeeded || !remark_->text().trimmed().isEmpty()) &&
                      (!use || uses_->value() > 0 || hours_->value() > 0.0));
}

} // namespace hangbook::desk
