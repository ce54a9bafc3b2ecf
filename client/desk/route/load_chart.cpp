// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/load_chart.h"

#include <algorithm>
#include <memory>

#include <QBarCategoryAxis>
#include <QBarSeries>
#include <QBarSet>
#include <QChart>
#include <QEvent>
#include <QValueAxis>

#include "desk/style/charts.h"
#include "desk/style/colours.h"

namespace hangbook::desk {
namespace {

constexpr double kilonewtonsPerPoundForce = 0.0044482216152605;

double inUnitOf(double kilonewtons, const Figures& figures) {
  return figures.system() == UnitSystem::metric ? kilonewtons : kilonewtons / kilonewtonsPerPoundForce;
}

} // namespace

std::span<const Stop> stopsAround(const std::vector<Stop>& stops, const ShowKey& show) {
  if (stops.size() <= mostBars) {
    return stops;
  }
  const auto at = std::find_if(stops.begin(), stops.end(), [&show](const Stop& each) {
    return ShowKey{each.show.tour, each.show.name} == show;
  });
  const auto before = static_cast<std::size_t>(at - stops.begin());
  const std::size_t from =
      std::min(before < mostBars / 2 ? 0 : before - mostBars / 2, stops.size() - mostBars);
  return std::span(stops).subspan(from, mostBars);
}

QString describeLoads(std::span<const Stop> stops, const Figures& figures) {
  QStringList says;
  for (const Stop& each : stops) {
    if (each.heaviestKn) {
      says << LoadChart::tr("%1: point %2 carries %3 of %4.")
                  .arg(each.show.name, each.heaviestPoint, figures.force(each.heaviestKn),
                       figures.force(each.heaviestCapacityKn));
    }
  }
  return says.isEmpty() ? LoadChart::tr("Nothing is chosen yet, so there are no loads to show.")
                        : says.join(QLatin1Char(' '));
}

LoadChart::LoadChart(QWidget* parent) : QChartView(parent) {
  setObjectName(QStringLiteral("loadChart"));
  setAccessibleName(tr("Heaviest point of each stop"));
  prepareChart(*this);
  setMinimumHeight(140);
}

void LoadChart::setStops(const std::vector<Stop>& stops, const Figures& figures) {
  stops_ = stops;
  figures_ = figures;
  draw();
}

void LoadChart::showAround(const ShowKey& show) {
  if (show == around_) {
    return;
  }
  around_ = show;
  if (stops_.size() > mostBars) {
    draw();
  }
}

void LoadChart::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    draw();
  }
}

void LoadChart::draw() {
  const Colours& colours = coloursOf(palette());
  const std::span<const Stop> shown = stopsAround(stops_, around_);
  setAccessibleDescription(describeLoads(shown, figures_));
  emptyChart(*chart());
  chart()->setTitle(shown.size() == stops_.size()
                        ? QString()
                        : tr("Stops %1 to %2 of %3")
                              .arg(shown.data() - stops_.data() + 1)
                              .arg(shown.data() - stops_.data() + static_cast<std::ptrdiff_t>(shown.size()))
                              .arg(stops_.size()));
  auto load = std::make_unique<QBarSet>(tr("heaviest point, at rest"));
  auto capacity = std::make_unique<QBarSet>(tr("what it may carry"));
  QStringList names;
  double most = 0.0;
  for (const Stop& each : shown) {
    names << each.show.name;
    const double carries = inUnitOf(each.heaviestKn.value_or(0.0), figures_);
    const double may = inUnitOf(each.heaviestCapacityKn.value_or(0.0), figures_);
    *load << carries;
    *capacity << may; // not known: no bar; the list and the description say so
    most = std::max({most, carries, may});
  }
  load->setColor(colours.accent);
  load->setBorderColor(colours.accent);
  capacity->setColor(colours.line);
  capacity->setBorderColor(colours.frame);
  auto* series = new QBarSeries; // the chart takes it
  series->setBarWidth(0.6);
  series->append(load.release());
  series->append(capacity.release());
  chart()->addSeries(series);
  auto* across = new QBarCategoryAxis;
  across->append(names);
  auto* up = new QValueAxis;
  up->setRange(0.0, std::max(most * 1.08, 1.0));
  up->setLabelFormat(QStringLiteral("%.0f"));
  up->setTitleText(QString::fromUtf8(unitOf<Force>(figures_.system())));
  up->applyNiceNumbers();
  chart()->addAxis(across, Qt::AlignBottom);
  chart()->addAxis(up, Qt::AlignLeft);
  series->attachAxis(across);
  series->attachAxis(up);
  across->setGridLineVisible(false);
  dressChart(*this);
}

} // namespace hangbook::desk
