// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/source/planning_source.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

/// One change that would do, one figure to be asked for, or one way to a limit, as a row.
struct WouldDoLine {
  enum class About { change, ask, reserve };
  About about = About::change;
  QString what{};    ///< the change, or the direction and how far
  QString figures{}; ///< "11.00 m → 11.34 m"
  std::optional<options::Verdict> then{};
  QString rule{};  ///< that breaks first, or that asks
  QString proof{}; ///< what was run on either side
  QString whole{}; ///< all of it, to be read out on the telephone
};

/// `own`: the id of the option that is looked at; a change that makes another one of it says so.
std::vector<WouldDoLine> wouldDoLines(const WhatWouldDo& found, const QString& own, const Figures& figures);

/// What is to be said over the lines, in one or two sentences.
QString wouldDoHead(const WhatWouldDo& found);

enum class WouldDoColumn { what, figures, then, rule, proof, count };

class WouldDoModel : public ListOf<WouldDoLine, WouldDoColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(WouldDoColumn column) const override;
  Cell cellOf(const WouldDoLine& line, WouldDoColumn column) const override;
  QString keyOf(const WouldDoLine& line) const override { return line.what; }
};

} // namespace hangbook::desk
