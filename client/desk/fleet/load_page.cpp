// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/load_page.h"

#include <algorithm>
#include <iterator>

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSet>
#include <QSplitter>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_label.h"
#include "desk/words/plain_words.h"
#include "options/demand.h"

namespace hangbook::desk {
namespace {

options::Verdict verdictOf(fleet::LoadVerdict verdict) {
  switch (verdict) {
  case fleet::LoadVerdict::holds:
    return options::Verdict::holds;
  case fleet::LoadVerdict::tight:
    return options::Verdict::tight;
  case fleet::LoadVerdict::fails:
    return options::Verdict::fails;
  case fleet::LoadVerdict::unproven:
    break;
  }
  return options::Verdict::unproven;
}

QComboBox* chooser(const QString& name, const QString& says, QWidget* parent) {
  auto* box = new QComboBox(parent);
  box->setObjectName(name);
  box->setAccessibleName(says);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(30);
  return box;
}

/// A line of a chooser with its title before it.
QHBoxLayout* chooserLine(const QString& title, QComboBox* box, QWidget* parent) {
  auto* label = new QLabel(title, parent);
  label->setFont(fontFor(TextSize::heading, parent->font()));
  label->setBuddy(box);
  auto* line = new QHBoxLayout;
  line->setSpacing(space::step);
  line->addWidget(label);
  line->addWidget(box);
  line->addStretch(1);
  return line;
}

/// A few of many names, and how many more.
QString someOf(const QStringList& names) {
  constexpr qsizetype most = 6;
  const QString some = names.mid(0, most).join(QStringLiteral(", "));
  return names.size() <= most ? some : LoadPage::tr("%1 and %2 more").arg(some).arg(names.size() - most);
}

/// Keeps what was chosen where it is still offered; else `otherwise`.
void offer(QComboBox& box, const QList<std::pair<QString, QVariant>>& lines, int otherwise) {
  const QVariant chosen = box.currentData();
  const QSignalBlocker quiet(box);
  box.clear();
  for (const auto& [text, key] : lines) {
    box.addItem(text, key);
  }
  const int same = chosen.isValid() ? box.findData(chosen) : -1;
  box.setCurrentIndex(same >= 0 ? same : otherwise);
}

} // namespace

LoadPage::LoadPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), shows_(chooser(QStringLiteral("loadShow"), tr("Show"), this)),
      trucks_(chooser(QStringLiteral("loadTruck"), tr("Truck or place"), this)), cartsSay_(new QLabel(this)),
      cartTable_(new QTableView(this)), loadTable_(new QTableView(this)), loadSays_(new QLabel(this)),
      payload_(new VerdictLabel(this)), payloadSays_(new QLabel(this)), floor_(new VerdictLabel(this)),
      floorSays_(new QLabel(this)) {
  setObjectName(QStringLiteral("loadPage"));
  auto* both = new QSplitter(Qt::Vertical, this);
  both->setObjectName(QStringLiteral("loadHalves"));
  both->setChildrenCollapsible(false);
  both->setHandleWidth(space::wide);
  both->addWidget(cartPart());
  both->addWidget(truckPart());
  both->setStretchFactor(0, 2);
  both->setStretchFactor(1, 3);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::step, 0, 0);
  all->addWidget(both);
  connect(shows_, &QComboBox::currentIndexChanged, this, [this] {
    showCarts();
    showTruck(); // its order follows the build
  });
  connect(trucks_, &QComboBox::currentIndexChanged, this, &LoadPage::showTruck);
  session_.keepUp(this, [this] { showFacts(); });
  connect(&session_, &Session::unitsChanged, this, &LoadPage::showFacts);
  showFacts();
}

QWidget* LoadPage::cartPart() {
  auto* part = new QWidget(this);
  cartTable_->setObjectName(QStringLiteral("cartTable"));
  cartTable_->setAccessibleName(tr("Carts that the show needs, in the order in which they are needed"));
  cartTable_->setModel(&carts_);
  prepareTable(*cartTable_, carts_, static_cast<int>(CartColumn::hangs));
  cartsSay_->setObjectName(QStringLiteral("cartsSay"));
  cartsSay_->setWordWrap(true);
  auto* in = new QVBoxLayout(part);
  in->setContentsMargins(0, 0, 0, 0);
  in->setSpacing(space::step);
  in->addLayout(chooserLine(tr("&Carts for the show"), shows_, part));
  in->addWidget(cartsSay_);
  in->addWidget(cartTable_, 1);
  in->addStretch(0); // takes the room where there is no table
  return part;
}

QWidget* LoadPage::truckPart() {
  auto* part = new QWidget(this);
  loadTable_->setObjectName(QStringLiteral("loadTable"));
  loadTable_->setAccessibleName(tr("What is in the truck, in the order in which it comes out"));
  loadTable_->setModel(&loads_);
  prepareTable(*loadTable_, loads_, static_cast<int>(LoadColumn::riding));
  loadSays_->setObjectName(QStringLiteral("loadSays"));
  loadSays_->setWordWrap(true);
  payloadSays_->setObjectName(QStringLiteral("payloadSays"));
  payloadSays_->setWordWrap(true);
  floorSays_->setObjectName(QStringLiteral("floorSays"));
  floorSays_->setWordWrap(true);
  auto* in = new QVBoxLayout(part);
  in->setContentsMargins(0, 0, 0, 0);
  in->setSpacing(space::step);
  in->addLayout(chooserLine(tr("&Loaded in"), trucks_, part));
  in->addWidget(loadSays_);
  for (const auto& [sign, says] : {std::pair{payload_, payloadSays_}, std::pair{floor_, floorSays_}}) {
    auto* line = new QHBoxLayout;
    line->setSpacing(space::step);
    line->addWidget(sign);
    line->addWidget(says, 1);
    in->addLayout(line);
  }
  in->addWidget(loadTable_, 1);
  in->addStretch(0);
  return part;
}

void LoadPage::showFacts() {
  carts_.setFigures(session_.figures());
  loads_.setFigures(session_.figures());
  offerShows();
  offerTrucks();
  showCarts();
  showTruck();
}

void LoadPage::offerShows() {
  QList<std::pair<QString, QVariant>> lines;
  int next = -1;
  const auto& shows = session_.overview().shows;
  for (const calendar::Show& show : shows) {
    if (next < 0 && show.to >= session_.overview().today) {
      next = static_cast<int>(lines.size());
    }
    lines << std::pair{tr("%1, %2").arg(show.name, dateText(show.from)),
                       QVariant(QStringList{show.tour, show.name})};
  }
  offer(*shows_, lines, std::max(next, lines.isEmpty() ? -1 : 0));
}

void LoadPage::offerTrucks() {
  QStringList trucks;
  QSet<QString> known;
  for (const fleet::NamedPlace& each : session_.overview().places) {
    if (each.kind == fleet::PlaceKind::truck) {
      trucks << each.name;
      known << each.name;
    }
  }
  QStringList others; // what is loaded into a truck that nobody entered as one can be looked at too
  std::ranges::copy_if(session_.overview().sums.places, std::back_inserter(others),
                       [&](const QString& each) { return !known.contains(each); });
  QList<std::pair<QString, QVariant>> lines;
  for (const QString& each : trucks + others) {
    lines << std::pair{each, QVariant(each)};
  }
  offer(*trucks_, lines, lines.isEmpty() ? -1 : 0);
}

std::vector<options::HangStack> LoadPage::stacks() const {
  const QStringList key = shows_->currentData().toStringList();
  std::vector<options::Choice> choices;
  std::ranges::copy_if(
      session_.overview().choices, std::back_inserter(choices),
      [&](const options::Choice& each) { return each.tour == key.value(0) && each.show == key.value(1); });
  std::vector<options::HangStack> stacks;
  for (const options::Choice* choice : options::newestOf(choices)) {
    stacks.push_back({choice->hang, choice->key.stack});
  }
  return stacks;
}

/// Makers' data with the stacks' cabinets as heavy as the loads count them for the show.
catalogue::Catalogue LoadPage::counted(const std::vector<options::HangStack>& stacks) const {
  const Overview& all = session_.overview();
  const QStringList key = shows_->currentData().toStringList();
  options::Snapshot snapshot;
  snapshot.catalogue = all.catalogue;
  if (const calendar::Show* show = findShow(all, {key.value(0), key.value(1)})) {
    snapshot.show = *show;
    if (const venue::Venue* hall = findVenue(all, show->venue)) {
      snapshot.venue = *hall;
    }
    const auto tour = std::ranges::find(all.tours, show->tour, &calendar::Tour::name);
    snapshot.tour = tour == all.tours.end() ? calendar::Tour() : *tour;
  }
  QSet<QString> types;
  for (const options::HangStack& each : stacks) {
    types.unite(QSet<QString>(each.stack.begin(), each.stack.end()));
  }
  for (const QString& type : types) {
    for (const std::size_t i : all.sums.cabinets.value(type)) {
      snapshot.units.push_back(all.units[i]);
    }
  }
  return options::withCountedMasses(snapshot);
}

void LoadPage::showCarts() {
  const auto stacks = this->stacks();
  auto carts = options::planCarts(counted(stacks), stacks);
  if (shows_->count() == 0) {
    cartsSay_->setText(tr("No shows yet. Import them as a CSV file."));
  } else if (carts.empty()) {
    cartsSay_->setText(
        tr("Nothing is chosen for this show yet: which cabinets travel is not known. Choose an "
           "option for each hang in Options."));
  } else {
    cartsSay_->setText(
        tr("%1 carts for what is chosen, in the order in which they are needed under the hangs.")
            .arg(carts.size()));
  }
  cartTable_->setVisible(!carts.empty());
  carts_.setRows(std::move(carts));
}

void LoadPage::showTruck() {
  const Overview& all = session_.overview();
  const QString name = trucks_->currentData().toString();
  const auto place = std::ranges::find(all.places, name, &fleet::NamedPlace::name);
  const fleet::NamedPlace* truck = place == all.places.end() ? nullptr : &*place;
  std::vector<fleet::Unit> inside;
  for (const std::size_t i : all.sums.at.value(name)) {
    inside.push_back(all.units[i]);
  }
  QList<QStringList> order;
  for (const options::HangStack& each : stacks()) {
    order << each.stack;
  }
  fleet::TruckList list = fleet::truckList(all.catalogue, inside, truck, fleet::buildOrder(order));
  const bool any = !list.loads.empty();
  loadSays_->setText(
      any ? tr("First comes out what goes up first%1. To load, go from the last to the first.")
                .arg(order.isEmpty() ? QString() : tr(" at the show above"))
      : name.isEmpty()
          ? tr("Nothing is recorded anywhere yet.")
          : tr("Nothing is recorded in %1. Set the scanner to “Into a truck” and scan.").arg(name));
  for (QWidget* each :
       std::initializer_list<QWidget*>{payload_, payloadSays_, floor_, floorSays_, loadTable_}) {
    each->setVisible(any);
  }
  const Figures& figures = session_.figures();
  const bool payloadKnown = truck != nullptr && truck->payload;
  QString payload =
      payloadKnown
          ? tr("payload: %1 of %2")
                .arg(figures.mass(inKilograms(list.known)), figures.mass(inKilograms(*truck->payload)))
          : tr("payload: %1; what it may carry is not stated").arg(figures.mass(inKilograms(list.known)));
  if (!list.missing.isEmpty()) {
    payload += tr("; without a known mass: %1").arg(someOf(list.missing));
  }
  const bool floorKnown = truck != nullptr && truck->floorLength;
  QString floor = floorKnown ? tr("floor: %1 of %2 of its length")
                                   .arg(figures.length(inMetres(list.floorUsed)),
                                        figures.length(inMetres(*truck->floorLength)))
                             : tr("floor: %1 of its length; how long it is is not stated")
                                   .arg(figures.length(inMetres(list.floorUsed)));
  if (!list.missingSize.isEmpty()) {
    floor += tr("; without a known size: %1").arg(someOf(list.missingSize));
  }
  payload_->setVerdict(verdictOf(list.payload));
  payloadSays_->setText(payload);
  floor_->setVerdict(verdictOf(list.floor));
  floorSays_->setText(floor);
  loads_.setRows(std::move(list.loads));
}

} // namespace hangbook::desk
