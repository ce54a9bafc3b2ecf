// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/charts.h"

#include <QAbstractAxis>
#include <QCategoryAxis>
#include <QChart>
#include <QGraphicsLayout>
#include <QLegend>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

void prepareChart(QChartView& view) {
  view.setRenderHint(QPainter::Antialiasing);
  view.setFrameShape(QFrame::NoFrame);
  view.setFocusPolicy(Qt::NoFocus);
  view.viewport()->setFocusPolicy(Qt::NoFocus);
  QChart& chart = *view.chart();
  chart.setAnimationOptions(QChart::NoAnimation);
  chart.setMargins(QMargins(space::small, space::small, space::small, space::small));
  chart.setBackgroundRoundness(0);
  chart.layout()->setContentsMargins(0, 0, 0, 0);
}

void emptyChart(QChart& chart) {
  chart.removeAllSeries();
  for (QAbstractAxis* axis : chart.axes()) {
    chart.removeAxis(axis);
    delete axis;
  }
}

double chartDay(const QDate& day) {
  return static_cast<double>(QDateTime(day, QTime(0, 0), Qt::UTC).toMSecsSinceEpoch());
}

QAbstractAxis* monthAxis(const QDate& from, const QDate& to) {
  auto* axis = new QCategoryAxis;
  axis->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
  axis->setRange(chartDay(from), chartDay(to));
  axis->setStartValue(chartDay(from));
  constexpr int roomDays = 12; // of half a name beside the edges
  for (QDate first(from.year(), from.month(), 1); first <= to; first = first.addMonths(1)) {
    if (first >= from.addDays(roomDays) && first.addDays(roomDays) <= to) {
      axis->append(first.toString(QStringLiteral("yyyy-MM")), chartDay(first));
    }
  }
  return axis;
}

double evenStep(int most) {
  double step = 1.0;
  for (int i = 0; most / step > 5.0; ++i) {
    step *= i % 3 == 1 ? 2.5 : 2.0;
  }
  return step;
}

void dressChart(QChartView& view) {
  const Colours& colours = coloursOf(view.palette());
  const QFont note = fontFor(TextSize::note, view.font());
  QChart& chart = *view.chart();
  for (QAbstractAxis* axis : chart.axes()) {
    axis->setLabelsColor(colours.text);
    axis->setLabelsFont(note);
    axis->setTitleFont(note);
    axis->setTitleBrush(colours.text);
    axis->setGridLineColor(colours.line);
    axis->setLinePenColor(colours.frame);
  }
  chart.setBackgroundBrush(colours.sheet);
  chart.setTitleFont(note);
  chart.setTitleBrush(colours.text);
  chart.legend()->setLabelColor(colours.text);
  chart.legend()->setFont(note);
  chart.legend()->setAlignment(Qt::AlignTop);
}

} // namespace hangbook::desk
