// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/work_line.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

constexpr int progressMilliseconds = 100;

} // namespace

WorkLine::WorkLine(const QString& name, const QString& again, QWidget* parent)
    : QWidget(parent), head_(new QLabel(this)), progress_(new QProgressBar(this)),
      cancel_(new QPushButton(tr("Cancel"), this)), again_(new QPushButton(again, this)) {
  head_->setObjectName(name + QStringLiteral("Head"));
  head_->setWordWrap(true);
  progress_->setObjectName(name + QStringLiteral("Progress"));
  progress_->setAccessibleName(tr("How far it is"));
  progress_->setRange(0, 100);
  progress_->setTextVisible(false);
  progress_->setFixedWidth(120);
  cancel_->setObjectName(name + QStringLiteral("Cancel"));
  again_->setObjectName(name + QStringLiteral("Again"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(space::step);
  line->addWidget(head_, 1);
  line->addWidget(progress_);
  line->addWidget(cancel_);
  line->addWidget(again_);
  timer_.setInterval(progressMilliseconds);
  connect(&timer_, &QTimer::timeout, this, [this] {
    if (watch_) {
      progress_->setValue(static_cast<int>(100.0 * watch_->progress()));
    }
  });
  connect(cancel_, &QPushButton::clicked, this, &WorkLine::cancelAsked);
  connect(again_, &QPushButton::clicked, this, &WorkLine::againAsked);
  tell({}, false, false);
}

void WorkLine::working(const QString& text, std::shared_ptr<Watch> watch) {
  watch_ = std::move(watch);
  progress_->setValue(0);
  timer_.start();
  tell(text, true, false);
}

void WorkLine::say(const QString& text) {
  tell(text, false, false);
}

void WorkLine::offerAgain(const QString& text) {
  const bool held = cancel_->hasFocus();
  tell(text, false, true);
  if (held) {
    again_->setFocus();
  }
}

void WorkLine::addControl(QWidget* control) {
  layout()->addWidget(control);
}

void WorkLine::tell(const QString& text, bool running, bool again) {
  if (!running) {
    watch_.reset();
    timer_.stop();
  }
  head_->setText(text);
  progress_->setVisible(running);
  cancel_->setVisible(running);
  again_->setVisible(again);
}

} // namespace hangbook::desk
