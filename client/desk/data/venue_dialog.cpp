// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/venue_dialog.h"

#include <algorithm>

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include "desk/data/part_table.h"
#include "desk/data/venue_plan.h"
#include "desk/options/house_panel.h"
#include "desk/source/venue_source.h"
#include "desk/style/colours.h"
#include "desk/style/scale.h"
#include "desk/words/ask_dialog.h"
#include "desk/words/name_box.h"
#include "desk/words/typed_figures.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

VenueSource& venuesOf(Source& source) {
  auto* venues = dynamic_cast<VenueSource*>(&source);
  if (venues == nullptr) {
    throw Error(Trouble::badInput, "what is shown comes from a source whose venues cannot be edited");
  }
  return *venues;
}

std::vector<exchange::VenueFault> faultsOf(const exchange::VenueRead& read, exchange::VenuePart part) {
  std::vector<exchange::VenueFault> some = read.faults;
  std::erase_if(some, [part](const exchange::VenueFault& each) { return each.part != part; });
  return some;
}

} // namespace

VenueDialog::VenueDialog(Session& session, const venue::Venue& venue, QWidget* parent)
    : QDialog(parent), session_(session), before_(venue), system_(session.figures().system()),
      form_(formOfLocale()), first_(exchange::textOf(venue, form_)),
      points_(new PartTable(QStringLiteral("venuePoints"), tr("Points of the venue"), tr("&Add a point"),
                            exchange::pointFields(), system_, this)),
      zones_(new PartTable(QStringLiteral("venueBays"), tr("Bays, trusses and beams of the venue"),
                           tr("A&dd a bay"), exchange::zoneFields(), system_, this)),
      plan_(new VenuePlan(system_, this)),
      by_(nameBox(QStringLiteral("venueBy"), tr("Who saves it"), namesOf(session.overview().people),
                  session.overview().atDesk, this)),
      says_(new QLabel(this)), try_(new QPushButton(tr("&What would it change?"), this)),
      save_(new QPushButton(tr("&Save"), this)) {
  setObjectName(QStringLiteral("venueDialog"));
  setWindowTitle(tr("Edit %1").arg(venue.name));
  layOut();
  points_->setRows(first_.points);
  zones_->setRows(first_.zones);
  plan_->setObstructions(venue.obstructions);
  connect(points_, &PartTable::changed, this, &VenueDialog::check);
  connect(zones_, &PartTable::changed, this, &VenueDialog::check);
  connect(points_, &PartTable::currentChanged, this, [this] { plan_->setCurrent(points_->currentRow()); });
  connect(by_, &QComboBox::editTextChanged, this, &VenueDialog::check);
  connect(try_, &QPushButton::clicked, this, [this] { send(true); });
  connect(save_, &QPushButton::clicked, this, [this] { send(false); });
  plan_->setCurrent(points_->currentRow());
  check();
}

QWidget* VenueDialog::figures() {
  auto* page = new QWidget(this);
  page->setObjectName(QStringLiteral("venueFigures"));
  auto* grid = new QGridLayout(page);
  grid->setHorizontalSpacing(space::step);
  grid->setVerticalSpacing(space::small);
  const auto& known = exchange::venueFields();
  for (std::size_t i = 0; i < known.size(); ++i) {
    const QString title = fieldTitle(known[i], system_);
    auto* label = new QLabel(title, page);
    auto* field = new QLineEdit(first_.venue.value(static_cast<qsizetype>(i)), page);
    field->setObjectName(QStringLiteral("venue_") +
                         QString(known[i].name).replace(QLatin1Char(' '), QLatin1Char('_')));
    field->setAccessibleName(title);
    field->setPlaceholderText(tr("not known"));
    label->setBuddy(field);
    auto* wrong = new QLabel(page);
    wrong->setObjectName(field->objectName() + QStringLiteral("_wrong"));
    wrong->setWordWrap(true);
    QPalette colours = wrong->palette();
    colours.setColor(QPalette::WindowText, coloursOf(palette()).fails);
    wrong->setPalette(colours);
    const int row = static_cast<int>(i);
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
    grid->addWidget(wrong, row, 2);
    connect(field, &QLineEdit::textChanged, this, &VenueDialog::check);
    fields_.push_back(field);
    wrong_.push_back(wrong);
  }
  grid->setColumnStretch(1, 3);
  grid->setColumnStretch(2, 2);
  grid->setRowStretch(static_cast<int>(known.size()), 1);
  return page;
}

QWidget* VenueDialog::parts() {
  auto* tabs = new QTabWidget(this);
  tabs->setObjectName(QStringLiteral("venueParts"));
  tabs->setAccessibleName(tr("Parts of the venue"));
  tabs->setDocumentMode(true);
  tabs->addTab(points_, tr("&Points"));
  tabs->addTab(zones_, tr("&Bays"));
  tabs->addTab(figures(), tr("&Figures of the venue"));
  return tabs;
}

void VenueDialog::layOut() {
  says_->setObjectName(QStringLiteral("venueSays"));
  says_->setAccessibleName(tr("What is wrong, or what it changes"));
  says_->setWordWrap(true);
  says_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  try_->setObjectName(QStringLiteral("venueTry"));
  try_->setAutoDefault(false);
  save_->setObjectName(QStringLiteral("venueSave"));
  save_->setAutoDefault(false); // Enter in a field must not save
  auto* cancel = new QPushButton(tr("&Cancel"), this);
  cancel->setObjectName(QStringLiteral("venueCancel"));
  cancel->setAutoDefault(false);
  connect(cancel, &QPushButton::clicked, this, &VenueDialog::reject);
  auto* halves = new QSplitter(Qt::Horizontal, this);
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::wide);
  halves->addWidget(parts());
  halves->addWidget(plan_);
  halves->setStretchFactor(0, 3);
  halves->setStretchFactor(1, 1);
  auto* line = new QHBoxLayout;
  line->setSpacing(space::step);
  auto* who = new QLabel(tr("Sa&ved by"), this);
  who->setBuddy(by_);
  line->addWidget(who);
  line->addWidget(by_);
  line->addStretch(1);
  line->addWidget(try_);
  line->addWidget(save_);
  line->addWidget(cancel);
  auto* note = new QLabel(tr("A figure may be typed with its unit: 41 ft 6 in, 1.2 t. Empty means not known, "
                             "and leaves the rules that need it unproven."),
                          this);
  note->setWordWrap(true);
  note->setFont(fontFor(TextSize::note, font()));
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(halves, 1);
  all->addWidget(note);
  all->addWidget(says_);
  all->addLayout(line);
  resize(1240, 640);
}

exchange::VenueText VenueDialog::typed() const {
  exchange::VenueText text;
  for (const QLineEdit* field : fields_) {
    text.venue << field->text().trimmed();
  }
  text.points = points_->rows();
  text.zones = zones_->rows();
  return text;
}

QString VenueDialog::faultsInWords(const exchange::VenueText& text) const {
  const exchange::VenueFault& first = read_.faults.front();
  QStringList where;
  if (first.part != exchange::VenuePart::venue) {
    const bool point = first.part == exchange::VenuePart::point;
    const auto& rows = point ? text.points : text.zones;
    const QString name = rows[static_cast<std::size_t>(first.row)].value(0);
    where << (!name.isEmpty() ? name : point ? tr("Point without a name") : tr("Bay without a name"));
  }
  if (!first.field.isEmpty()) {
    where << fieldWords(first.field);
  }
  return tr("Cannot be saved yet. %1: %2. Fields to mend: %3.")
      .arg(where.join(QStringLiteral(", ")), faultWords(first))
      .arg(read_.faults.size());
}

void VenueDialog::check() {
  const exchange::VenueText text = typed();
  warned_ = false;
  read_ = exchange::readVenueText(before_, text, system_, form_);
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    QStringList here;
    for (const exchange::VenueFault& fault : faultsOf(read_, exchange::VenuePart::venue)) {
      if (fault.field == exchange::venueFields()[i].name) {
        here << faultWords(fault);
      }
    }
    wrong_[i]->setText(here.join(QLatin1Char('\n')));
    fields_[i]->setAccessibleDescription(wrong_[i]->text());
  }
  points_->setFaults(faultsOf(read_, exchange::VenuePart::point));
  zones_->setFaults(faultsOf(read_, exchange::VenuePart::zone));
  plan_->setPoints(planPoints(text.points, system_, form_));
  const bool other = text != first_;
  const bool whole = read_.venue.has_value() && other && !sending_;
  try_->setEnabled(whole);
  save_->setEnabled(whole && !by_->currentText().trimmed().isEmpty());
  if (!read_.faults.empty()) {
    says_->setText(faultsInWords(text));
  } else {
    says_->setText(!other                                   ? tr("Nothing is changed yet.")
                   : by_->currentText().trimmed().isEmpty() ? tr("To save it, say who does.")
                                                            : tr("Not saved yet."));
  }
}

void VenueDialog::send(bool dryRun) {
  if (!read_.venue || sending_) {
    return;
  }
  const VenueWish wish{*read_.venue, by_->currentText().simplified(), dryRun};
  sending_ = true;
  const QPointer<QWidget> at(focusWidget()); // a disabled dialog loses it
  setEnabled(false);
  says_->setText(tr("Judging every option that is chosen in this venue …"));
  const auto again = [this, at] {
    sending_ = false;
    setEnabled(true);
    check();
    if (at != nullptr) {
      at->setFocus();
    }
  };
  session_.work().start(
      this, [source = session_.source(), wish](Watch&) { return venuesOf(*source).editVenue(wish); },
      [this, again, dryRun](const options::HouseEffect& effect) {
        again();
        effect_ = effectWords(effect, dryRun);
        says_->setText(effect_);
        if (!dryRun) {
          accept();
        }
      },
      [this, again](const std::exception_ptr& what) {
        again();
        says_->setText(wordsFor(what, tr("Nothing was saved; what you typed still stands here.")));
      });
}

void VenueDialog::reject() {
  if (!warned_ && typed() != first_) {
    warned_ = true;
    says_->setText(tr("What you changed is not saved. Cancel once more leaves it behind."));
    return;
  }
  QDialog::reject();
}

} // namespace hangbook::desk
