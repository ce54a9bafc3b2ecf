// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/place.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

/// A line that gives way to what stands before it: what has no room ends in dots and stands in the tooltip.
class NoteLabel : public QLabel {
public:
  using QLabel::QLabel;

  QSize minimumSizeHint() const override { return {0, QLabel::minimumSizeHint().height()}; }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    painter.drawText(rect(), Qt::AlignRight | Qt::AlignVCenter,
                     fontMetrics().elidedText(text(), Qt::ElideRight, width()));
  }
};

} // namespace

Place::Place(const QString& name, const QString& title, QWidget* parent)
    : QWidget(parent), title_(title), titleLine_(new QHBoxLayout), all_(new QVBoxLayout(this)),
      note_(new NoteLabel(this)) {
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
  titleLine_->addWidget(note_, 1);
  all_->setContentsMargins(space::wide, space::step, space::wide, space::step);
  all_->setSpacing(space::step);
  all_->addLayout(titleLine_);
}

void Place::addToTitle(QWidget* widget, int stretch) {
  titleLine_->insertWidget(titleLine_->count() - 1, widget, stretch);
}

void Place::setNote(const QString& note) {
  note_->setText(note);
  note_->setToolTip(note);
}

void Place::setContent(QWidget* content) {
  all_->addWidget(content, 1);
}

} // namespace hangbook::desk
