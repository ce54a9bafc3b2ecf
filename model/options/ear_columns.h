// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "options/cover.h"

namespace hangbook::options {

/// An audience figure by figure, so that loops over all ears run over columns; and how far each ear is from
/// where a hang stands. For one thread.
class EarColumns {
public:
  explicit EarColumns(const Audience&);

  /// m, in plan, as `CoverView::distance`; kept for the last place that was asked for. The audience is the
  /// one that it was made of.
  const std::vector<double>& distanceFrom(const Audience&, const CoverPlace&);

  const std::vector<double>& height() const { return height_; } ///< m above the datum
  /// As `AudiencePosition::weight`, whose figures are whole.
  const std::vector<std::int64_t>& weight() const { return weight_; }

private:
  std::vector<double> height_;
  std::vector<std::int64_t> weight_;
  std::vector<double> distance_;
  std::optional<CoverPlace> place_;
};

/// Over which stretch of trim each source covers each ear: one after the other all ears of the first source,
/// then those of the next. An empty stretch begins at +∞ and ends at −∞.
struct CoverColumns {
  std::size_t ears{};
  std::vector<double> low;
  std::vector<double> high;

  std::size_t sources() const { return ears == 0 ? 0 : low.size() / ears; }
  TrimRange at(std::size_t source, std::size_t ear) const {
    return {low[source * ears + ear], high[source * ears + ear]};
  }
  /// Weight of the ears that any source covers at a trim.
  std::int64_t coveredAt(const std::vector<std::int64_t>& weight, double trimM) const;
};

/// As `trimsThatCover` of each source and position.
CoverColumns coverColumns(const Audience&, const std::vector<CoverView::Source>&,
                          const std::vector<double>& distance, const EarColumns&);

} // namespace hangbook::options
