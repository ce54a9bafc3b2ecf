// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/scan_task_form.h"

#include <algorithm>

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

#include "desk/style/scale.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

using Kind = actions::ScanTask::Kind;

/// Offers other words and keeps what stands in the field.
void offerIn(QComboBox& box, const QStringList& words) {
  const QString typed = box.currentText();
  const QSignalBlocker quiet(box);
  box.clear();
  box.addItems(words);
  box.setCurrentIndex(static_cast<int>(words.indexOf(typed)));
  if (box.isEditable()) {
    box.setEditText(typed);
  }
}

QComboBox* editableBox(const char* name, const QString& says, const QString& hint, QWidget* parent) {
  auto* box = new QComboBox(parent);
  box->setObjectName(QLatin1String(name));
  box->setAccessibleName(says);
  box->setEditable(true);
  box->setInsertPolicy(QComboBox::NoInsert);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(12);
  box->lineEdit()->setObjectName(QLatin1String(name) + QLatin1String("Text"));
  box->lineEdit()->setAccessibleName(says);
  box->lineEdit()->setPlaceholderText(hint);
  return box;
}

} // namespace

ScanTaskForm::ScanTaskForm(QWidget* parent)
    : QWidget(parent), kind_(new QComboBox(this)), target_(new QComboBox(this)),
      truck_(editableBox("scanTruck", tr("Truck"), tr("May be left out"), this)),
      from_(editableBox("scanFrom", tr("Where you stand"), tr("Where you stand; anywhere"), this)),
      by_(editableBox("scanBy", tr("Who scans"), tr("Name"), this)), form_(new QFormLayout(this)) {
  setObjectName(QStringLiteral("scanTask"));
  kind_->setObjectName(QStringLiteral("scanKind"));
  kind_->setAccessibleName(tr("What a scan does"));
  kind_->addItem(tr("Back into a place"), static_cast<int>(Kind::in));
  kind_->addItem(tr("Out to a show"), static_cast<int>(Kind::out));
  kind_->addItem(tr("Onto a cart"), static_cast<int>(Kind::ontoCart));
  kind_->addItem(tr("Into a truck"), static_cast<int>(Kind::ontoTruck));
  kind_->addItem(tr("To another place"), static_cast<int>(Kind::transfer));
  target_->setObjectName(QStringLiteral("scanTarget"));
  target_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  target_->setMinimumContentsLength(12);
  target_->setInsertPolicy(QComboBox::NoInsert);
  from_->setToolTip(tr("What is recorded somewhere else is then answered as a wrong place, and stays."));
  form_->setContentsMargins(0, 0, 0, 0);
  form_->setVerticalSpacing(space::small);
  form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  form_->addRow(tr("&What"), kind_);
  form_->addRow(tr("Wh&ere to"), target_);
  form_->addRow(tr("&Truck"), truck_);
  form_->addRow(tr("&From"), from_);
  form_->addRow(tr("&By"), by_);
  connect(kind_, &QComboBox::currentIndexChanged, this, [this] {
    target_->setEditText({});
    offer();
    Q_EMIT changed();
  });
  for (const QComboBox* each : {target_, truck_, from_, by_}) {
    connect(each, &QComboBox::currentTextChanged, this, &ScanTaskForm::changed);
  }
  offer();
}

void ScanTaskForm::setFacts(const Overview& overview) {
  shows_.clear();
  for (const calendar::Show& each : overview.shows) {
    const QDate over = each.awayTo.isValid() ? each.awayTo : each.to;
    if (!over.isValid() || over >= overview.today) {
      shows_.push_back(each);
    }
  }
  carts_ = overview.sums.carts;
  trucks_.clear();
  bays_.clear();
  places_.clear();
  QStringList people;
  for (const fleet::NamedPlace& each : overview.places) {
    (each.kind == fleet::PlaceKind::truck ? trucks_ : bays_) << each.name;
    places_ << each.name;
  }
  for (const QString& each : overview.sums.held) {
    if (!places_.contains(each)) {
      places_ << each;
      bays_ << each;
    }
  }
  for (const people::Person& each : overview.people) {
    people << each.name;
  }
  for (QStringList* each : {&trucks_, &bays_, &places_}) {
    each->sort();
  }
  offerIn(*truck_, trucks_);
  offerIn(*from_, places_);
  offerIn(*by_, people);
  if (by().isEmpty()) {
    by_->setEditText(overview.atDesk);
  }
  offer();
}

Kind ScanTaskForm::kind() const {
  return static_cast<Kind>(kind_->currentData().toInt());
}

void ScanTaskForm::offer() {
  QStringList words;
  switch (kind()) {
  case Kind::out:
    for (const calendar::Show& each : shows_) {
      words << tr("%1, %2").arg(each.name, dateText(each.from));
    }
    break;
  case Kind::in:
    words = bays_;
    break;
  case Kind::ontoCart:
    words = carts_;
    break;
  case Kind::ontoTruck:
    words = trucks_;
    break;
  case Kind::transfer:
    words = places_;
    break;
  }
  const bool out = kind() == Kind::out;
  {
    const QString typed = target_->currentText();
    target_->setEditable(!out);
    const QString says = out ? tr("Show") : kind() == Kind::ontoCart ? tr("Cart") : tr("Place");
    target_->setAccessibleName(says);
    if (!out) {
      target_->lineEdit()->setObjectName(QStringLiteral("scanTargetText"));
      target_->lineEdit()->setAccessibleName(says);
      target_->lineEdit()->setPlaceholderText(kind() == Kind::ontoCart ? tr("Serial of the cart")
                                                                       : tr("Its name"));
      target_->setEditText(typed);
    }
  }
  offerIn(*target_, words);
  if (out && target_->currentIndex() < 0 && !words.isEmpty()) {
    target_->setCurrentIndex(0); // the next show
  }
  truck_->setVisible(out);
  form_->labelForField(truck_)->setVisible(out);
}

QString ScanTaskForm::by() const {
  return by_->currentText().trimmed();
}

std::optional<actions::ScanTask> ScanTaskForm::task(QString& lacking) const {
  actions::ScanTask task;
  task.kind = kind();
  task.from = from_->currentText().trimmed();
  const QString target = target_->currentText().trimmed();
  if (by().isEmpty()) {
    lacking = tr("Say who scans first");
    return std::nullopt;
  }
  if (task.kind == Kind::out) {
    const int row = target_->currentIndex();
    if (row < 0 || row >= static_cast<int>(shows_.size())) {
      lacking = tr("Choose the show first");
      return std::nullopt;
    }
    task.show = shows_[static_cast<std::size_t>(row)];
    const QString truck = truck_->currentText().trimmed();
    task.place = !truck.isEmpty() ? truck : task.show->venue.isEmpty() ? task.show->name : task.show->venue;
    return task;
  }
  if (target.isEmpty()) {
    lacking = task.kind == Kind::ontoCart ? tr("Say which cart first") : tr("Say where to first");
    return std::nullopt;
  }
  (task.kind == Kind::ontoCart ? task.cart : task.place) = target;
  return task;
}

} // namespace hangbook::desk
