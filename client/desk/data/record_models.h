// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/data/record.h"
#include "desk/lists/table_model.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

enum class RecordColumn { kind, name, belongsTo, unknown, source, date, count };

/// All records, one a row.
class RecordModel : public ListOf<RecordLine, RecordColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(RecordColumn column) const override;
  Cell cellOf(const RecordLine& line, RecordColumn column) const override;
  QString keyOf(const RecordLine& line) const override { return line.name; }
};

enum class FigureColumn { what, value, source, date, count };

/// The figures of one record, one a row.
class FigureModel : public ListOf<FigureLine, FigureColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures);

private:
  Heading headingOf(FigureColumn column) const override;
  Cell cellOf(const FigureLine& line, FigureColumn column) const override;
  QString keyOf(const FigureLine& line) const override { return line.what; }
  Cell valueOf(const FigureLine& line) const;

  Figures figures_;
};

} // namespace hangbook::desk
