// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChartView>

namespace hangbook::desk {

/// What every chart of ours has in common before anything is drawn in it: still, flat, out of the keyboard's
/// way.
void prepareChart(QChartView& view);

/// Takes everything off a chart, its axes too.
void emptyChart(QChart& chart);

/// Puts colours and size of text to a chart and its axes as they are now.
void dressChart(QChartView& view);

} // namespace hangbook::desk
