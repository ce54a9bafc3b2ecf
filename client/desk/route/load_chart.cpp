// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/load_chart.h"

#include <algorithm>
#include <memory>

#include <QBarSeries>
#include <QBarSet>
#include <QCategoryAxis>
#include <QChart>
#include <QEvent>
#include <QValueAxis>

#include "desk/style/charts.h"
#include "desk/style/colours.h"
#include "desk/style/scale.h"

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

void LoadChart::resizeEvent(QResizeEvent* event) {
  QChartView::resizeEvent(event);
  if (namedStep() != step_) {
    draw();
  }
}

std::span<const Stop> LoadChart::shown() const {
  return stopsAround(stops_, around_);
}

int LoadChart::namedStep() const {
  constexpr int axis = 60; // with its title and figures
  const QFontMetrics metrics(fontFor(TextSize::note, font()));
  int widest = 1;
  for (const Stop& each : shown()) {
    widest = std::max(widest, metrics.horizontalAdvance(each.show.name) + space::wide);
  }
  const int room = std::max(1, width() - axis);
  return std::max(1, (static_cast<int>(shown().size()) * widest + room - 1) / room);
}

bool LoadChart::anyLoad() const {
  return std::ranges::any_of(shown(), [](const Stop& each) { return each.heaviestKn.has_value(); });
}

/// Axes without anything on them would say nothing.
void LoadChart::drawForeground(QPainter* painter, const QRectF& rect) {
  QChartView::drawForeground(painter, rect);
  if (!anyLoad()) {
    painter->save();
    painter->resetTransform();
    painter->setFont(font());
    painter->setPen(coloursOf(palette()).quiet);
    painter->drawText(viewport()->rect(), Qt::AlignCenter, describeLoads(shown(), figures_));
    painter->restore();
  }
}

void LoadChart::draw() {
  step_ = namedStep();
  const Colours& colours = coloursOf(palette());
  const std::span<const Stop> shown = this->shown();
  setAccessibleDescription(describeLoads(shown, figures_));
  emptyChart(*chart());
  chart()->setTitle(shown.size() == stops_.size()
                        ? QString()
                        : tr("Stops %1 to %2 of %3")
                              .arg(shown.data() - stops_.data() + 1)
                              .arg(shown.data() - stops_.data() + static_cast<std::ptrdiff_t>(shown.size()))
                              .arg(stops_.size()));
  if (!anyLoad()) {
    dressChart(*this);
    return;
  }
  auto load = std::make_unique<QBarSet>(tr("heaviest point, at rest"));
  auto capacity = std::make_unique<QBarSet>(tr("what it may carry"));
  auto across = std::make_unique<QCategoryAxis>();
  across->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
  across->setRange(-0.5, static_cast<double>(shown.size()) - 0.5);
  across->setStartValue(-0.5);
  int place = 0;
  double most = 0.0;
  for (const Stop& each : shown) {
    if (place % step_ == 0) {
      // An axis has each label once; two shows of a tour may have one name.
      const bool again = across->categoriesLabels().contains(each.show.name);
      across->append(again ? each.show.name + QString(place, QChar(0x200B)) : each.show.name, place);
    }
    ++place;
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
  auto* up = new QValueAxis;
  up->setRange(0.0, std::max(most * 1.08, 1.0));
  up->setLabelFormat(QStringLiteral("%.0f"));
  up->setTitleText(QString::fromUtf8(unitOf<Force>(figures_.system())));
  up->applyNiceNumbers();
  across->setGridLineVisible(false);
  chart()->addAxis(across.get(), Qt::AlignBottom);
  chart()->addAxis(up, Qt::AlignLeft);
  series->attachAxis(across.release()); // the chart has taken it
  series->attachAxis(up);
  dressChart(*this);
}

} // namespace hangbook::desk
