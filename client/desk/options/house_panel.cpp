// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/house_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/words/name_box.h"
#include "desk/words/typed_figures.h"

namespace hangbook::desk {

HousePanel::HousePanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), table_(new QTableView(this)), place_(new QComboBox(this)),
      value_(new QLineEdit(this)), unit_(new QLabel(this)), because_(new QLineEdit(this)),
      by_(nameBox(QStringLiteral("houseBy"), tr("Who signs"), {}, {}, this)),
      try_(new QPushButton(tr("What would it change?"), this)), sign_(new QPushButton(tr("Si&gn it"), this)),
      withdraw_(new QPushButton(tr("Withdraw it"), this)), effect_(new QLabel(this)) {
  setObjectName(QStringLiteral("house"));
  layOut();
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &HousePanel::showLine);
  connect(place_, &QComboBox::currentIndexChanged, this, &HousePanel::check);
  connect(value_, &QLineEdit::textChanged, this, &HousePanel::check);
  connect(because_, &QLineEdit::textChanged, this, &HousePanel::check);
  connect(by_, &QComboBox::editTextChanged, this, &HousePanel::check);
  connect(try_, &QPushButton::clicked, this, [this] { send(false, true); });
  connect(sign_, &QPushButton::clicked, this, [this] { send(false, false); });
  connect(withdraw_, &QPushButton::clicked, this, [this] { send(true, false); });
  connect(&session_, &Session::unitsChanged, this, [this] {
    model_.setFigures(session_.figures());
    showLine(); // what was typed may have been meant in the other unit
  });
  connect(&session_, &Session::overviewChanged, this, [this] {
    const QString kept = by_->currentText();
    by_->clear();
    for (const people::Person& each : session_.overview().people) {
      by_->addItem(each.name);
    }
    by_->setEditText(kept.isEmpty() ? session_.overview().atDesk : kept);
  });
  setSnapshot({});
}

void HousePanel::layOut() {
  table_->setObjectName(QStringLiteral("houseTable"));
  table_->setAccessibleName(tr("House rules as they stand for this show"));
  table_->setModel(&model_);
  prepareTable(*table_, model_, static_cast<int>(HouseColumn::what));
  table_->verticalHeader()->setDefaultSectionSize(QFontMetrics(font()).height() + 2);
  place_->setObjectName(QStringLiteral("housePlace"));
  place_->setAccessibleName(tr("For which it counts"));
  place_->addItem(tr("this tour"));
  place_->addItem(tr("this venue"));
  place_->addItem(tr("this show"));
  value_->setObjectName(QStringLiteral("houseValue"));
  value_->setAccessibleName(tr("Its value"));
  value_->setPlaceholderText(tr("Value"));
  value_->setMaximumWidth(90);
  because_->setObjectName(QStringLiteral("houseBecause"));
  because_->setAccessibleName(tr("Why"));
  because_->setPlaceholderText(tr("Needed: why"));
  try_->setObjectName(QStringLiteral("houseTry"));
  sign_->setObjectName(QStringLiteral("houseSign"));
  withdraw_->setObjectName(QStringLiteral("houseWithdraw"));
  withdraw_->setToolTip(tr("Takes every statement of this figure off that place's list"));
  effect_->setObjectName(QStringLiteral("houseEffect"));
  effect_->setAccessibleName(tr("What it changes"));
  effect_->setWordWrap(true);
  effect_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* line = new QHBoxLayout;
  line->setSpacing(space::small);
  line->addWidget(place_);
  line->addWidget(value_);
  line->addWidget(unit_);
  line->addWidget(because_, 1);
  line->addWidget(by_);
  line->addWidget(try_);
  line->addWidget(sign_);
  line->addWidget(withdraw_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addWidget(table_, 1);
  all->addLayout(line);
  all->addWidget(effect_);
}

void HousePanel::setSnapshot(std::shared_ptr<const options::Snapshot> snapshot) {
  const int row = table_->currentIndex().row();
  const QString said = effect_->text();
  const QString kept = row >= 0 && row < model_.rowCount() ? model_.at(row).kind.id : QString();
  snapshot_ = std::move(snapshot);
  model_.setRows(snapshot_ ? houseLines(*snapshot_) : std::vector<HouseLine>());
  for (int i = 0; i < model_.rowCount(); ++i) {
    if (i == 0 || model_.at(i).kind.id == kept) {
      table_->setCurrentIndex(model_.index(i, 0));
    }
  }
  const int now = table_->currentIndex().row();
  if (!said.isEmpty() && now >= 0 && model_.at(now).kind.id == kept) {
    effect_->setText(said); // what the last change did is still to be read
  }
  check();
}

void HousePanel::showLine() {
  const int row = table_->currentIndex().row();
  const bool has = row >= 0 && row < model_.rowCount();
  value_->clear();
  because_->clear();
  effect_->setText(has ? model_.at(row).kind.what : QString());
  unit_->setText(has ? houseUnit(model_.at(row).kind.unit, session_.figures().system()) : QString());
  check();
}

std::optional<double> HousePanel::typed() const {
  const int row = table_->currentIndex().row();
  return row < 0 || row >= model_.rowCount()
             ? std::nullopt
             : houseFigureTyped(value_->text(), model_.at(row).kind.unit, session_.figures().system());
}

options::HouseSite HousePanel::site() const {
  switch (place_->currentIndex()) {
  case 0:
    return {options::HousePlace::tour, {}, snapshot_->tour.name};
  case 1:
    return {options::HousePlace::venue, {}, snapshot_->venue.name};
  default:
    return {options::HousePlace::show, snapshot_->show.tour, snapshot_->show.name};
  }
}

void HousePanel::check() {
  const int row = table_->currentIndex().row();
  const bool has = snapshot_ && !sending_ && row >= 0 && row < model_.rowCount();
  const bool whole = has && typed() && !because_->text().trimmed().isEmpty();
  const bool named = !by_->currentText().trimmed().isEmpty();
  try_->setEnabled(whole);
  sign_->setEnabled(whole && named);
  withdraw_->setEnabled(has && named && !model_.at(row).places.isEmpty());
}

void HousePanel::send(bool withdraw, bool dryRun) {
  const int row = table_->currentIndex().row();
  if (!snapshot_ || row < 0) {
    return;
  }
  HouseWish wish{site(),
                 model_.at(row).kind.id,
                 withdraw ? std::nullopt : typed(),
                 because_->text().simplified(),
                 by_->currentText().simplified(),
                 dryRun};
  sending_ = true;
  check();
  effect_->setText(tr("Judging every chosen option that it counts for …"));
  session_.work().start(
      this, [source = session_.source(), wish](Watch&) { return planningOf(*source).changeHouse(wish); },
      [this, dryRun](const options::HouseEffect& effect) {
        sending_ = false;
        if (!dryRun) {
          value_->clear();
          because_->clear();
        }
        effect_->setText(session_.figures().sentence(effectWords(effect, dryRun)));
        check();
        if (!dryRun) {
          Q_EMIT session_.saved();
          session_.reload();
        }
      },
      [this](const std::exception_ptr& what) {
        sending_ = false;
        effect_->setText(wordsFor(what, tr("Nothing was changed.")));
        check();
      });
}

} // namespace hangbook::desk
