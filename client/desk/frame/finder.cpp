// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/finder.h"

#include <QAbstractItemView>
#include <QCompleter>

#include "desk/frame/place_names.h"

namespace hangbook::desk {
namespace {

constexpr int placeRole = Qt::UserRole;
constexpr int keyOfThingRole = Qt::UserRole + 1;

template <class Types>
void addTypes(std::vector<Findable>& all, const Types& types, const QString& kind) {
  for (const auto& each : types) {
    all.push_back({each.name + QStringLiteral(" · ") + kind, place::data, each.name});
  }
}

} // namespace

std::vector<Findable> findablesOf(const Overview& overview) {
  std::vector<Findable> all;
  for (const calendar::Show& show : overview.shows) {
    all.push_back({show.name + QStringLiteral(" · ") + show.venue + QStringLiteral(" · ") +
                       show.from.toString(Qt::ISODate) + QStringLiteral(" · ") + Finder::tr("show"),
                   place::options, show.tour + QLatin1Char('\n') + show.name});
  }
  for (const venue::Venue& venue : overview.venues) {
    all.push_back(
        {venue.name + QStringLiteral(", ") + venue.town + QStringLiteral(" · ") + Finder::tr("venue"),
         place::data, venue.name});
  }
  for (const fleet::Unit& unit : overview.units) {
    all.push_back({unit.serial + QStringLiteral(" · ") + unit.type + QStringLiteral(" · ") + unit.place,
                   place::fleet, unit.serial});
  }
  addTypes(all, overview.catalogue.cabinets, Finder::tr("cabinet type"));
  addTypes(all, overview.catalogue.bars, Finder::tr("bar type"));
  addTypes(all, overview.catalogue.hoists, Finder::tr("hoist type"));
  addTypes(all, overview.catalogue.chains, Finder::tr("chain type"));
  addTypes(all, overview.catalogue.hardware, Finder::tr("hardware type"));
  addTypes(all, overview.catalogue.carts, Finder::tr("cart type"));
  addTypes(all, overview.people, Finder::tr("person"));
  return all;
}

Finder::Finder(QWidget* parent) : QLineEdit(parent), completer_(new QCompleter(&model_, this)) {
  setObjectName(QStringLiteral("finder"));
  setAccessibleName(tr("Find a serial, venue, town, show or type"));
  setToolTip(tr("Type part of a serial, venue, town, show or type, and press Enter to go there (Ctrl+K)"));
  setPlaceholderText(tr("Find  (Ctrl+K)"));
  setClearButtonEnabled(true);
  completer_->setFilterMode(Qt::MatchContains);
  completer_->setCaseSensitivity(Qt::CaseInsensitive);
  completer_->setMaxVisibleItems(14);
  completer_->popup()->setObjectName(QStringLiteral("finderAnswers"));
  completer_->popup()->setAccessibleName(tr("What was found"));
  completer_->popup()->setMinimumWidth(420);
  setCompleter(completer_);
  connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
          [this](const QModelIndex& index) { go(index); });
  connect(this, &QLineEdit::returnPressed, this, &Finder::goToFirst);
}

void Finder::setFindables(const std::vector<Findable>& all) {
  model_.clear();
  QList<QStandardItem*> column;
  for (const Findable& each : all) {
    auto* item = new QStandardItem(each.text);
    item->setData(each.place, placeRole);
    item->setData(each.key, keyOfThingRole);
    column.append(item);
  }
  model_.appendColumn(column);
}

void Finder::goToFirst() {
  if (text().trimmed().isEmpty()) {
    return;
  }
  completer_->setCompletionPrefix(text().trimmed());
  if (completer_->setCurrentRow(0)) {
    go(completer_->currentIndex());
  }
}

void Finder::go(const QModelIndex& index) {
  Q_EMIT wanted(index.data(placeRole).toString(), index.data(keyOfThingRole).toString());
}

} // namespace hangbook::desk
