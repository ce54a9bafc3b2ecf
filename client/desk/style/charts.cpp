// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/charts.h"

#include <QAbstractAxis>
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
  chart.legend()->setLabelColor(colours.text);
  chart.legend()->setFont(note);
  chart.legend()->setAlignment(Qt::AlignTop);
}

} // namespace hangbook::desk
