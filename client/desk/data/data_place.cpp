// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/data_place.h"

#include <QLineEdit>
#include <QSplitter>

#include "desk/frame/place_names.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

DataPlace::DataPlace(Session& session, QWidget* parent)
    : Place(place::data, tr("Data"), parent), session_(session),
      recordPage_(new ListPage(QStringLiteral("recordList"), tr("Records"), records_,
                               static_cast<int>(RecordColumn::source), static_cast<int>(RecordColumn::kind),
                               Qt::AscendingOrder)),
      figurePage_(new ListPage(QStringLiteral("figureList"), tr("Figures of the record"), figures_,
                               static_cast<int>(FigureColumn::what), -1, Qt::AscendingOrder)) {
  recordPage_->setEmptyTexts(tr("No venues, makers' data or people yet. Import them as CSV files."),
                             tr("No record contains these words."));
  figurePage_->setEmptyTexts(tr("Select a record to see each of its figures with its source and date."),
                             tr("No figure contains these words."));
  auto* halves = new QSplitter(Qt::Horizontal, this);
  halves->setObjectName(QStringLiteral("dataHalves"));
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::wide);
  halves->addWidget(recordPage_);
  halves->addWidget(figurePage_);
  halves->setStretchFactor(0, 11);
  halves->setStretchFactor(1, 9);
  setContent(halves);
  connect(&session_, &Session::overviewChanged, this, &DataPlace::showFacts);
  connect(&session_, &Session::unitsChanged, this, [this] { figures_.setFigures(session_.figures()); });
  connect(recordPage_, &ListPage::currentRowChanged, this, &DataPlace::showRecord);
  showFacts();
}

QString DataPlace::explanation() const {
  return tr("Venues, makers' data, house rules and people. Select one to see each of its figures with where "
            "it came from "
            "and of which date. A figure that is not known is never taken as 0: the rules that need it stay "
            "unproven until it is entered.");
}

void DataPlace::showKey(const QString& key) {
  recordPage_->showKey(key);
}

void DataPlace::takeFocus() {
  recordPage_->table().setFocus();
}

void DataPlace::showFacts() {
  records_.setRows(recordsOf(session_.overview()));
  if (records_.rowCount() > 0) {
    recordPage_->table().selectRow(0);
  } else {
    figures_.setRows({});
  }
}

void DataPlace::showRecord(int row) {
  figures_.setRows(row < 0 ? std::vector<FigureLine>() : records_.at(row).figures);
}

} // namespace hangbook::desk
