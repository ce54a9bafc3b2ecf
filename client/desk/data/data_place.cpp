// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/data_place.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include "desk/data/plug_dialog.h"
#include "desk/data/record_dialog.h"
#include "desk/data/remove_dialog.h"
#include "desk/data/venue_dialog.h"
#include "desk/frame/place_names.h"
#include "desk/source/record_source.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

DataPlace::DataPlace(Session& session, QWidget* parent)
    : Place(place::data, tr("Data"), parent), session_(session),
      recordPage_(new ListPage(QStringLiteral("recordList"), tr("Records"), records_,
                               static_cast<int>(RecordColumn::source), static_cast<int>(RecordColumn::kind),
                               Qt::AscendingOrder)),
      figurePage_(new ListPage(QStringLiteral("figureList"), tr("Figures of the record"), figures_,
                               static_cast<int>(FigureColumn::what), -1, Qt::AscendingOrder)),
      edit_(new QPushButton(tr("&Edit it…"), this)), new_(new QPushButton(tr("&New"), this)),
      remove_(new QPushButton(tr("Re&move…"), this)), effect_(new QLabel(this)) {
  recordPage_->setEmptyTexts(tr("No venues, makers' data or people yet. Import them as CSV files."),
                             tr("No record contains these words."));
  figurePage_->setEmptyTexts(tr("Select a record to see each of its figures with its source and date."),
                             tr("No figure contains these words."));
  edit_->setObjectName(QStringLiteral("dataEdit"));
  edit_->setToolTip(tr(
      "F2: change the selected record's figures, a venue's points and seats, a stacking table's joints too"));
  recordPage_->addControl(edit_);
  new_->setObjectName(QStringLiteral("dataNew"));
  new_->setToolTip(tr("Insert: a new record, empty or as a copy of the selected one"));
  new_->setMenu(new QMenu(new_));
  new_->menu()->setObjectName(QStringLiteral("dataNewMenu"));
  connect(new_->menu(), &QMenu::aboutToShow, this, &DataPlace::fillNew);
  recordPage_->addControl(new_);
  remove_->setObjectName(QStringLiteral("dataRemove"));
  remove_->setToolTip(tr("Delete: take the selected record out, where nothing names it"));
  connect(remove_, &QPushButton::clicked, this, &DataPlace::remove);
  recordPage_->addControl(remove_);
  effect_->setObjectName(QStringLiteral("dataEffect"));
  effect_->setAccessibleName(tr("What the last edit changed"));
  effect_->setWordWrap(true);
  effect_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  effect_->hide();
  auto* keys = new QShortcut(Qt::Key_F2, this);
  keys->setWhatsThis(tr("Edit the selected record"));
  keys->setContext(Qt::WidgetWithChildrenShortcut);
  connect(keys, &QShortcut::activated, this, &DataPlace::edit);
  auto* addKey = new QShortcut(Qt::Key_Insert, this);
  addKey->setWhatsThis(tr("Add a record"));
  addKey->setContext(Qt::WidgetWithChildrenShortcut);
  connect(addKey, &QShortcut::activated, new_, &QPushButton::showMenu);
  auto* removeKey = new QShortcut(Qt::Key_Delete, &recordPage_->table());
  removeKey->setWhatsThis(tr("Remove the selected record"));
  removeKey->setContext(Qt::WidgetShortcut); // in a text it deletes a letter
  connect(removeKey, &QShortcut::activated, this, &DataPlace::remove);
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
  halves->setSizes({1100, 900}); // in that ratio; else the list with more buttons would begin wider
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
  return tr("Venues, makers' data, house rules and people. Select one to see each of its figures with where "
            "it came from "
            "and of which date. A figure that is not known is never taken as 0: the rules that need it stay "
            "unproven until it is entered. F2 edits the selected record with its parts: a venue's points and "
            "seats, a "
            "stacking table's joints. Insert adds a record, Delete takes one out that nothing names.");
}

void DataPlace::showKey(const QString& key) {
  recordPage_->showKey(key);
}

void DataPlace::takeFocus() {
  recordPage_->table().setFocus();
}

void DataPlace::showFacts() {
  const int before = recordPage_->currentRow();
  QString kept = before >= 0 && before < records_.rowCount() ? records_.at(before).name : QString();
  records_.setRows(recordsOf(session_.overview()));
  if (!wanted_.isEmpty()) {
    kept = std::exchange(wanted_, QString());
  }
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
  edit_->setEnabled(currentRecord().has_value() || (row >= 0 && records_.at(row).kind == RecordKind::plugs));
  remove_->setEnabled(currentRecord().has_value());
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
  case RecordKind::connector:
    return exchange::RecordName{Kind::types, QStringLiteral("connector"), name};
  case RecordKind::venue:
    return exchange::RecordName{Kind::venues, QStringLiteral("venue"), name};
  case RecordKind::house:
  case RecordKind::plugs:
    break;
  }
  return std::nullopt;
}

bool DataPlace::dialogIsOpen() const {
  const auto dialogs = findChildren<QDialog*>();
  return std::ranges::any_of(dialogs, [](const QDialog* each) { return each->isVisible(); });
}

void DataPlace::tell(const QString& words) {
  effect_->setText(words);
  effect_->show();
}

void DataPlace::afterSaving(const QString& name, const QString& effect) {
  tell(tr("%1 is saved. %2").arg(name, effect).trimmed());
  wanted_ = name;
  Q_EMIT session_.saved();
  session_.reload();
}

void DataPlace::edit() {
  if (dialogIsOpen()) {
    return;
  }
  EditDialog* dialog = nullptr;
  const auto record = currentRecord();
  if (const venue::Venue* venue = currentVenue()) {
    dialog = new VenueDialog(session_, *venue, this);
  } else if (record) {
    dialog = new RecordDialog(session_, *record, this);
  } else if (const int row = recordPage_->currentRow();
             row >= 0 && row < records_.rowCount() && records_.at(row).kind == RecordKind::plugs) {
    editPlugs(records_.at(row).hang);
    return;
  } else {
    return;
  }
  open(dialog, record->name);
}

void DataPlace::open(EditDialog* dialog, const QString& name) {
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, name] { afterSaving(name, dialog->effect()); });
  dialog->open();
}

void DataPlace::editPlugs(const exchange::HangName& hang) {
  session_.work().start(
      this, [source = session_.source(), hang](Watch&) { return recordsOf(*source).plugData(hang); },
      [this, hang](const exchange::Data& against) {
        if (!dialogIsOpen()) {
          open(new PlugDialog(session_, hang, against, this),
               QStringLiteral("%1, %2").arg(hang.show, hang.hang));
        }
      },
      [this](const std::exception_ptr& what) { tell(wordsFor(what, tr("The plugs were not read."))); });
}

void DataPlace::fillNew() {
  QMenu& menu = *new_->menu();
  menu.clear();
  const auto record = currentRecord();
  QAction* copy =
      menu.addAction(record ? tr("&Copy of %1…").arg(record->name) : tr("&Copy of the selected one…"));
  copy->setObjectName(QStringLiteral("newCopy"));
  copy->setEnabled(record && record->sort != QLatin1String("venue"));
  if (record) {
    connect(copy, &QAction::triggered, this,
            [this, record = *record] { addNew(record.kind, record.sort, true); });
  }
  menu.addSeparator();
  using exchange::Kind;
  for (const auto& [kind, sort, of] : {std::tuple{Kind::venues, "venue", RecordKind::venue},
                                       {Kind::types, "cabinet", RecordKind::cabinet},
                                       {Kind::types, "bar", RecordKind::bar},
                                       {Kind::types, "hoist", RecordKind::hoist},
                                       {Kind::types, "chain", RecordKind::chain},
                                       {Kind::types, "hardware", RecordKind::hardware},
                                       {Kind::types, "cart", RecordKind::cart},
                                       {Kind::types, "table", RecordKind::table},
                                       {Kind::types, "connector", RecordKind::connector},
                                       {Kind::people, "person", RecordKind::person}}) {
    QAction* each = menu.addAction(tr("New: %1…").arg(wordOf(of)));
    const QString word = QString::fromLatin1(sort);
    each->setObjectName(QStringLiteral("new_") + word);
    connect(each, &QAction::triggered, this, [this, kind = kind, word] { addNew(kind, word, false); });
  }
}

void DataPlace::addNew(exchange::Kind kind, const QString& sort, bool copy) {
  if (dialogIsOpen()) {
    return;
  }
  exchange::RecordText start;
  const auto record = currentRecord();
  if (copy && record) {
    start = exchange::recordText(*record, recordData(session_.overview()));
    const auto fields = exchange::fieldsOf(kind, sort);
    for (std::size_t i = 0; i < fields.size(); ++i) {
      // Another thing has a name of its own, and its figures stand in another leaflet.
      if (fields[i].own || fields[i].name.startsWith(QLatin1String("source"))) {
        start.own[static_cast<qsizetype>(i)].clear();
      }
    }
  }
  auto* dialog = new RecordDialog(session_, {kind, sort, {}}, this, start);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this,
          [this, dialog] { afterSaving(dialog->name(), dialog->effect()); });
  dialog->open();
}

void DataPlace::remove() {
  const auto record = currentRecord();
  if (!record || dialogIsOpen()) {
    return;
  }
  auto* dialog =
      new RemoveDialog(record->name, namesOf(session_.overview().people), session_.overview().atDesk, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this,
          [this, dialog, record = *record] { removeNow(record, dialog->by()); });
  dialog->open();
}

void DataPlace::removeNow(const exchange::RecordName& record, const QString& by) {
  session_.work().start(
      this,
      [source = session_.source(), record, by](Watch&) {
        recordsOf(*source).removeRecord(record, by);
        return true;
      },
      [this, name = record.name](bool) {
        tell(tr("%1 is removed. Undo brings it back.").arg(name));
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) { tell(wordsFor(what, tr("Nothing was removed."))); });
}

} // namespace hangbook::desk
