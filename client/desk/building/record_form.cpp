// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/record_form.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/name_box.h"
#include "quantity/text.h"

namespace hangbook::desk {
namespace {

NumberForm numberForm() {
  return {QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.'};
}

/// Nothing typed: none. Throws QuantityError where it cannot be read.
std::optional<Angle> readAngle(const QString& text) {
  const std::string plain = text.trimmed().toStdString();
  return plain.empty() ? std::nullopt : std::optional(parse<Angle>(plain, "°", numberForm()));
}

} // namespace

RecordForm::RecordForm(QWidget* parent)
    : QWidget(parent), mark_(new QSpinBox(this)), measured_(new QLineEdit(this)), chain_(new QLineEdit(this)),
      weather_(new QLineEdit(this)),
      by_(nameBox(QStringLiteral("recordBy"), tr("Who used it"), {}, {}, this)), note_(new QLabel(this)),
      record_(new QPushButton(tr("&Record it"), this)) {
  setObjectName(QStringLiteral("recordForm"));
  mark_->setObjectName(QStringLiteral("recordMark"));
  measured_->setObjectName(QStringLiteral("recordMeasured"));
  chain_->setObjectName(QStringLiteral("recordChain"));
  weather_->setObjectName(QStringLiteral("recordWeather"));
  note_->setObjectName(QStringLiteral("recordNote"));
  record_->setObjectName(QStringLiteral("recordButton"));
  mark_->setAccessibleName(tr("Mark that was used"));
  measured_->setAccessibleName(tr("Measured angle"));
  chain_->setAccessibleName(tr("Serial of the chain"));
  weather_->setAccessibleName(tr("Weather"));
  mark_->setRange(0, 100000);
  mark_->setSpecialValueText(tr("none yet"));
  measured_->setPlaceholderText(tr("May be left out, such as -7.5°"));
  chain_->setPlaceholderText(tr("May be left out"));
  weather_->setPlaceholderText(tr("May be left out"));
  note_->setWordWrap(true);
  note_->setForegroundRole(QPalette::PlaceholderText);

  auto* form = new QFormLayout;
  form->setVerticalSpacing(space::small);
  form->addRow(tr("Mar&k used"), mark_);
  form->addRow(tr("&Joint angle measured"), measured_);
  form->addRow(tr("&Chain serial"), chain_);
  form->addRow(tr("&Weather"), weather_);
  form->addRow(tr("B&y"), by_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addLayout(form);
  all->addWidget(note_);
  all->addWidget(record_, 0, Qt::AlignRight);

  connect(mark_, &QSpinBox::valueChanged, this, &RecordForm::check);
  connect(measured_, &QLineEdit::textChanged, this, &RecordForm::check);
  connect(by_, &QComboBox::editTextChanged, this, &RecordForm::check);
  connect(record_, &QPushButton::clicked, this, &RecordForm::recordAsked);
  check();
}

void RecordForm::setPeople(const std::vector<people::Person>& people) {
  const QString typed = by_->currentText();
  by_->clear();
  for (const people::Person& each : people) {
    by_->addItem(each.name);
  }
  by_->setCurrentIndex(-1);
  by_->setEditText(typed);
}

void RecordForm::setComputed(std::optional<int> mark) {
  has_ = mark.has_value();
  mark_->setValue(mark.value_or(0));
  check();
}

marks::MarkUsed RecordForm::typed() const {
  marks::MarkUsed used;
  used.mark = mark_->value();
  used.measured = readAngle(measured_->text());
  used.chainSerial = chain_->text().trimmed();
  used.weather = weather_->text().trimmed();
  used.by = by_->currentText().trimmed();
  return used;
}

void RecordForm::clearTyped() {
  measured_->clear();
  chain_->clear();
  weather_->clear();
}

void RecordForm::check() {
  QString note;
  if (!has_) {
    note = tr("There is no chain mark to record here.");
  } else {
    try {
      readAngle(measured_->text());
    } catch (const QuantityError& error) {
      note = QString::fromUtf8(error.what());
    }
  }
  note_->setText(note);
  note_->setVisible(!note.isEmpty());
  const bool ready = note.isEmpty() && mark_->value() > 0 && !by_->currentText().trimmed().isEmpty();
  for (QWidget* each : std::initializer_list<QWidget*>{mark_, measured_, chain_, weather_, by_}) {
    each->setEnabled(has_);
  }
  record_->setEnabled(ready);
}

} // namespace hangbook::desk
