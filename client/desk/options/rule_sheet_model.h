// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

enum class RuleColumn { verdict, rule, value, limit, use, text, source, count };

/// One row a finding: what the rule says, its figures, and where the limit came from.
class RuleSheetModel : public ListOf<options::Finding, RuleColumn> {
public:
  using ListOf::ListOf;
  /// Worst first; among like verdicts in the order of the rules.
  void setFindings(std::vector<options::Finding> findings);
  void setFigures(const Figures& figures);

private:
  Heading headingOf(RuleColumn column) const override;
  Cell cellOf(const options::Finding& finding, RuleColumn column) const override;
  QString keyOf(const options::Finding& finding) const override { return finding.rule; }

  Figures figures_;
};

} // namespace hangbook::desk
