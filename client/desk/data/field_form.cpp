// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/field_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

FieldForm::FieldForm(const QString& prefix, std::vector<FormField> fields, const QStringList& texts,
                     QWidget* parent)
    : QWidget(parent), fields_(std::move(fields)) {
  setObjectName(prefix + QStringLiteral("Form"));
  auto* grid = new QGridLayout(this);
  grid->setHorizontalSpacing(space::step);
  grid->setVerticalSpacing(space::small);
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const FormField& each = fields_[i];
    auto* label = new QLabel(each.title, this);
    auto* edit = new QLineEdit(texts.value(static_cast<qsizetype>(i)), this);
    edit->setObjectName(prefix + QLatin1Char('_') +
                        QString(each.name).replace(QLatin1Char(' '), QLatin1Char('_')));
    edit->setAccessibleName(each.title);
    edit->setToolTip(each.hint);
    edit->setPlaceholderText(tr("not known"));
    edit->setReadOnly(each.fixed);
    edit->setEnabled(!each.fixed);
    edit->setCursorPosition(0);
    label->setBuddy(edit);
    auto* wrong = new QLabel(this);
    wrong->setObjectName(edit->objectName() + QStringLiteral("_wrong"));
    wrong->setWordWrap(true);
    QPalette colours = wrong->palette();
    colours.setColor(QPalette::WindowText, coloursOf(palette()).fails);
    wrong->setPalette(colours);
    wrong->hide(); // takes a row of its own only where something is wrong
    const int row = 2 * static_cast<int>(i);
    grid->addWidget(label, row, 0);
    grid->addWidget(edit, row, 1);
    grid->addWidget(wrong, row + 1, 1);
    connect(edit, &QLineEdit::textChanged, this, &FieldForm::changed);
    edits_.push_back(edit);
    wrong_.push_back(wrong);
  }
  grid->setColumnStretch(1, 1);
  grid->setRowStretch(2 * static_cast<int>(fields_.size()), 1);
}

QStringList FieldForm::texts() const {
  QStringList texts;
  for (const QLineEdit* edit : edits_) {
    texts << edit->text().trimmed();
  }
  return texts;
}

void FieldForm::setFaults(const std::vector<exchange::FieldFault>& faults) {
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const QString here = faultsOf(faults, 0, fields_[i].name);
    wrong_[i]->setText(here);
    wrong_[i]->setVisible(!here.isEmpty());
    edits_[i]->setAccessibleDescription(here.isEmpty() ? fields_[i].hint : here);
  }
}

QWidget* scrolled(FieldForm* form, QWidget* parent) {
  auto* scroll = new QScrollArea(parent);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(form);
  return scroll;
}

} // namespace hangbook::desk
