// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/due_chart.h"

#include <algorithm>
#include <utility>

#include <QAreaSeries>
#include <QChart>
#include <QEvent>
#include <QLegend>
#include <QLegendMarker>
#include <QLineSeries>
#include <QLocale>
#include <QValueAxis>

#include "desk/examinations/due_model.h"
#include "desk/style/charts.h"
#include "desk/style/colours.h"

namespace hangbook::desk {
namespace {

constexpr int weeksShown = 52;

QDate mondayOf(QDate day) {
  return day.addDays(1 - day.dayOfWeek());
}

/// A block of the chart from one day to another.
QAreaSeries* block(QChart& chart, QDate from, QDate to, double height, const QColor& fill,
                   Qt::BrushStyle how) {
  auto* upper = new QLineSeries(&chart);
  upper->replace(QList<QPointF>{{chartDay(from), height}, {chartDay(to), height}});
  auto* lower = new QLineSeries(&chart);
  lower->replace(QList<QPointF>{{chartDay(from), 0.0}, {chartDay(to), 0.0}});
  auto* area = new QAreaSeries(upper, lower);
  area->setPen(Qt::NoPen);
  area->setBrush(QBrush(fill, how));
  return area;
}

} // namespace

std::vector<int> dueByWeek(const std::vector<calendar::Planned>& due, QDate today, int weeks) {
  std::vector<int> counts(static_cast<std::size_t>(weeks), 0);
  const QDate first = mondayOf(today);
  for (const calendar::Planned& each : due) {
    if (!isOverdue(each.due)) {
      const auto week = first.daysTo(each.due.due) / 7;
      if (week >= 0 && week < weeks) {
        ++counts[static_cast<std::size_t>(week)];
      }
    }
  }
  return counts;
}

DueChart::DueChart(QWidget* parent) : QChartView(parent) {
  setObjectName(QStringLiteral("dueChart"));
  setAccessibleName(tr("Examinations that fall due week by week, against the route"));
  prepareChart(*this);
  setMinimumHeight(170);
}

void DueChart::setFacts(const std::vector<calendar::Planned>& due, const std::vector<calendar::Show>& shows,
                        QDate today) {
  weeks_ = dueByWeek(due, today, weeksShown);
  overdue_ = static_cast<int>(
      std::ranges::count_if(due, [](const calendar::Planned& each) { return isOverdue(each.due); }));
  shows_ = shows;
  today_ = today;
  QStringList says{tr("%1 overdue or without a record.").arg(overdue_)};
  for (std::size_t i = 0; i < weeks_.size(); ++i) {
    if (weeks_[i] > 0) {
      says << tr("Week of %1: %2.")
                  .arg(QLocale().toString(mondayOf(today).addDays(7 * static_cast<qint64>(i)),
                                          QLocale::ShortFormat))
                  .arg(weeks_[i]);
    }
  }
  setAccessibleDescription(says.join(QLatin1Char(' ')));
  draw();
}

void DueChart::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    draw();
  }
}

void DueChart::draw() {
  if (!today_.isValid()) {
    return;
  }
  const Colours& colours = coloursOf(palette());
  emptyChart(*chart());
  const QDate first = mondayOf(today_);
  const QDate last = first.addDays(7 * weeksShown);
  const int most = weeks_.empty() ? 0 : *std::ranges::max_element(weeks_);
  const double top = std::max(most, 1) * 1.15;
  std::vector<QAreaSeries*> blocks;
  QString legendAway = tr("gear away");
  for (const calendar::Show& show : shows_) {
    const QDate from = std::max(show.awayFrom.isValid() ? show.awayFrom : show.from, first);
    const QDate to = std::min((show.awayTo.isValid() ? show.awayTo : show.to).addDays(1), last);
    if (from.isValid() && to.isValid() && from < to) {
      blocks.push_back(block(*chart(), from, to, top, colours.line, Qt::SolidPattern));
      blocks.back()->setName(std::exchange(legendAway, {}));
    }
  }
  QString legendDue = tr("fall due in the week");
  for (std::size_t i = 0; i < weeks_.size(); ++i) {
    if (weeks_[i] > 0) {
      const QDate monday = first.addDays(7 * static_cast<qint64>(i));
      blocks.push_back(
          block(*chart(), monday.addDays(1), monday.addDays(6), weeks_[i], colours.accent, Qt::SolidPattern));
      blocks.back()->setName(std::exchange(legendDue, {}));
    }
  }
  QAbstractAxis* across = monthAxis(first, last);
  auto* up = new QValueAxis;
  up->setRange(0.0, top);
  up->setLabelFormat(QStringLiteral("%.0f"));
  up->setTickType(QValueAxis::TicksDynamic);
  up->setTickInterval(evenStep(most));
  chart()->addAxis(across, Qt::AlignBottom);
  chart()->addAxis(up, Qt::AlignLeft);
  for (QAreaSeries* each : blocks) {
    chart()->addSeries(each);
    each->attachAxis(across);
    each->attachAxis(up);
    const bool named = !each->name().isEmpty();
    for (QLegendMarker* marker : chart()->legend()->markers(each)) {
      marker->setVisible(named);
    }
  }
  across->setGridLineVisible(false);
  dressChart(*this);
}

} // namespace hangbook::desk
