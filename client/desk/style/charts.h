// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChartView>
#include <QDate>

class QAbstractAxis;

namespace hangbook::desk {

/// What every chart of ours has in common before anything is drawn in it: still, flat, out of the keyboard's
/// way.
void prepareChart(QChartView& view);

/// Takes everything off a chart, its axes too.
void emptyChart(QChart& chart);

/// A day as charts place it: milliseconds at its beginning, UTC.
double chartDay(const QDate& day);

/// Days across, with the first of each month named. The chart takes it.
QAbstractAxis* monthAxis(const QDate& from, const QDate& to);

/// 1, 2, 5, 10, 20 … so that about four lines stand in a chart that goes up to `most`.
double evenStep(int most);

/// Puts colours and size of text to a chart and its axes as they are now.
void dressChart(QChartView& view);

} // namespace hangbook::desk
