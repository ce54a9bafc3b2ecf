// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/venue_dialog.h"

#include <algorithm>

#include <QPushButton>
#include <QSplitter>

#include "desk/data/field_form.h"
#include "desk/data/part_table.h"
#include "desk/data/part_tabs.h"
#include "desk/data/venue_plan.h"
#include "desk/data/venue_side.h"
#include "desk/options/house_panel.h"
#include "desk/source/venue_source.h"
#include "desk/style/scale.h"
#include "desk/words/typed_figures.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

using exchange::VenuePart;

VenueSource& venuesOf(Source& source) {
  auto* venues = dynamic_cast<VenueSource*>(&source);
  if (venues == nullptr) {
    throw Error(Trouble::badInput, "what is shown comes from a source whose venues cannot be edited");
  }
  return *venues;
}

std::vector<exchange::FieldFault> faultsOf(const exchange::VenueRead& read, VenuePart part) {
  std::vector<exchange::FieldFault> some;
  for (const exchange::VenueFault& each : read.faults) {
    if (each.part == part) {
      some.push_back(each);
    }
  }
  return some;
}

QString nameless(VenuePart part) {
  switch (part) {
  case VenuePart::point:
    return VenueDialog::tr("Point without a name");
  case VenuePart::zone:
    return VenueDialog::tr("Bay without a name");
  case VenuePart::bridle:
    return VenueDialog::tr("Bridle without a name");
  case VenuePart::obstruction:
    return VenueDialog::tr("Obstruction without a name");
  case VenuePart::section:
    return VenueDialog::tr("Section without a name");
  case VenuePart::venue:
    break;
  }
  return {};
}

} // namespace

VenueDialog::VenueDialog(Session& session, const venue::Venue& venue, QWidget* parent)
    : EditDialog(session, QStringLiteral("venue"), parent), before_(venue),
      system_(session.figures().system()), form_(formOfLocale()),
      first_(exchange::textOf(venue, form_, system_)),
      tabs_(partTabs(QStringLiteral("venueParts"), tr("Parts of the venue"), this)),
      figures_(
          new FieldForm(QStringLiteral("venue"), formFields(VenuePart::venue, system_), first_.venue, this)),
      plan_(new VenuePlan(system_, this)), side_(new VenueSide(session.figures(), this)) {
  setObjectName(QStringLiteral("venueDialog"));
  setWindowTitle(tr("Edit %1").arg(venue.name));
  addTable(VenuePart::point, QStringLiteral("venuePoints"), tr("Points of the venue"), tr("&Add a point"),
           tr("&Points"));
  addTable(VenuePart::zone, QStringLiteral("venueBays"), tr("Bays, trusses and beams of the venue"),
           tr("&Add a bay"), tr("&Bays"));
  addTable(VenuePart::bridle, QStringLiteral("venueBridles"), tr("Bridles of the venue"), tr("&Add a bridle"),
           tr("Brid&les"),
           tr("Height is that of the apex, where its lowest shackle bears. Without a place of its own the "
              "apex is midway between the points."));
  addTable(VenuePart::section, QStringLiteral("venueSections"), tr("Audience sections of the venue"),
           tr("&Add a section"), tr("&Seats"),
           tr("Floor: distance and height, first row to last, “5 0; 32 1.5”. Either left from and left to, "
              "or a front line: its middle, bearing, width and radius, all five."));
  addTable(VenuePart::obstruction, QStringLiteral("venueObstructions"), tr("What stands under the low steel"),
           tr("&Add an obstruction"), tr("&Obstructions"));
  tabs_->addTab(scrolled(figures_, this), tr("&Figures"));
  try_ = new QPushButton(tr("&What would it change?"), this);
  try_->setObjectName(QStringLiteral("venueTry"));
  connect(try_, &QPushButton::clicked, this, [this] { sendIt(true); });
  connect(figures_, &FieldForm::changed, this, [this] { check(); });
  connect(tabs_, &QTabWidget::currentChanged, this, &VenueDialog::showCurrent);
  auto* pictures = new QSplitter(Qt::Vertical, this);
  pictures->setChildrenCollapsible(false);
  pictures->setHandleWidth(space::step);
  pictures->addWidget(plan_);
  pictures->addWidget(side_);
  pictures->setStretchFactor(0, 3);
  pictures->setStretchFactor(1, 2);
  pictures->setSizes({300, 200});
  auto* halves = new QSplitter(Qt::Horizontal, this);
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::wide);
  halves->addWidget(tabs_);
  halves->addWidget(pictures);
  halves->setStretchFactor(0, 5);
  halves->setStretchFactor(1, 3);
  halves->setSizes({500, 300});
  layOut(halves,
         tr("A figure may be typed with its unit: 41 ft 6 in, 1.2 t. Empty means not known, "
            "and leaves the rules that need it unproven."),
         try_);
  resize(1240, 660);
  side_->setTrims(trimsIn(session.overview(), venue.name));
  for (const Part& each : tables_) {
    each.table->setRows(exchange::rowsOf(first_, each.part));
    connect(each.table, &PartTable::changed, this, [this] { check(); });
    connect(each.table, &PartTable::currentChanged, this, &VenueDialog::showCurrent);
  }
  showCurrent();
  check();
}

void VenueDialog::addTable(VenuePart part, const QString& name, const QString& says, const QString& add,
                           const QString& tab, const QString& note) {
  auto* table = new PartTable(name, says, add, formFields(part, system_), this);
  table->setNote(note);
  tabs_->addTab(table, tab);
  tables_.push_back({part, table});
}

/// The row that has the keyboard stands out in both pictures.
void VenueDialog::showCurrent() {
  for (const Part& each : tables_) {
    if (each.table == tabs_->currentWidget()) {
      const int row = each.table->currentRow();
      const std::vector<QStringList> rows = each.table->rows();
      const bool there = row >= 0 && row < static_cast<int>(rows.size());
      const QString name = there ? rows[static_cast<std::size_t>(row)].value(0) : QString();
      plan_->setCurrent(each.part, row, name);
      side_->setCurrent(each.part, name);
      return;
    }
  }
  plan_->setCurrent(VenuePart::venue, -1, {});
  side_->setCurrent(VenuePart::venue, {});
}

exchange::VenueText VenueDialog::typed() const {
  exchange::VenueText text;
  text.venue = figures_->texts();
  for (const Part& each : tables_) {
    exchange::rowsOf(text, each.part) = each.table->rows();
  }
  return text;
}

bool VenueDialog::differs() const {
  return typed() != first_;
}

QString VenueDialog::faultsInWords(const exchange::VenueText& text) const {
  if (read_.faults.empty()) {
    return {};
  }
  const exchange::VenueFault& first = read_.faults.front();
  const std::vector<FormField> fields = formFields(first.part, system_);
  QStringList where;
  if (first.part != VenuePart::venue) {
    const auto& rows = exchange::rowsOf(text, first.part);
    const QString name = rows[static_cast<std::size_t>(first.row)].value(0);
    where << (!name.isEmpty() ? name : nameless(first.part));
  }
  if (const auto field = std::ranges::find(fields, first.field, &FormField::name); field != fields.end()) {
    where << field->words;
  }
  return tr("%1: %2. Fields to mend: %3.")
      .arg(where.join(QStringLiteral(", ")), faultWords(first))
      .arg(read_.faults.size());
}

void VenueDialog::check() {
  const exchange::VenueText text = typed();
  read_ = exchange::readVenueText(before_, text, system_, form_);
  figures_->setFaults(faultsOf(read_, VenuePart::venue));
  for (const Part& each : tables_) {
    each.table->setFaults(faultsOf(read_, each.part));
  }
  plan_->setPoints(planPoints(text.points, system_, form_));
  const venue::Venue drawn = read_.venue ? *read_.venue : exchange::readableOf(before_, text, system_, form_);
  plan_->setParts(drawn);
  side_->setVenue(drawn);
  showCurrent();
  try_->setEnabled(read_.venue.has_value() && text != first_ && !sending());
  judge(faultsInWords(text));
}

void VenueDialog::sendIt(bool dryRun) {
  if (!read_.venue || sending()) {
    return;
  }
  const VenueWish wish{*read_.venue, by(), dryRun};
  send(
      tr("Judging every option that is chosen in this venue …"),
      [source = session().source(), wish](Watch&) { return venuesOf(*source).editVenue(wish); },
      [this, dryRun](const options::HouseEffect& effect) {
        setEffect(session().figures().sentence(effectWords(effect, dryRun)));
        say(this->effect());
        if (!dryRun) {
          accept();
        }
      });
}

} // namespace hangbook::desk
