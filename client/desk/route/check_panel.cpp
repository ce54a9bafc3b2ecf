// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/check_panel.h"

#include <algorithm>

#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"
#include "desk/words/words.h"
#include "desk/words/work_line.h"

namespace hangbook::desk {
namespace {

Cell countCell(qint64 count) {
  return {.text = QString::number(count), .number = static_cast<double>(count)};
}

Cell verdictCell(const std::optional<options::Verdict>& verdict, const QString& none,
                 const QString& toolTip) {
  if (!verdict) {
    return {.text = none, .missing = true};
  }
  return {.text = verdictWord(*verdict),
          .number = static_cast<double>(*verdict),
          .verdict = verdict,
          .toolTip = toolTip};
}

QString rulesIn(const QString& because) {
  QStringList says;
  for (const QString& each : because.split(QStringLiteral(", "), Qt::SkipEmptyParts)) {
    says << ruleWords(each);
  }
  return says.join(Words::tr(", "));
}

} // namespace

Heading CheckModel::headingOf(CheckColumn column) const {
  switch (column) {
  case CheckColumn::show:
    return {.title = Words::tr("Show"), .characters = 16, .wish = 20};
  case CheckColumn::hang:
    return {.title = Words::tr("Hang"), .characters = 7, .wish = 10};
  case CheckColumn::options:
    return {.title = Words::tr("Options"), .figure = true, .characters = 8};
  case CheckColumn::holds:
    return {.title = Words::tr("Hold"), .figure = true, .characters = 6};
  case CheckColumn::tight:
    return {.title = Words::tr("Tight"), .figure = true, .characters = 6};
  case CheckColumn::unproven:
    return {.title = Words::tr("Unproven"), .figure = true, .characters = 10};
  case CheckColumn::fails:
    return {.title = Words::tr("Fail"), .figure = true, .characters = 6};
  case CheckColumn::best:
    return {.title = Words::tr("Best"), .characters = 13};
  case CheckColumn::stack:
    return {.title = Words::tr("Its stack"), .characters = 18, .wish = 40};
  case CheckColumn::chosen:
    return {.title = Words::tr("Chosen now"),
            .characters = 13,
            .toolTip = Words::tr("As the rules judge it today")};
  case CheckColumn::because:
    return {.title = Words::tr("Because of"), .characters = 16, .wish = 40};
  case CheckColumn::checked:
    return {.title = Words::tr("Checked"),
            .characters = 9,
            .toolTip = Words::tr("before: nothing that decides it has changed since it was checked")};
  case CheckColumn::count:
    break;
  }
  return {};
}

Cell CheckModel::cellOf(const CheckedHang& hang, CheckColumn column) const {
  switch (column) {
  case CheckColumn::show:
    return {.text = hang.show, .strong = true};
  case CheckColumn::hang:
    return {.text = hang.hang};
  case CheckColumn::options:
    return countCell(hang.options);
  case CheckColumn::holds:
    return countCell(hang.holds);
  case CheckColumn::tight:
    return countCell(hang.tight);
  case CheckColumn::unproven:
    return countCell(hang.unproven);
  case CheckColumn::fails:
    return countCell(hang.fails);
  case CheckColumn::best:
    return verdictCell(hang.best, hang.trouble.isEmpty() ? Words::tr("none") : Words::tr("not decided"), {});
  case CheckColumn::stack:
    return {.text = hang.bestStack, .toolTip = hang.bestStack};
  case CheckColumn::chosen:
    return verdictCell(hang.chosen, Words::tr("not chosen"), {});
  case CheckColumn::because: {
    const QString text = !hang.trouble.isEmpty() ? hang.trouble
                         : hang.chosen           ? rulesIn(hang.chosenBecause)
                                                 : rulesIn(hang.bestBecause);
    return {.text = text, .toolTip = text};
  }
  case CheckColumn::checked:
    return {.text = hang.kept ? Words::tr("before") : Words::tr("now")};
  case CheckColumn::count:
    break;
  }
  return {};
}

QString sumOf(const RouteCheck& check) {
  qint64 settings = 0;
  int without = 0;
  int chosenOpen = 0;
  for (const CheckedHang& each : check.hangs) {
    settings += each.settings;
    without += each.holds + each.tight == 0 ? 1 : 0;
    chosenOpen += each.chosen && *each.chosen > options::Verdict::tight ? 1 : 0;
  }
  QString text =
      Words::tr("%1 of %2 shows, %3 settings decided.").arg(check.shows).arg(check.all).arg(settings);
  text += without == 0 ? Words::tr(" Every hang has an option that stands.")
                       : Words::tr(" Hangs without an option that stands: %1.").arg(without);
  if (chosenOpen > 0) {
    text += Words::tr(" Chosen options that fail or are unproven today: %1.").arg(chosenOpen);
  }
  if (check.stopped) {
    text += Words::tr(
        " Stopped before the end; what was checked is kept, and the next check goes on from there.");
  }
  return text;
}

CheckPanel::CheckPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session),
      line_(new WorkLine(QStringLiteral("routeCheck"), tr("&Check the tour"), this)),
      afresh_(new QPushButton(tr("Check all a&fresh"), this)), table_(new QTableView(this)) {
  setObjectName(QStringLiteral("routeCheck"));
  afresh_->setObjectName(QStringLiteral("routeCheckAfresh"));
  afresh_->setToolTip(tr("Also what was checked before and has not changed since"));
  line_->addControl(afresh_);
  table_->setObjectName(QStringLiteral("routeCheckTable"));
  table_->setAccessibleName(tr("Check of the tour"));
  table_->setModel(&model_);
  prepareTable(*table_, model_, static_cast<int>(CheckColumn::because));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addWidget(line_);
  all->addWidget(table_, 1);
  connect(line_, &WorkLine::againAsked, this, [this] { check(false); });
  connect(afresh_, &QPushButton::clicked, this, [this] { check(true); });
  connect(line_, &WorkLine::cancelAsked, this, [this] {
    if (stop_) {
      stop_->store(true);
    }
  });
  connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) {
    Q_EMIT optionsWanted({checked_, model_.at(index.row()).show});
  });
  offer();
}

CheckPanel::~CheckPanel() {
  if (stop_) {
    stop_->store(true); // nobody is left to look at it
  }
}

void CheckPanel::setTour(const QString& tour) {
  if (tour == tour_) {
    return;
  }
  tour_ = tour;
  if (!stop_) {
    model_.setRows({});
    offer();
  }
}

void CheckPanel::offer() {
  afresh_->setEnabled(!tour_.isEmpty());
  if (tour_.isEmpty()) {
    line_->say(tr("No tour yet. Import one to check all of its shows."));
  } else {
    line_->offerAgain(
        tr("Checks every option of every show of %1, on all cores; what has not changed since it "
           "was checked is not checked again.")
            .arg(tour_));
  }
}

void CheckPanel::check(bool afresh) {
  if (stop_ || tour_.isEmpty()) {
    return;
  }
  stop_ = std::make_shared<std::atomic<bool>>(false);
  afresh_->setEnabled(false);
  checked_ = tour_;
  // Cancel does not drop the answer: what was done by then is shown.
  const auto watch = session_.checking().start(
      this,
      [source = session_.source(), tour = tour_, afresh, stop = stop_](Watch& told) {
        return planningOf(*source).checkTour(
            tour, afresh, [&told](double share) { told.setProgress(share); },
            [stop] { return stop->load(); });
      },
      [this](const RouteCheck& found) {
        stop_.reset();
        showFound(found);
      },
      [this](const std::exception_ptr& what) {
        stop_.reset();
        afresh_->setEnabled(true);
        line_->offerAgain(wordsFor(what, tr("What was checked by then is kept.")));
      });
  line_->working(tr("Checking every option of every show of %1 …").arg(tour_), watch);
}

void CheckPanel::showFound(const RouteCheck& found) {
  std::vector<CheckedHang> rows = found.hangs;
  for (CheckedHang& each : rows) {
    each.bestStack = stackText(each.bestTypes, session_.overview().catalogue);
  }
  model_.setRows(std::move(rows));
  afresh_->setEnabled(true);
  line_->offerAgain(sumOf(found));
  if (model_.rowCount() > 0) {
    table_->selectRow(0);
  }
}

} // namespace hangbook::desk
