// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/happened_dialog.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include "desk/words/plain_words.h"

namespace hangbook::desk {

using fleet::OccurrenceKind;

HappenedDialog::HappenedDialog(const fleet::Unit& unit, QDate today, const QStringList& people,
                               const QString& atDesk, QWidget* parent)
    : AskDialog(QStringLiteral("happened"), tr("What happened to %1").arg(unit.serial), {}, tr("Record it"),
                parent),
      unit_(unit), kind_(new QComboBox(this)), date_(new QDateEdit(today, this)), uses_(new QSpinBox(this)),
      hours_(new QDoubleSpinBox(this)) {
  for (const OccurrenceKind each :
       {OccurrenceKind::fault, OccurrenceKind::exceptional, OccurrenceKind::use, OccurrenceKind::assembly}) {
    kind_->addItem(wordOf(each), static_cast<int>(each));
  }
  addField(tr("&What"), QStringLiteral("Kind"), tr("What happened"), kind_);
  addDay(today);
  addCounts();
  remark_ = addText(tr("&In words"), QStringLiteral("Remark"), tr("In words"), {});
  setFileAsker([this] { return QFileDialog::getOpenFileName(this, tr("Photograph or other file")); });
  file_ = addFile(tr("&Photograph"), tr("Photograph or other file"), tr("May be left out"),
                  tr("Look for the file"));
  addBy(tr("Who records it"), people, atDesk);
  follows_ = addWordsBelow({});
  follows_->setObjectName(QStringLiteral("happenedFollows"));
  connect(kind_, &QComboBox::currentIndexChanged, this, &HappenedDialog::fitKind);
  connect(uses_, &QSpinBox::valueChanged, this, &HappenedDialog::fitKind);
  connect(hours_, &QDoubleSpinBox::valueChanged, this, &HappenedDialog::fitKind);
  fitKind();
}

void HappenedDialog::addDay(QDate today) {
  date_->setCalendarPopup(true);
  date_->setDisplayFormat(QStringLiteral("yyyy-MM-dd")); // as the lists write it
  date_->setMaximumDate(today);
  addField(tr("&Day"), QStringLiteral("Date"), tr("Day"), date_);
}

void HappenedDialog::addCounts() {
  uses_->setRange(0, 1000000);
  uses_->setSpecialValueText(tr("not counted"));
  hours_->setRange(0, 1e6);
  hours_->setDecimals(1);
  hours_->setSuffix(tr(" h"));
  hours_->setSpecialValueText(tr("not counted"));
  addField(tr("&Times used"), QStringLiteral("Uses"), tr("How often"), uses_);
  addField(tr("&Hours used"), QStringLiteral("Hours"), tr("How long"), hours_);
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
  fact.by = by();
  return fact;
}

QStringList HappenedDialog::files() const {
  const QString name = file_->text().trimmed();
  return name.isEmpty() ? QStringList() : QStringList(name);
}

QString HappenedDialog::follows() const {
  switch (kind()) {
  case OccurrenceKind::fault:
    return tr("%1 is quarantined at once, and the shows that counted on it are named.").arg(unit_.serial);
  case OccurrenceKind::exceptional:
    return tr("Where a rule asks for an examination after such an event, one is due now.");
  case OccurrenceKind::use:
    return tr("Counts towards rules that count uses or hours.");
  case OccurrenceKind::assembly:
    return tr("Where a rule asks for an examination after assembly at a new site, one is due now.");
  }
  return {};
}

/// What is asked for, and what follows, is another matter for each kind of event.
void HappenedDialog::fitKind() {
  const bool use = kind() == OccurrenceKind::use;
  uses_->setEnabled(use);
  hours_->setEnabled(use);
  const bool needed = kind() == OccurrenceKind::fault || kind() == OccurrenceKind::exceptional;
  remark_->setPlaceholderText(needed ? tr("Needed: what was seen") : tr("May be left out"));
  setNeeded(remark_, needed);
  follows_->setText(follows());
  setReady(!use || uses_->value() > 0 || hours_->value() > 0.0);
}

} // namespace hangbook::desk
