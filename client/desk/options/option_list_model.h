// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "catalogue/catalogue.h"
#include "desk/lists/table_model.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

/// One option as a row: the option, and what the row says of it.
struct OptionLine {
  options::Option option{};
  QString stack{}; ///< “3 bass · 1 upper · downfill”
  int rank = 0;    ///< place in the order that is wanted, from 1
  bool chosen = false;
  int beatenBy = 0;      ///< place of an option that beats it in every respect; 0: none does
  QString beatenStack{}; ///< of that one
  /// Heaviest point in % of its limit, over the points whose limit is known; none where none is.
  std::optional<double> heaviestPercent{};
  QString heaviestPoint{};
  bool limitMissing = false; ///< at least one point's limit is not known
};

/// Where a trim may lie, without its unit. Rounded inwards, so that no trim that is read off it lies outside;
/// with as many places as it takes for a narrow window to have room between its ends.
QString windowText(double lowM, double highM, const Figures& figures);

OptionLine optionLine(options::Option option, int rank, bool chosen, const catalogue::Catalogue& catalogue);

/// Tells each line which of the others beats it; `beaten` holds an id or "" for each line.
void sayBeaten(const QStringList& beaten, std::vector<OptionLine>& lines);

enum class OptionColumn {
  verdict,
  number,
  stack,
  bar,
  picks,
  hoist,
  points,
  trim,
  mark,
  heaviest,
  cover,
  beaten,
  count
};

class OptionListModel : public ListOf<OptionLine, OptionColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures);

private:
  Heading headingOf(OptionColumn column) const override;
  Cell cellOf(const OptionLine& line, OptionColumn column) const override;
  QString keyOf(const OptionLine& line) const override { return line.option.id; }
  Cell trimOf(const options::Option& option) const;
  Cell heaviestOf(const OptionLine& line) const;

  Figures figures_;
};

} // namespace hangbook::desk
