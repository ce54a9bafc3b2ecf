// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/show_chooser.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

#include "desk/style/scale.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {

ShowChooser::ShowChooser(const QString& name, Session& session, QWidget* parent)
    : QWidget(parent), session_(session), show_(new QComboBox(this)), hang_(new QComboBox(this)) {
  show_->setObjectName(name + QStringLiteral("Show"));
  show_->setAccessibleName(tr("Show"));
  show_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  show_->setMinimumContentsLength(38);
  show_->setMaxVisibleItems(20);
  hang_->setObjectName(name + QStringLiteral("Hang"));
  hang_->setAccessibleName(tr("Hang"));
  hang_->setMinimumContentsLength(7);
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(space::small);
  const auto add = [&](const QString& text, QWidget* field) {
    auto* label = new QLabel(text, this);
    label->setBuddy(field);
    line->addWidget(label);
    line->addWidget(field);
    line->addSpacing(space::small);
  };
  add(tr("&Show"), show_);
  add(tr("Han&g"), hang_);
  connect(show_, &QComboBox::activated, this, [this](int index) {
    if (index >= 0 && index < static_cast<int>(session_.overview().shows.size())) {
      const auto& chosen = session_.overview().shows[static_cast<std::size_t>(index)];
      session_.setShow({chosen.tour, chosen.name}, session_.hang());
    }
  });
  connect(hang_, &QComboBox::activated, this, [this] { session_.setHang(hang_->currentText()); });
  connect(&session_, &Session::overviewChanged, this, &ShowChooser::fill);
  connect(&session_, &Session::showChanged, this, &ShowChooser::follow);
  fill();
}

void ShowChooser::fill() {
  const QSignalBlocker quiet(show_);
  show_->clear();
  for (const calendar::Show& each : session_.overview().shows) {
    show_->addItem(dateText(each.from) + QStringLiteral("  ") + each.name + QStringLiteral(" · ") +
                   each.venue);
  }
  follow();
}

void ShowChooser::follow() {
  const QSignalBlocker quietShow(show_);
  const QSignalBlocker quietHang(hang_);
  const auto& shows = session_.overview().shows;
  hang_->clear();
  for (std::size_t i = 0; i < shows.size(); ++i) {
    if (ShowKey{shows[i].tour, shows[i].name} == session_.show()) {
      show_->setCurrentIndex(static_cast<int>(i));
      for (const calendar::Hang& each : shows[i].hangs) {
        hang_->addItem(each.name);
      }
    }
  }
  hang_->setCurrentText(session_.hang());
  show_->setEnabled(!shows.empty());
  hang_->setEnabled(hang_->count() > 0);
}

} // namespace hangbook::desk
