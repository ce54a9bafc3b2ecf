// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QChartView>

#include "desk/source/overview.h"
#include "options/stock_day.h"

namespace hangbook::desk {

/// How many of one type are fit, and how many are wanted, on some days in order of date; what is between two
/// days is as on the earlier one.
struct TypeThroughTime {
  QString type{};
  std::vector<QDate> days{};
  std::vector<int> fit{};
  std::vector<int> wanted{};
  bool operator==(const TypeThroughTime&) const = default;
};

/// One type from `overview.today` on for a year: on the first of each week, and where a show's time away
/// begins or ends. Takes a while with a large fleet: not for the window's thread.
TypeThroughTime typeThroughTime(const Overview& overview, fleet::UnitKind kind, const QString& type);

/// Stock of one type against demand.
class StockChart : public QChartView {
  Q_OBJECT
public:
  explicit StockChart(QWidget* parent = nullptr);
  void setType(TypeThroughTime type);
  const TypeThroughTime& shown() const { return type_; }

protected:
  void changeEvent(QEvent* event) override;

private:
  void draw();

  TypeThroughTime type_;
};

} // namespace hangbook::desk
