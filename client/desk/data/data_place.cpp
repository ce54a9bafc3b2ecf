// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/data_place.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

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
      edit_(new QPushButton(tr("&Edit the venue…"), this)), effect_(new QLabel(this)) {
  recordPage_->setEmptyTexts(tr("No venues, makers' data or people yet. Import them as CSV files."),
                             tr("No record contains these words."));
  figurePage_->setEmptyTexts(tr("Select a record to see each of its figures with its source and date."),
                             tr("No figure contains these words."));
  edit_->setObjectName(QStringLiteral("dataEdit"));
  edit_->setToolTip(tr("F2: change the selected venue's figures, points and bays"));
  recordPage_->addControl(edit_);
  effect_->setObjectName(QStringLiteral("dataEffect"));
  effect_->setAccessibleName(tr("What the last edit changed"));
  effect_->setWordWrap(true);
  effect_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  effect_->hide();
  auto* keys = new QShortcut(Qt::Key_F2, this);
  keys->setWhatsThis(tr("Edit the selected venue"));
  keys->setContext(Qt::WidgetWithChildrenShortcut);
  connect(keys, &QShortcut::activated, this, &DataPlace::editVenue);
  connect(edit_, &QPushButton::clicked, this, &DataPlace::editVenue);
  connect(&recordPage_->table(), &QTableView::activated, this, &DataPlace::editVenue);
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
  connect(&session_, &Session::overviewChanged, this, &DataPlace::showFacts);
  connect(&session_, &Session::unitsChanged, this, [this] { figures_.setFigures(session_.figures()); });
  connect(recordPage_, &ListPage::currentRowChanged, this, &DataPlace::showRecord);
  showFacts();
}

QString DataPlace::explanation() const {
  return tr("Venues, makers' data, house rules and people. Select one to see each of its figures with where "
            "it came from "
            "and of which date. A figure that is not known is never taken as 0: the rules that need it stay "
            "unproven until it is entered. F2 edits the selected venue: its figures, points and bays.");
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
  edit_->setEnabled(currentVenue() != nullptr);
}

const venue::Venue* DataPlace::currentVenue() const {
  const int row = recordPage_->currentRow();
  const bool isVenue = row >= 0 && row < records_.rowCount() && records_.at(row).kind == RecordKind::venue;
  return isVenue ? findVenue(session_.overview(), records_.at(row).name) : nullptr;
}

void DataPlace::editVenue() {
  const venue::Venue* venue = currentVenue();
  const auto* open = findChild<VenueDialog*>();
  if (venue == nullptr || (open != nullptr && open->isVisible())) {
    return;
  }
  auto* dialog = new VenueDialog(session_, *venue, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, name = venue->name] {
    effect_->setText(tr("%1 is saved. %2").arg(name, dialog->effect()));
    effect_->show();
    Q_EMIT session_.saved();
    session_.reload();
  });
  dialog->open();
}

} // namespace hangbook::desk
