// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/record_dialog.h"

#include <algorithm>

#include <QSplitter>

#include "desk/data/field_form.h"
#include "desk/data/part_table.h"
#include "desk/data/part_tabs.h"
#include "desk/data/record_parts.h"
#include "desk/data/type_picture.h"
#include "desk/source/record_source.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

exchange::Data recordData(const Overview& overview) {
  exchange::Data data;
  data.catalogue = overview.catalogue;
  data.cabling = overview.connections;
  data.people = overview.people;
  data.venues = overview.venues;
  return data;
}

RecordDialog::RecordDialog(Session& session, const exchange::RecordName& record, QWidget* parent,
                           const exchange::RecordText& start)
    : EditDialog(session, QStringLiteral("entry"), parent), record_(record),
      before_(recordData(session.overview())), parts_(exchange::partsOf(record.kind, record.sort)),
      first_(isNew() ? start : exchange::recordText(record, before_)), picture_(new TypePicture(this)) {
  first_.own.resize(static_cast<qsizetype>(exchange::fieldsOf(record.kind, record.sort).size()));
  first_.parts.resize(parts_.size());
  setObjectName(QStringLiteral("recordDialog"));
  setWindowTitle(isNew() ? tr("New record: %1").arg(record_.sort) : tr("Edit %1").arg(record_.name));
  auto* halves = new QSplitter(Qt::Horizontal, this);
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::wide);
  halves->addWidget(fields());
  halves->addWidget(picture_);
  halves->setStretchFactor(0, 3);
  halves->setStretchFactor(1, 2);
  const bool hasPlaces = record_.sort == QLatin1String("cabinet") || record_.sort == QLatin1String("bar");
  layOut(halves,
         hasPlaces ? tr("A figure may be typed with its unit: 92 kg, 203 lb, 310 mm. A place is “x z”, x "
                        "forward and z up, in metres; an outline is its corners, "
                        "“x z; x z; …”. Empty means not known, and leaves the rules that need it unproven.")
                   : tr("A figure may be typed with its unit: 92 kg, 203 lb, 310 mm. Empty means not known, "
                        "and leaves the rules that need it unproven."));
  picture_->setVisible(hasPlaces);
  const int fieldsAlone = form_->sizeHint().height() + 200; // with what stands under them
  resize(hasPlaces || !parts_.empty() ? QSize(1100, 660) : QSize(640, std::min(660, fieldsAlone)));
  connect(form_, &FieldForm::changed, this, [this] { check(); });
  for (std::size_t i = 0; i < tables_.size(); ++i) {
    tables_[i]->setRows(first_.parts[i]);
    connect(tables_[i], &PartTable::changed, this, [this] { check(); });
  }
  check();
}

QWidget* RecordDialog::fields() {
  std::vector<FormField> own = formFields(exchange::fieldsOf(record_.kind, record_.sort));
  const auto columns = exchange::fieldsOf(record_.kind, record_.sort);
  for (std::size_t i = 0; i < own.size(); ++i) {
    own[i].fixed = columns[i].own && !isNew(); // another name would be another record
  }
  form_ = new FieldForm(QStringLiteral("record"), std::move(own), first_.own, this);
  QWidget* figures = scrolled(form_, this);
  if (parts_.empty()) {
    return figures;
  }
  QTabWidget* tabs = partTabs(QStringLiteral("recordParts"), tr("Parts of the record"), this);
  tabs->addTab(figures, tr("&Figures"));
  for (const exchange::RecordPart& part : parts_) {
    const PartWords words = wordsOfPart(part.sort);
    auto* table = new PartTable(words.object, words.says, words.add, formFields(part.fields), this);
    table->setNote(words.note);
    tabs->addTab(table, words.tab);
    tables_.push_back(table);
  }
  return tabs;
}

exchange::RecordText RecordDialog::typed() const {
  exchange::RecordText text;
  text.own = form_->texts();
  for (const PartTable* each : tables_) {
    text.parts.push_back(each->rows());
  }
  return text;
}

QString RecordDialog::name() const {
  return exchange::nameIn(record_, typed());
}

/// What a new one begins with, copied from another, is not typed by anybody yet: but it is not stored either.
bool RecordDialog::differs() const {
  return typed() != first_;
}

QString RecordDialog::faultsInWords(const exchange::RecordText& text) const {
  if (read_.faults.empty()) {
    return {};
  }
  const exchange::RecordFault& first = read_.faults.front();
  QStringList where;
  if (first.part) {
    where << wordsOfPart(parts_[*first.part].sort).row.arg(first.row + 1);
  }
  const auto& columns =
      first.part ? parts_[*first.part].fields : exchange::fieldsOf(record_.kind, record_.sort);
  for (const FormField& field : formFields(columns)) {
    if (field.name == first.field) {
      where << field.words;
    }
  }
  return tr("%1: %2. Fields to mend: %3.")
      .arg(where.isEmpty() ? exchange::nameIn(record_, text) : where.join(QStringLiteral(", ")),
           faultWords(first))
      .arg(read_.faults.size());
}

void RecordDialog::check() {
  const exchange::RecordText text = typed();
  read_ = exchange::readRecord(record_, text, before_);
  std::vector<exchange::FieldFault> own;
  std::vector<std::vector<exchange::FieldFault>> ofParts(tables_.size());
  for (const exchange::RecordFault& fault : read_.faults) {
    (fault.part ? ofParts.at(*fault.part) : own).push_back(fault);
  }
  form_->setFaults(own);
  for (std::size_t i = 0; i < tables_.size(); ++i) {
    tables_[i]->setFaults(ofParts[i]);
  }
  if (read_.faults.empty()) {
    draw();
  }
  judge(isNew() && !differs() ? QString() : faultsInWords(text));
}

/// What cannot be read leaves the picture as it was.
void RecordDialog::draw() {
  const catalogue::Catalogue& now = read_.after.catalogue;
  const QString called = name();
  if (const auto* cabinet = catalogue::find(now.cabinets, called);
      cabinet != nullptr && record_.sort == QLatin1String("cabinet")) {
    picture_->setDrawing(drawingOf(*cabinet));
  }
  if (const auto* bar = catalogue::find(now.bars, called);
      bar != nullptr && record_.sort == QLatin1String("bar")) {
    picture_->setDrawing(drawingOf(*bar));
  }
}

QString RecordDialog::changesInWords(const exchange::RecordText& text) const {
  QStringList changed;
  const auto known = [](const QString& figure) { return figure.isEmpty() ? tr("not known") : figure; };
  for (const exchange::Difference& each : read_.differences) {
    if (each.sort == record_.sort) {
      changed << tr("%1: %2 → %3").arg(each.heading, known(each.was), known(each.becomes));
    }
  }
  for (std::size_t i = 0; i < parts_.size(); ++i) {
    if (text.parts[i] != first_.parts[i]) {
      changed << tr("%1: %2 before, %3 now")
                     .arg(wordsOfPart(parts_[i].sort).says)
                     .arg(first_.parts[i].size())
                     .arg(text.parts[i].size());
    }
  }
  return changed.join(QStringLiteral("; "));
}

void RecordDialog::save() {
  if (sending() || !read_.faults.empty()) {
    return;
  }
  const exchange::RecordText text = typed();
  setEffect(isNew() ? QString() : changesInWords(text));
  send(
      tr("Saving …"),
      [source = session().source(), record = record_, text, who = by()](Watch&) {
        recordsOf(*source).saveRecord(record, text, who);
        return true;
      },
      [this](bool) { accept(); });
}

} // namespace hangbook::desk
