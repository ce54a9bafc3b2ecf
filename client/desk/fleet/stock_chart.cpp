// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/stock_chart.h"

#include <algorithm>
#include <iterator>
#include <set>

#include <QAreaSeries>
#include <QChart>
#include <QEvent>
#include <QLineSeries>
#include <QValueAxis>

#include "desk/fleet/stock_look.h"
#include "desk/style/charts.h"
#include "desk/style/colours.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

/// A line of steps: each figure stands until the next one that differs.
QList<QPointF> steps(const std::vector<QDate>& days, const std::vector<int>& figures) {
  QList<QPointF> line{{chartDay(days.front()), static_cast<double>(figures.front())}};
  for (std::size_t i = 1; i < days.size(); ++i) {
    if (figures[i] != figures[i - 1]) {
      line << QPointF(chartDay(days[i]), figures[i - 1]) << QPointF(chartDay(days[i]), figures[i]);
    }
  }
  line << QPointF(chartDay(days.back()), figures.back());
  return line;
}

QString inWords(const TypeThroughTime& type) {
  for (std::size_t i = 0; i < type.days.size(); ++i) {
    if (type.wanted[i] > type.fit[i]) {
      return StockChart::tr("%1: short for the first time on %2, %3 wanted and %4 fit.")
          .arg(type.type, dateText(type.days[i]))
          .arg(type.wanted[i])
          .arg(type.fit[i]);
    }
  }
  return StockChart::tr("%1: never short within a year.").arg(type.type);
}

} // namespace

TypeThroughTime typeThroughTime(const Overview& overview, fleet::UnitKind kind, const QString& type) {
  options::Stock stock{{}, overview.rules, {}, {}};
  std::set<QString> serials;
  for (const fleet::Unit& unit : overview.units) {
    if (unit.kind == kind && unit.type == type) {
      stock.units.push_back(unit);
      serials.insert(unit.serial);
    }
  }
  const auto isOurs = [&](const auto& fact) { return serials.contains(fact.serial); };
  std::ranges::copy_if(overview.examinations, std::back_inserter(stock.examinations), isOurs);
  std::ranges::copy_if(overview.occurrences, std::back_inserter(stock.occurrences), isOurs);
  const std::vector<options::Demand> demands = demandsOf(overview, overview.today);
  const QDate end = overview.today.addYears(1);
  std::set<QDate> days;
  for (QDate day = overview.today; day <= end; day = day.addDays(7)) {
    days.insert(day);
  }
  for (const options::Demand& each : demands) {
    for (const QDate& day : {each.from, each.to.addDays(1)}) {
      if (day > overview.today && day <= end) {
        days.insert(day);
      }
    }
  }
  TypeThroughTime through;
  through.type = type;
  through.days.assign(days.begin(), days.end());
  for (const options::TypeOnDay& each : options::typeOverDays(kind, type, through.days, stock, demands)) {
    through.fit.push_back(each.fit());
    through.wanted.push_back(each.wanted);
  }
  return through;
}

StockChart::StockChart(QWidget* parent) : QChartView(parent) {
  setObjectName(QStringLiteral("stockChart"));
  setAccessibleName(tr("Stock of the selected type against demand"));
  prepareChart(*this);
  setMinimumHeight(150);
}

void StockChart::setType(TypeThroughTime type) {
  type_ = std::move(type);
  setAccessibleDescription(inWords(type_));
  draw();
}

void StockChart::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    draw();
  }
}

void StockChart::draw() {
  emptyChart(*chart());
  if (type_.days.size() < 2) {
    return;
  }
  const Colours& colours = coloursOf(palette());
  auto* upper = new QLineSeries(chart());
  upper->replace(steps(type_.days, type_.wanted));
  auto* lower = new QLineSeries(chart());
  lower->replace(QList<QPointF>{{chartDay(type_.days.front()), 0.0}, {chartDay(type_.days.back()), 0.0}});
  auto* wanted = new QAreaSeries(upper, lower); // the chart takes it
  wanted->setName(tr("wanted by shows"));
  wanted->setPen(QPen(colours.frame, 1.0));
  wanted->setBrush(colours.line);
  auto* fit = new QLineSeries;
  fit->setName(tr("%1, fit for use").arg(type_.type));
  fit->setPen(QPen(colours.accent, 2.0));
  fit->replace(steps(type_.days, type_.fit));
  const int most = std::max({1, std::ranges::max(type_.fit), std::ranges::max(type_.wanted)});
  auto* up = new QValueAxis;
  up->setRange(0.0, most * 1.15);
  up->setLabelFormat(QStringLiteral("%.0f"));
  up->setTickType(QValueAxis::TicksDynamic);
  up->setTickInterval(evenStep(most));
  QAbstractAxis* across = monthAxis(type_.days.front(), type_.days.back());
  chart()->addAxis(across, Qt::AlignBottom);
  chart()->addAxis(up, Qt::AlignLeft);
  for (QAbstractSeries* each : std::initializer_list<QAbstractSeries*>{wanted, fit}) {
    chart()->addSeries(each);
    each->attachAxis(across);
    each->attachAxis(up);
  }
  across->setGridLineVisible(false);
  dressChart(*this);
}

} // namespace hangbook::desk
