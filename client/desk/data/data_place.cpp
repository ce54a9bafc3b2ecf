// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/data_place.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include "desk/data/record_dialog.h"
#include "desk/data/venue_dialog.h"
#include "desk/frame/place_names.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

DataPlace::DataPlace(Session& session, QWidget* parent)
    : Place(place::data, tr("Data"), parent), session_(session),
      recordPage_(new ListPage(QStringLiteral("recordList"), tr("Records"), records_,
                               static_cast<int>(RecordColumn::source), static_cast<int>(RecordColumn::kind),
                               Qt::AscendingOrder)),
      figurePage_(new ListPage(QStringLiteral("figureList"), tr("Figures of the record"), figures_,
                               static_cast<int>(FigureColumn::what), -1, Qt::AscendingOrder)),
      edit_(new QPushButton(tr("&Edit it…"), this)), effect_(new QLabel(this)) {
  recordPage_->setEmptyTexts(tr("No venues, makers' data or people yet. Import them as CSV files."),
                             tr("No record contains these words."));
  figurePage_->setEmptyTexts(tr("Select a record to see each of its figures with its source and date."),
                             tr("No figure contains these words."));
  edit_->setObjectName(QStringLiteral("dataEdit"));
  edit_->setToolTip(tr("F2: change the selected record's figures, a venue's points and bays too"));
  recordPage_->addControl(edit_);
  effect_->setObjectName(QStringLiteral("dataEffect"));
  effect_->setAccessibleName(tr("What the last edit changed"));
  effect_->setWordWrap(true);
  effect_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  effect_->hide();
  auto* keys = new QShortcut(Qt::Key_F2, this);
  keys->setWhatsThis(tr("Edit the selected record"));
  keys->setContext(Qt::WidgetWithChildrenShortcut);
  connect(keys, &QShortcut::activated, this, &DataPlace::edit);
  connect(edit_, &QPushButton::clicked, this, &DataPlace::edit);
  connect(&recordPage_->table(), &QTableView::activated, this, &DataPlace::edit);
  auto* halves = new QSplitter(Qt::Horizontal, this);
  halves->setObjectName(QStringLiteral("dataHalves"));
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::wide);
  halves->addWidget(recordPage_);
  halves->addWidget(figurePage_);
  halves->setStretchFactor(0, 11);
  halves->setStretchFactor(1, 9);
  auto* content = new QWidget(this);
  auto* column = new QVBoxLayout(content);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::step);
  column->addWidget(halves, 1);
  column->addWidget(effect_);
  setContent(content);
  session_.keepUp(this, [this] { showFacts(); });
  connect(&session_, &Session::unitsChanged, this, [this] { figures_.setFigures(session_.figures()); });
  connect(recordPage_, &ListPage::currentRowChanged, this, &DataPlace::showRecord);
  showFacts();
}

QString DataPlace::explanation() const {
  return tr(
      "Venues, makers' data, house rules and people. Select one to see each of its figures with where "
      "it came from "
      "and of which date. A figure that is not known is never taken as 0: the rules that need it stay "
      "unproven until it is entered. F2 edits the selected record; of a venue its points and bays too.");
}

void DataPlace::showKey(const QString& key) {
  recordPage_->showKey(key);
}

void DataPlace::takeFocus() {
  recordPage_->table().setFocus();
}

void DataPlace::showFacts() {
  const int before = recordPage_->currentRow();
  const QString kept = before >= 0 && before < records_.rowCount() ? records_.at(before).name : QString();
  records_.setRows(recordsOf(session_.overview()));
  if (!kept.isEmpty() && recordPage_->select(kept)) {
    showRecord(recordPage_->currentRow());
  } else if (records_.rowCount() > 0) {
    recordPage_->table().selectRow(0);
  } else {
    showRecord(-1);
  }
}

void DataPlace::showRecord(int row) {
  figures_.setRows(row < 0 ? std::vector<FigureLine>() : records_.at(row).figures);
  edit_->setEnabled(currentVenue() != nullptr || currentRecord().has_value());
}

const venue::Venue* DataPlace::currentVenue() const {
  const int row = recordPage_->currentRow();
  const bool isVenue = row >= 0 && row < records_.rowCount() && records_.at(row).kind == RecordKind::venue;
  return isVenue ? findVenue(session_.overview(), records_.at(row).name) : nullptr;
}

std::optional<exchange::RecordName> DataPlace::currentRecord() const {
  const int row = recordPage_->currentRow();
  if (row < 0 || row >= records_.rowCount()) {
    return std::nullopt;
  }
  using exchange::Kind;
  const QString& name = records_.at(row).name;
  switch (records_.at(row).kind) {
  case RecordKind::cabinet:
    return exchange::RecordName{Kind::types, QStringLiteral("cabinet"), name};
  case RecordKind::bar:
    return exchange::RecordName{Kind::types, QStringLiteral("bar"), name};
  case RecordKind::hoist:
    return exchange::RecordName{Kind::types, QStringLiteral("hoist"), name};
  case RecordKind::chain:
    return exchange::RecordName{Kind::types, QStringLiteral("chain"), name};
  case RecordKind::hardware:
    return exchange::RecordName{Kind::types, QStringLiteral("hardware"), name};
  case RecordKind::cart:
    return exchange::RecordName{Kind::types, QStringLiteral("cart"), name};
  case RecordKind::table:
    return exchange::RecordName{Kind::types, QStringLiteral("table"), name};
  case RecordKind::person:
    return exchange::RecordName{Kind::people, QStringLiteral("person"), name};
  case RecordKind::venue:
  case RecordKind::house:
    break;
  }
  return std::nullopt;
}

template <class Dialog>
void DataPlace::open(Dialog* dialog, const QString& name) {
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, name] {
    effect_->setText(tr("%1 is saved. %2").arg(name, dialog->effect()));
    effect_->show();
    Q_EMIT session_.saved();
    session_.reload();
  });
  dialog->open();
}

void DataPlace::edit() {
  for (const QDialog* open : findChildren<QDialog*>()) {
    if (open->isVisible()) {
      return;
    }
  }
  if (const venue::Venue* venue = currentVenue()) {
    open(new VenueDialog(session_, *venue, this), venue->name);
  } else if (const auto record = currentRecord()) {
    open(new RecordDialog(session_, *record, this), record->name);
  }
}

} // namespace hangbook::desk
