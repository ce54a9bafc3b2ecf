// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/place.h"

#include <QHBoxLayout>
#include <QLabel>

#include "desk/style/scale.h"

namespace hangbook::desk {

Place::Place(const QString& name, const QString& title, QWidget* parent)
    : QWidget(parent), title_(title), titleLine_(new QHBoxLayout), all_(new QVBoxLayout(this)),
      note_(new QLabel(this)) {
  setObjectName(name);
  setAccessibleName(title);
  auto* head = new QLabel(title, this);
  head->setObjectName(name + QStringLiteral("Title"));
  head->setFont(fontFor(TextSize::title, font()));
  note_->setObjectName(name + QStringLiteral("Note"));
  note_->setForegroundRole(QPalette::PlaceholderText);
  titleLine_->setSpacing(space::step);
  titleLine_->addWidget(head);
  titleLine_->addSpacing(space::step);
  titleLine_->addStretch(1);
  titleLine_->addWidget(note_);
  all_->setContentsMargins(space::wide, space::step, space::wide, space::step);
  all_->setSpacing(space::step);
  all_->addLayout(titleLine_);
}

void Place::addToTitle(QWidget* widget, int stretch) {
  titleLine_->insertWidget(titleLine_->count() - 2, widget, stretch);
}

void Place::setNote(const QString& note) {
  note_->setText(note);
}

void Place::setContent(QWidget* content) {
  all_->addWidget(content, 1);
}

} // namespace hangbook::desk
