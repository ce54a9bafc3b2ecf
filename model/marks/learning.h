// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "hang/chain.h"

/// What recorded angles say of a chain: how much longer its fixed parts are than stated, how far its links
/// have worn, and which record does not fit. Lengths in metres, angles in degrees; plain figures, pure.
namespace hangbook::marks {

/// What may have been otherwise at one record: another hole, another chain.
struct Slip {
  std::string what; ///< in words, as it is to be looked for
  hang::PivotTriangle triangle;
  double pitch = 0.0;
  double fixed = 0.0;
};

struct Observation {
  hang::PivotTriangle triangle; ///< of the record's stack as it was assembled
  int mark = 0;
  double measuredDeg = 0.0;
  std::vector<Slip> slips;
};

struct ChainFigures {
  double pitch = 0.0;
  double fixed = 0.0;
  std::optional<double> discardPercent; ///< stretch at which the maker discards it
};

struct Figures {
  /// Standard deviation of one measured angle: what an inclinometer on a cabinet's side is good for.
  double angleDeg = 0.2;
  double mostOffset = 0.05;    ///< how far the fixed length may be from what is stated, either way
  double quarantinePart = 0.8; ///< of the discard figure, from which the chain is quarantined
};

enum class Advice {
  none,
  quarantine, ///< near or beyond the discard figure: never calibrated away
  unproven,   ///< the maker's discard figure is not known
};

/// One record against the others.
struct Fit {
  std::optional<double> statedDeg;  ///< at the stated lengths; none: out of the pivot's travel
  std::optional<double> learnedDeg; ///< by what the other records say
  double doubtDeg = 0.0;            ///< of `learnedDeg`, 95 %
  double missDeg = 0.0;             ///< measured − learned
  bool fits = true;
  std::vector<std::string> slips; ///< single slips that would explain it, the best first
};

struct Learned {
  int records = 0;          ///< that were given
  int used = 0;             ///< that fit, and that the figures below stand on
  double offset = 0.0;      ///< fixed length beyond what is stated
  double offsetDoubt = 0.0; ///< 95 %, either way
  double wear = 0.0;        ///< stretch of the links, 0.01 = 1 %; never below 0
  double wearDoubt = 0.0;
  double covariance = 0.0; ///< of offset and wear, with the variances below
  double offsetVariance = 0.0;
  double wearVariance = 0.0;
  /// Whether the records tell wear from offset: marks far enough apart. Else all of it stands in `offset`.
  bool separable = false;
  double scatterDeg = 0.0; ///< root mean square of what is left over
  Advice advice = Advice::none;
  std::vector<Fit> fits; ///< of each observation
};

/// Least squares of anchor–eye lengths (measured angles turned into lengths by the triangle) against
/// fixed + offset + mark × pitch × (1 + wear), each weighted by what an angle's doubt makes of a length; wear
/// at least 0, offset within its bound. A record whose angle is off what all others say by more than three
/// times the doubt is left out, the worst first, never more than a third of them.
Learned learn(const std::vector<Observation>& observations, const ChainFigures& chain,
              const Figures& figures = {});

struct Predicted {
  std::optional<double> statedDeg;
  std::optional<double> learnedDeg; ///< none too where the chain is to be quarantined
  double doubtDeg = 0.0;            ///< 95 %
};
Predicted predict(const Learned& learned, const hang::PivotTriangle& triangle, int mark,
                  const ChainFigures& chain);

} // namespace hangbook::marks
