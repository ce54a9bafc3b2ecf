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
  int rank = 0;    ///< place in the search's own order
  bool chosen = false;
  /// Heaviest point in % of its limit, over the points whose limit is known; none where none is.
  std::optional<double> heaviestPercent{};
  QString heaviestPoint{};
  bool limitMissing = false; ///< at least one point's limit is not known
};

OptionLine optionLine(options::Option option, int rank, bool chosen, const catalogue::Catalogue& catalogue);

enum class OptionColumn { verdict, stack, bar, picks, hoist, points, trim, mark, heaviest, cover, count };

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
