// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/stock_page.h"

#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QSplitter>
#include <QVBoxLayout>

#include "desk/fleet/stock_chart.h"
#include "desk/style/scale.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {

StockPage::StockPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session),
      page_(new ListPage(QStringLiteral("stockList"), tr("Stock"), types_,
                         static_cast<int>(StockColumn::takers), static_cast<int>(StockColumn::free),
                         Qt::AscendingOrder, this)),
      day_(new QDateEdit(this)), says_(new QLabel(this)), lacksText_(new QLabel(this)),
      lacksTable_(new QTableView(this)), lacksPart_(new QWidget(this)), chart_(new StockChart(this)) {
  setObjectName(QStringLiteral("stockPage"));
  page_->setEmptyTexts(tr("No units and no demand yet. Import your gear list as a CSV file."),
                       tr("No type contains these words."));
  day_->setObjectName(QStringLiteral("stockDay"));
  day_->setAccessibleName(tr("The day that is looked at"));
  day_->setCalendarPopup(true);
  day_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
  auto* dayText = new QLabel(tr("&Day"), this);
  dayText->setBuddy(day_);
  page_->addControl(dayText);
  page_->addControl(day_);
  says_->setObjectName(QStringLiteral("stockSays"));
  says_->setWordWrap(true);
  lacksText_->setObjectName(QStringLiteral("shortageText"));
  lacksText_->setFont(fontFor(TextSize::heading, font()));
  lacksText_->setWordWrap(true);
  lacksTable_->setObjectName(QStringLiteral("shortageTable"));
  lacksTable_->setAccessibleName(tr("What shows to come lack"));
  lacksTable_->setModel(&lacks_);
  prepareTable(*lacksTable_, lacks_, static_cast<int>(ShortageColumn::fill));
  auto* upper = new QWidget(this);
  auto* inUpper = new QVBoxLayout(upper);
  inUpper->setContentsMargins(0, 0, 0, 0);
  inUpper->setSpacing(space::step);
  inUpper->addWidget(page_, 1);
  inUpper->addWidget(says_);
  auto* inLower = new QVBoxLayout(lacksPart_);
  inLower->setContentsMargins(0, space::step, 0, 0);
  inLower->setSpacing(space::step);
  inLower->addWidget(lacksText_);
  inLower->addWidget(lacksTable_, 1);
  auto* both = new QSplitter(Qt::Vertical, this);
  both->setObjectName(QStringLiteral("stockHalves"));
  both->setChildrenCollapsible(false);
  both->addWidget(upper);
  both->addWidget(chart_);
  both->addWidget(lacksPart_);
  both->setStretchFactor(0, 3);
  both->setStretchFactor(1, 1);
  both->setStretchFactor(2, 1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::step, 0, 0);
  all->addWidget(both);
  connect(page_, &ListPage::currentRowChanged, this, &StockPage::lookThroughTime);
  connect(day_, &QDateEdit::dateChanged, this, [this] { look(); });
  session_.keepUp(this, [this] { showFacts(); });
  showFacts();
}

void StockPage::showFacts() {
  const QDate today = session_.overview().today;
  if (today.isValid() && day_->minimumDate() != today) {
    // Days that are gone are the movements' to tell; what is examined then, or chosen, is not kept by day.
    const bool first = !session_.loaded() || day_->date() < today || lacksText_->text().isEmpty();
    const QSignalBlocker quiet(day_);
    day_->setMinimumDate(today);
    if (first) {
      day_->setDate(today);
    }
  }
  look();
}

void StockPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) {
    look();
  }
}

void StockPage::look() {
  if (looking_) {
    looking_->cancel();
    looking_.reset();
  }
  stale_ = true;
  if (!isVisible() || !session_.loaded()) {
    return;
  }
  stale_ = false;
  looking_ = session_.judging().start(
      this, [facts = session_.facts(), day = day_->date()](Watch&) { return stockLook(*facts, day); },
      [this](StockLook found) {
        looking_.reset();
        show(std::move(found));
      },
      [this](const std::exception_ptr& what) {
        looking_.reset();
        Q_EMIT session_.trouble(wordsFor(what, tr("Stock and demand could not be compared.")));
      });
}

/// Of the selected type; where none is selected, of the one that there is least of.
void StockPage::lookThroughTime() {
  if (lookingThrough_) {
    lookingThrough_->cancel();
    lookingThrough_.reset();
  }
  const int row = page_->currentRow() >= 0 ? page_->currentRow()
                  : page_->proxy().rowCount() > 0
                      ? page_->proxy().mapToSource(page_->proxy().index(0, 0)).row()
                      : -1;
  chart_->setVisible(row >= 0);
  if (row < 0) {
    return;
  }
  const options::TypeOnDay& line = types_.at(row);
  lookingThrough_ = session_.judging().start(
      this,
      [facts = session_.facts(), kind = line.kind, type = line.type](Watch&) {
        return typeThroughTime(*facts, kind, type);
      },
      [this](TypeThroughTime found) {
        lookingThrough_.reset();
        chart_->setType(std::move(found));
      },
      [this](const std::exception_ptr& what) {
        lookingThrough_.reset();
        Q_EMIT session_.trouble(wordsFor(what, tr("Stock and demand could not be compared.")));
      });
}

void StockPage::show(StockLook look) {
  const int before = page_->currentRow();
  const QString kept = before < 0 ? QString() : types_.at(before).type;
  QStringList says;
  says << (look.away.isEmpty()
               ? tr("On %1 no show is away.").arg(dateText(look.day))
               : tr("Away on %1: %2.").arg(dateText(look.day), look.away.join(QStringLiteral(", "))));
  if (look.hangsNotChosen > 0) {
    says << tr("Nothing is chosen yet for %1 hangs: what they will take is not counted.")
                .arg(look.hangsNotChosen);
  }
  says_->setText(says.join(QLatin1Char(' ')));
  const auto lacks = static_cast<int>(look.shortages.size());
  lacksText_->setText(lacks == 0 ? (look.hangsNotChosen > 0
                                        ? tr("No show to come lacks anything of what is chosen so far")
                                        : tr("No show to come lacks anything"))
                                 : tr("What shows to come lack"));
  lacksTable_->setVisible(lacks > 0);
  // Nothing to list takes one line, not a quarter of the page.
  lacksPart_->setMaximumHeight(lacks > 0 ? QWIDGETSIZE_MAX
                                         : lacksText_->sizeHint().height() + 2 * space::step);
  types_.setRows(std::move(look.types));
  lacks_.setRows(std::move(look.shortages));
  if (kept.isEmpty() || !page_->select(kept)) {
    lookThroughTime();
  }
}

} // namespace hangbook::desk
