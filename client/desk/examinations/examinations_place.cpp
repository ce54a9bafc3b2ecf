// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/examinations_place.h"

#include <algorithm>
#include <iterator>

#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QSplitter>
#include <QVBoxLayout>

#include "actions/fleet_work.h"
#include "desk/examinations/due_chart.h"
#include "desk/examinations/examine_form.h"
#include "desk/fleet/fleet_place.h"
#include "desk/frame/place_names.h"
#include "desk/style/scale.h"
#include "exchange/due_calendar.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

/// What "where it is best done" offers: one line for each visit of the year.
QString visitInWords(const calendar::Visit& visit) {
  const auto count = static_cast<int>(visit.units.size());
  return ExaminationsPlace::tr("%1: %2").arg(bestInWords(visit.units.front())).arg(count);
}

/// Of one stay at one place; the last day differs from unit to unit.
bool isSameVisit(const calendar::Slot& one, const calendar::Slot& other) {
  return one.place == other.place && one.from == other.from && one.warehouse == other.warehouse;
}

} // namespace

ExaminationsPlace::ExaminationsPlace(Session& session, QWidget* parent)
    : Place(place::examinations, tr("Examinations"), parent), session_(session),
      page_(new ListPage(QStringLiteral("dueList"), tr("Examinations"), model_,
                         static_cast<int>(DueColumn::best), static_cast<int>(DueColumn::due),
                         Qt::AscendingOrder, this)),
      chart_(new DueChart(this)), form_(new ExamineForm(this)), visits_(new QComboBox(this)),
      hidden_(new QLabel(this)), written_(new QLabel(this)),
      fileAsker_([this] { return QFileDialog::getOpenFileName(this, tr("File of the certificate")); }),
      calendarAsker_([this] {
        return QFileDialog::getSaveFileName(this, tr("Calendar file"), QStringLiteral("due.ics"),
                                            tr("Calendar (*.ics)"));
      }) {
  page_->setEmptyTexts(tr("No unit owes an examination. Enter units and examination rules, or import them."),
                       tr("No line contains these words."));
  visits_->setObjectName(QStringLiteral("dueVisits"));
  visits_->setAccessibleName(tr("Where it is best examined"));
  visits_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  visits_->setMinimumContentsLength(26);
  page_->addControl(visits_);
  auto* calendar = new QPushButton(tr("Calen&dar file…"), this);
  calendar->setObjectName(QStringLiteral("dueCalendar"));
  calendar->setToolTip(
      tr("What falls due within a year as a file that calendar programs read (iCalendar); a search "
         "leaves nothing out of it."));
  page_->addControl(calendar);
  connect(calendar, &QPushButton::clicked, this, &ExaminationsPlace::writeCalendar);
  written_->setObjectName(QStringLiteral("dueWritten"));
  written_->setWordWrap(true);
  written_->hide();
  hidden_->setObjectName(QStringLiteral("dueHidden"));
  hidden_->setWordWrap(true);
  hidden_->hide();
  auto* lists = new QWidget(this);
  auto* inLists = new QVBoxLayout(lists);
  inLists->setContentsMargins(0, 0, 0, 0);
  inLists->setSpacing(space::step);
  inLists->addWidget(written_);
  inLists->addWidget(hidden_);
  inLists->addWidget(page_, 1);
  auto* left = new QSplitter(Qt::Vertical, this);
  left->setObjectName(QStringLiteral("examinationsLeft"));
  left->setChildrenCollapsible(false);
  left->addWidget(chart_);
  left->addWidget(lists);
  left->setStretchFactor(0, 0);
  left->setStretchFactor(1, 1);
  left->setSizes({190, 600});
  auto* both = new QSplitter(Qt::Horizontal, this);
  both->setObjectName(QStringLiteral("examinationsHalves"));
  both->setChildrenCollapsible(false);
  both->setHandleWidth(space::wide);
  both->addWidget(left);
  both->addWidget(form_);
  both->setStretchFactor(0, 1);
  both->setStretchFactor(1, 0);
  form_->setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 36);
  setContent(both);
  session_.keepUp(this, [this] { showFacts(); });
  connect(page_, &ListPage::currentRowChanged, this, [this] { showSubject(); });
  connect(visits_, &QComboBox::currentIndexChanged, this, [this] {
    keepVisit();
    showHidden();
  });
  connect(&page_->proxy(), &SortFilter::shownChanged, this, [this] { showHidden(); });
  connect(form_, &ExamineForm::recordAsked, this, &ExaminationsPlace::record);
  connect(form_, &ExamineForm::fileAsked, this, [this] {
    if (const QString name = fileAsker_(); !name.isEmpty()) {
      form_->setFile(name);
    }
  });
  showFacts();
}

QString ExaminationsPlace::explanation() const {
  return tr(
      "Every unit and every examination that it owes, earliest first. “Stands until” is the last day on "
      "which the last examination stands: months are counted so that the day is never overshot. “Best "
      "examined” names the last days at the warehouse before that, or the last stop of the route, so that "
      "the fewest units are missed; “ahead” says that it falls due while the gear is away. The chart shows "
      "how many fall due in each week, against the days on which the gear is away.\n\nSelect a line, give "
      "the "
      "result, and record it. A failed examination quarantines the unit at once. What is overdue is never "
      "hidden without a word, whatever is searched for.");
}

void ExaminationsPlace::showKey(const QString& key) {
  page_->showKey(key);
}

void ExaminationsPlace::takeFocus() {
  page_->table().setFocus();
}

void ExaminationsPlace::showFacts() {
  const Overview& overview = session_.overview();
  const int row = page_->currentRow();
  const QString kept = row < 0 ? QString() : model_.at(row)->due.serial;
  const auto never = std::count_if(overview.due.begin(), overview.due.end(),
                                   [](const calendar::Planned& each) { return !each.due.last.isValid(); });
  const auto overdue =
      std::count_if(overview.due.begin(), overview.due.end(), [](const calendar::Planned& each) {
        return each.due.last.isValid() && isOverdue(each.due);
      });
  setNote(tr("%1 overdue · %2 without a record").arg(overdue).arg(never));
  model_.setFacts(session_.facts());
  chart_->setFacts(overview.due, overview.shows, overview.today);
  form_->setPeople(overview.people, overview.atDesk, overview.today);
  showVisits();
  if (!kept.isEmpty()) {
    page_->select(kept);
  }
  showSubject();
  showHidden();
}

void ExaminationsPlace::showVisits() {
  const int row = visits_->currentIndex();
  const std::optional<calendar::Slot> chosen =
      row > 0 ? std::optional(slots_[static_cast<std::size_t>(row) - 1]) : std::nullopt;
  const QSignalBlocker quiet(visits_);
  visits_->clear();
  slots_.clear();
  visits_->addItem(tr("Wherever it is best done"));
  const QDate until = session_.overview().today.addYears(1);
  for (const calendar::Visit& visit : session_.overview().visits) {
    if (visit.slot.to <= until && !isOverdue(visit.units.front().due)) {
      visits_->addItem(visitInWords(visit));
      slots_.push_back(visit.slot);
      if (chosen && isSameVisit(*chosen, visit.slot)) {
        visits_->setCurrentIndex(visits_->count() - 1);
      }
    }
  }
  keepVisit();
}

void ExaminationsPlace::keepVisit() {
  const int row = visits_->currentIndex();
  if (row <= 0) {
    page_->proxy().setKeeps({});
    return;
  }
  page_->proxy().setKeeps([this, slot = slots_[static_cast<std::size_t>(row) - 1]](int source) {
    const calendar::Planned& line = *model_.at(source);
    return isSameVisit(line.slot, slot) && !isOverdue(line.due);
  });
}

/// Nothing that is overdue is hidden without a word.
void ExaminationsPlace::showHidden() {
  int shown = 0;
  int all = 0;
  for (int row = 0; row < model_.rowCount(); ++row) {
    if (isOverdue(model_.at(row)->due)) {
      ++all;
      shown += page_->proxy().mapFromSource(model_.index(row, 0)).isValid() ? 1 : 0;
    }
  }
  hidden_->setText(tr("%1 overdue or never examined that this search leaves out.").arg(all - shown));
  hidden_->setVisible(all > shown);
}

void ExaminationsPlace::showSubject() {
  const int row = page_->currentRow();
  form_->setSubject(row < 0 ? std::nullopt : std::optional(model_.at(row)->due));
}

void ExaminationsPlace::writeCalendar() {
  const QString name = calendarAsker_();
  if (name.isEmpty()) {
    return;
  }
  session_.judging().start(
      this,
      [facts = session_.facts(), name](Watch&) {
        std::vector<calendar::Planned> due;
        const QDate until = facts->today.addYears(1);
        std::ranges::copy_if(facts->due, std::back_inserter(due), [&](const calendar::Planned& each) {
          return isOverdue(each.due) || each.due.due <= until;
        });
        const QByteArray bytes = exchange::dueAsCalendar(due, QDateTime::currentDateTimeUtc());
        QSaveFile file(name);
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
          throw Error(Trouble::badInput,
                      "the file could not be written (" + file.errorString().toStdString() + ")",
                      name.toStdString());
        }
        return static_cast<int>(due.size());
      },
      [this, name](int count) {
        written_->setText(tr("%1 examinations due within a year are in %2.").arg(count).arg(name));
        written_->show();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(wordsFor(what, tr("No calendar was written.")));
      });
}

void ExaminationsPlace::record() {
  const fleet::Examination fact = form_->typed();
  session_.work().start(
      this,
      [source = session_.source(), fact, files = form_->files()](Watch&) {
        return source->examine(fact, files);
      },
      [this, serial = fact.serial](const actions::Recorded& what) {
        form_->clearTyped();
        const QString follows = followsFrom(serial, what);
        form_->tell(follows.isEmpty() ? tr("%1 is recorded.").arg(serial)
                                      : tr("%1 is recorded. %2").arg(serial, follows));
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(wordsFor(
            what, tr("The examination was not recorded; what you typed is still there. Try again.")));
      });
}

} // namespace hangbook::desk
