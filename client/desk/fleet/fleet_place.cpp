// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/fleet_place.h"

#include <QDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include "actions/fleet_work.h"
#include "desk/fleet/happened_dialog.h"
#include "desk/fleet/labels_dialog.h"
#include "desk/fleet/load_page.h"
#include "desk/fleet/scan_bench.h"
#include "desk/fleet/split_dialog.h"
#include "desk/fleet/state_dialog.h"
#include "desk/fleet/stock_page.h"
#include "desk/frame/place_names.h"
#include "desk/style/scale.h"
#include "desk/words/ask_dialog.h"
#include "desk/words/plain_words.h"
#include "quantity/error.h"
#include "reports/labels.h"

namespace hangbook::desk {
namespace {

/// Beyond so many units the lists are read again only when the scanner pauses, so that no scan waits for
/// them.
constexpr std::size_t manyUnits = 5000;
constexpr int pauseMs = 2000;

} // namespace

QString followsFrom(const QString& serial, const actions::Recorded& what) {
  QStringList says;
  if (what.quarantined) {
    says << FleetPlace::tr("%1 is quarantined.").arg(serial);
  }
  for (const actions::CountedOn& each : what.shows) {
    QString show =
        each.from.isValid() ? FleetPlace::tr("%1 (%2)").arg(each.show, dateText(each.from)) : each.show;
    if (each.lacking > 0) {
      show = FleetPlace::tr("%1 now lacks %2").arg(show).arg(each.lacking);
    } else {
      show = each.wasOut ? FleetPlace::tr("%1 has it out; others can stand in").arg(show)
                         : FleetPlace::tr("%1: others can stand in").arg(show);
    }
    says << show + QLatin1Char('.');
  }
  return says.join(QLatin1Char(' '));
}

FleetPlace::FleetPlace(Session& session, QWidget* parent)
    : Place(place::fleet, tr("Fleet"), parent), session_(session), parts_(new QTabWidget(this)),
      page_(new ListPage(QStringLiteral("fleetList"), tr("Units"), model_,
                         static_cast<int>(FleetColumn::owner), static_cast<int>(FleetColumn::serial),
                         Qt::AscendingOrder, this)),
      stock_(new StockPage(session, this)), loads_(new LoadPage(session, this)),
      bench_(new ScanBench(session, this)), unitText_(new QLabel(this)), toldText_(new QLabel(this)),
      state_(new QPushButton(tr("St&ate…"), this)), happened_(new QPushButton(tr("What happe&ned…"), this)),
      split_(new QPushButton(tr("S&plit…"), this)), labels_(new QPushButton(tr("&Labels…"), this)),
      asker_([](QDialog& dialog) { return dialog.exec() == QDialog::Accepted; }) {
  page_->setEmptyTexts(
      tr("No units yet. Import your gear list as a CSV file, or open the demo tour in a store of its "
         "own to see how one looks."),
      tr("No unit contains these words."));
  labels_->setObjectName(QStringLiteral("unitLabels"));
  labels_->setToolTip(
      tr("Labels with a QR code, of the selected unit or of all that the list shows, as PDF."));
  page_->addControl(labels_);
  quiet_.setSingleShot(true);
  auto* left = new QSplitter(Qt::Vertical, this);
  left->setObjectName(QStringLiteral("fleetLeft"));
  left->setChildrenCollapsible(false);
  left->setContentsMargins(0, space::step, 0, 0);
  left->addWidget(page_);
  left->addWidget(unitPart());
  left->setStretchFactor(0, 3);
  left->setStretchFactor(1, 1);
  parts_->setObjectName(QStringLiteral("fleetParts"));
  parts_->setDocumentMode(true);
  parts_->setAccessibleName(tr("Parts of the fleet"));
  parts_->tabBar()->setObjectName(QStringLiteral("fleetPartsBar"));
  parts_->tabBar()->setAccessibleName(tr("Parts of the fleet"));
  parts_->addTab(left, tr("&Units"));
  parts_->addTab(stock_, tr("Stoc&k against demand"));
  parts_->addTab(loads_, tr("Carts and t&rucks"));
  auto* both = new QSplitter(Qt::Horizontal, this);
  both->setObjectName(QStringLiteral("fleetSplit"));
  both->setChildrenCollapsible(false);
  both->addWidget(parts_);
  both->addWidget(bench_);
  both->setStretchFactor(0, 1);
  both->setStretchFactor(1, 0);
  both->setHandleWidth(space::wide);
  bench_->setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 46);
  setContent(both);
  session_.keepUp(this, [this] { showFacts(); });
  connect(&session_, &Session::unitsChanged, this, [this] { model_.setFigures(session_.figures()); });
  connect(page_, &ListPage::currentRowChanged, this, [this] { showUnit(); });
  connect(bench_, &ScanBench::booked, this, [this] {
    Q_EMIT session_.saved();
    if (session_.overview().units.size() > manyUnits) {
      quiet_.start(pauseMs);
    } else {
      session_.reload();
    }
  });
  connect(&quiet_, &QTimer::timeout, &session_, &Session::reload);
  connect(state_, &QPushButton::clicked, this, &FleetPlace::askState);
  connect(happened_, &QPushButton::clicked, this, &FleetPlace::askHappened);
  connect(labels_, &QPushButton::clicked, this, &FleetPlace::askLabels);
  connect(split_, &QPushButton::clicked, this, &FleetPlace::askSplit);
  showFacts();
}

QWidget* FleetPlace::unitPart() {
  auto* part = new QWidget(this);
  unitText_->setObjectName(QStringLiteral("unitText"));
  unitText_->setFont(fontFor(TextSize::heading, font()));
  toldText_->setObjectName(QStringLiteral("unitTold"));
  toldText_->setAccessibleName(tr("What follows from the last record"));
  toldText_->setWordWrap(true);
  toldText_->hide();
  state_->setObjectName(QStringLiteral("unitState"));
  happened_->setObjectName(QStringLiteral("unitHappened"));
  split_->setObjectName(QStringLiteral("unitSplit"));
  split_->setToolTip(tr("Some pieces of a counted batch become a batch of their own."));
  auto* table = new QTableView(part);
  table->setObjectName(QStringLiteral("unitStory"));
  table->setAccessibleName(tr("All that is recorded of this unit, the newest first"));
  table->setModel(&story_);
  prepareTable(*table, story_, static_cast<int>(StoryColumn::words));
  auto* head = new QHBoxLayout;
  head->setSpacing(space::step);
  head->addWidget(unitText_, 1);
  head->addWidget(split_);
  head->addWidget(happened_);
  head->addWidget(state_);
  auto* all = new QVBoxLayout(part);
  all->setContentsMargins(0, space::step, 0, 0);
  all->setSpacing(space::step);
  all->addLayout(head);
  all->addWidget(toldText_);
  all->addWidget(table, 1);
  return part;
}

QString FleetPlace::explanation() const {
  return tr(
      "Every serial-numbered unit and counted batch: where it is, which cart it rides on, its state and the "
      "examination that it owes next; below, all that is recorded of the selected one. Click a heading to "
      "sort; serials sort by their numbers. Type words into the search field to narrow the list: all of them "
      "must occur in a line.\n\nStock against demand: for any day what there is of each type, what is kept "
      "back or due, "
      "what the shows that are away then want, and below what any show to come lacks, with what would fill "
      "it. Carts "
      "and trucks: which carts a show needs, and what is in a truck in the order in which it comes "
      "out.\n\nScanning: set what a scan does and scan. It does not matter where the "
      "keyboard "
      "is: what a scanner types comes to its field. A cart's code moves the cart and everything on it. A "
      "scan "
      "is in the store when its answer is shown. “Take last one back” corrects it; nothing is erased.");
}

bool FleetPlace::showPart(const QString& name) {
  const int part = static_cast<int>(
      QStringList{QStringLiteral("units"), QStringLiteral("stock"), QStringLiteral("loads")}.indexOf(name));
  if (part >= 0) {
    parts_->setCurrentIndex(part);
  }
  return part >= 0;
}

void FleetPlace::showKey(const QString& key) {
  parts_->setCurrentIndex(0);
  page_->showKey(key);
}

void FleetPlace::takeFocus() {
  bench_->field().setFocus();
}

void FleetPlace::showFacts() {
  const QString kept = selected_;
  model_.setFacts(session_.facts());
  bench_->showFacts();
  const auto& units = session_.overview().units;
  labels_->setEnabled(!units.empty());
  const UnitSums& sums = session_.overview().sums;
  setNote(tr("%1 away · %2 not to be used").arg(sums.away).arg(sums.notToBeUsed));
  if (!kept.isEmpty()) {
    page_->select(kept);
  }
  showUnit();
}

const fleet::Unit* FleetPlace::current() const {
  const int row = page_->currentRow();
  return row < 0 ? nullptr : model_.at(row).unit;
}

QStringList FleetPlace::people() const {
  return namesOf(session_.overview().people);
}

void FleetPlace::showUnit() {
  const fleet::Unit* unit = current();
  state_->setEnabled(unit != nullptr);
  happened_->setEnabled(unit != nullptr && unit->state != fleet::UnitState::writtenOff);
  // A button for what few units allow stands there for those alone.
  split_->setVisible(unit != nullptr && fleet::piecesOf(*unit) > 1 &&
                     unit->state != fleet::UnitState::writtenOff);
  split_->setEnabled(unit != nullptr && unit->state != fleet::UnitState::away);
  if (reading_) {
    reading_->cancel();
    reading_.reset();
  }
  if (unit == nullptr) {
    selected_.clear();
    story_.setRows({});
    unitText_->setText(tr("Select a unit to see all that is recorded of it"));
    toldText_->hide();
    return;
  }
  if (unit->serial != selected_) {
    selected_ = unit->serial;
    story_.setRows({});
  }
  toldText_->setVisible(toldFor_ == selected_ && !toldText_->text().isEmpty());
  unitText_->setText(
      tr("%1 · %2 · %3 at %4").arg(unit->serial, unit->type, wordOf(unit->state), unit->place));
  reading_ = session_.work().start(
      this,
      [source = session_.source(), serial = selected_](Watch&) { return storyLines(source->story(serial)); },
      [this](std::vector<StoryLine> lines) {
        reading_.reset();
        story_.setRows(std::move(lines));
      },
      [this](const std::exception_ptr& what) {
        reading_.reset();
        Q_EMIT session_.trouble(wordsFor(what, tr("The list itself still stands. Select the unit again.")));
      });
}

void FleetPlace::askState() {
  const fleet::Unit* unit = current();
  if (unit == nullptr) {
    return;
  }
  StateDialog dialog(*unit, people(), session_.overview().atDesk, this);
  if (asker_(dialog)) {
    record(unit->serial, [change = dialog.change()](Source& source) { return source.setState(change); });
  }
}

void FleetPlace::askHappened() {
  const fleet::Unit* unit = current();
  if (unit == nullptr) {
    return;
  }
  HappenedDialog dialog(*unit, session_.overview().today, people(), session_.overview().atDesk, this);
  if (asker_(dialog)) {
    record(unit->serial, [fact = dialog.occurrence(), files = dialog.files()](Source& source) {
      return source.recordOccurrence(fact, files);
    });
  }
}

void FleetPlace::askSplit() {
  const fleet::Unit* unit = current();
  if (unit == nullptr) {
    return;
  }
  SplitDialog dialog(*unit, people(), session_.overview().atDesk, this);
  if (asker_(dialog)) {
    record(unit->serial, [request = dialog.request()](Source& source) {
      auto* keeper = dynamic_cast<BatchSource*>(&source);
      if (keeper == nullptr) {
        throw Error(Trouble::notPossible, "this source keeps no batches");
      }
      keeper->splitBatch(request);
      return actions::Recorded{};
    });
  }
}

void FleetPlace::askLabels() {
  const fleet::Unit* unit = current();
  const int listed = page_->proxy().rowCount();
  LabelsDialog dialog(unit == nullptr ? QString() : unit->serial, listed, this);
  if (!asker_(dialog)) {
    return;
  }
  std::vector<reports::Label> labels;
  if (dialog.selectedOnly() && unit != nullptr) {
    labels.push_back(reports::labelOf(*unit));
  } else {
    for (int row = 0; row < listed; ++row) {
      const fleet::Unit& each =
          *model_.at(page_->proxy().mapToSource(page_->proxy().index(row, 0)).row()).unit;
      if (each.state != fleet::UnitState::writtenOff) {
        labels.push_back(reports::labelOf(each));
      }
    }
  }
  const auto count = static_cast<int>(labels.size());
  // Not where scans wait: a large house's labels take a while.
  session_.judging().start(
      this,
      [labels = std::move(labels), sheet = dialog.sheet(), file = dialog.file(),
       skip = dialog.skip()](Watch&) {
        reports::writeLabels(file, labels, reports::labelSheet(sheet), skip);
        return true;
      },
      [this, count, file = dialog.file()](bool) {
        toldFor_ = selected_;
        toldText_->setText(tr("%1 labels are in %2.").arg(count).arg(file));
        toldText_->show();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(wordsFor(what, tr("No labels were written.")));
      });
}

void FleetPlace::record(const QString& serial, std::function<actions::Recorded(Source&)> deed) {
  session_.work().start(
      this, [source = session_.source(), deed = std::move(deed)](Watch&) { return deed(*source); },
      [this, serial](const actions::Recorded& what) {
        Q_EMIT session_.saved();
        recorded(serial, what);
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(wordsFor(what, tr("Nothing was recorded.")));
      });
}

void FleetPlace::recorded(const QString& serial, const actions::Recorded& what) {
  toldFor_ = serial;
  toldText_->setText(followsFrom(serial, what));
  toldText_->setVisible(!toldText_->text().isEmpty());
}

} // namespace hangbook::desk
