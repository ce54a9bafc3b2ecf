// SPDX-License-Identifier: GPL-3.0-or-later
#include "marks/learning.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <boost/math/distributions/students_t.hpp>

namespace hangbook::marks {
namespace {

using hang::PivotTriangle;

/// Marks must span so much of their chain before wear can be told from offset.
constexpr double leastSpan = 0.2; // m
constexpr double gate = 3.0;      // standard deviations beyond which a record does not fit

std::optional<double> angleAt(const PivotTriangle& triangle, double length) {
  const hang::PivotAngles angles = hang::anglesAt(triangle, length);
  return angles.count == 1 ? std::optional(angles.deg[0]) : std::nullopt;
}

/// Metres of chain for a degree of the pivot, at this angle.
double metresPerDegree(const PivotTriangle& triangle, double angleDeg) {
  constexpr double step = 1e-4;
  return std::max(
      1e-6, std::abs(hang::lengthAt(triangle, angleDeg + step) - hang::lengthAt(triangle, angleDeg - step)) /
                (2 * step));
}

/// One observation as a line: excess = offset + wear × counted, with its weight.
struct Line {
  double counted = 0.0; ///< mark × pitch
  double excess = 0.0;  ///< length by the measured angle − stated length
  double sigma = 0.0;   ///< of excess, m
};

Line lineOf(const Observation& seen, const ChainFigures& chain, const Figures& figures) {
  const double counted = seen.mark * chain.pitch;
  return {counted, hang::lengthAt(seen.triangle, seen.measuredDeg) - chain.fixed - counted,
          figures.angleDeg * metresPerDegree(seen.triangle, seen.measuredDeg)};
}

struct Solved {
  double offset = 0.0;
  double wear = 0.0;
  double varOffset = 0.0; ///< at the stated doubt of an angle
  double varWear = 0.0;
  double covariance = 0.0;
  bool separable = false;
};

Solved solve(const std::vector<Line>& lines, const Figures& figures) {
  double w = 0;
  double x = 0;
  double y = 0;
  double xx = 0;
  double xy = 0;
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  for (const Line& line : lines) {
    const double weight = 1.0 / (line.sigma * line.sigma);
    w += weight;
    x += weight * line.counted;
    y += weight * line.excess;
    xx += weight * line.counted * line.counted;
    xy += weight * line.counted * line.excess;
    low = std::min(low, line.counted);
    high = std::max(high, line.counted);
  }
  Solved made;
  if (lines.empty()) {
    return made;
  }
  const auto boundedOffset = [&](double wear) {
    return std::clamp((y - wear * x) / w, -figures.mostOffset, figures.mostOffset);
  };
  made.separable = lines.size() >= 3 && high - low >= leastSpan;
  made.varOffset = 1.0 / w;
  if (made.separable) {
    const double determinant = w * xx - x * x;
    made.wear = std::max(0.0, (w * xy - x * y) / determinant);
    made.varOffset = xx / determinant;
    made.varWear = w / determinant;
    made.covariance = -x / determinant;
  }
  made.offset = boundedOffset(made.wear);
  if (made.separable && std::abs(made.offset) >= figures.mostOffset) {
    // At the offset's bound the wear alone is free; convex, so the bound is where the least lies.
    made.wear = std::max(0.0, (xy - made.offset * x) / xx);
  }
  return made;
}

double lengthOf(const Solved& solved, const ChainFigures& chain, int mark) {
  return chain.fixed + solved.offset + mark * chain.pitch * (1.0 + solved.wear);
}

double variance(double varOffset, double covariance, double varWear, double counted) {
  return std::max(0.0, varOffset + 2 * counted * covariance + counted * counted * varWear);
}

/// Factor of a 95 % interval: normal where the doubt of an angle is what was stated, Student's where it is
/// told from what is left over.
double factor95(int freedom) {
  if (freedom < 1) {
    return 1.96;
  }
  const boost::math::students_t_distribution<double> student(freedom);
  return boost::math::quantile(student, 0.975);
}

void explain(const Observation& seen, const Solved& others, const ChainFigures& chain, double tolerance,
             Fit& fit) {
  struct Found {
    double miss;
    std::string what;
  };
  std::vector<Found> found;
  const auto consider = [&](const std::string& what, const PivotTriangle& triangle, double length,
                            double read) {
    if (const auto angle = angleAt(triangle, length)) {
      if (const double miss = std::abs(read - *angle); miss <= tolerance) {
        found.push_back({miss, what});
      }
    }
  };
  for (const int links : {-3, -2, -1, 1, 2, 3}) {
    if (seen.mark + links >= 1) {
      consider("the link was miscounted: mark " + std::to_string(seen.mark + links) + ", not " +
                   std::to_string(seen.mark),
               seen.triangle, lengthOf(others, chain, seen.mark + links), seen.measuredDeg);
    }
  }
  for (const Slip& slip : seen.slips) {
    const bool sameChain = slip.pitch == chain.pitch && slip.fixed == chain.fixed;
    consider(slip.what, slip.triangle,
             sameChain ? lengthOf(others, chain, seen.mark) : slip.fixed + seen.mark * slip.pitch,
             seen.measuredDeg);
  }
  consider("the angle was written down with the wrong sign", seen.triangle,
           lengthOf(others, chain, seen.mark), -seen.measuredDeg);
  std::ranges::stable_sort(found, {}, &Found::miss);
  for (const Found& each : found) {
    fit.slips.push_back(each.what);
  }
}

/// What the lines other than `left` and those not in `in` say of one observation.
Fit against(const std::vector<Observation>& all, const std::vector<Line>& lines, const std::vector<bool>& in,
            std::size_t left, const ChainFigures& chain, const Figures& figures,
            Solved* solvedOut = nullptr) {
  std::vector<Line> others;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (i != left && in[i]) {
      others.push_back(lines[i]);
    }
  }
  const Solved solved = solve(others, figures);
  const Observation& seen = all[left];
  Fit fit;
  fit.statedDeg = angleAt(seen.triangle, chain.fixed + seen.mark * chain.pitch);
  fit.learnedDeg = angleAt(seen.triangle, lengthOf(solved, chain, seen.mark));
  const double perDegree = metresPerDegree(seen.triangle, fit.learnedDeg.value_or(seen.measuredDeg));
  const double spread =
      others.empty()
          ? 0.0
          : std::sqrt(variance(solved.varOffset, solved.covariance, solved.varWear, lines[left].counted)) /
                perDegree;
  fit.doubtDeg = 1.96 * spread;
  if (fit.learnedDeg) {
    fit.missDeg = seen.measuredDeg - *fit.learnedDeg;
  } else {
    fit.missDeg = (lines[left].excess - solved.offset - solved.wear * lines[left].counted) / perDegree;
  }
  // With nothing else to go by, only what no offset within its bound would explain is odd.
  const double allowed = others.empty() ? figures.mostOffset / perDegree : 0.0;
  fit.fits = std::abs(fit.missDeg) <= allowed + gate * std::hypot(figures.angleDeg, spread);
  if (solvedOut != nullptr) {
    *solvedOut = solved;
  }
  return fit;
}

} // namespace

Learned learn(const std::vector<Observation>& observations, const ChainFigures& chain,
              const Figures& figures) {
  Learned learned;
  learned.records = static_cast<int>(observations.size());
  std::vector<Line> lines;
  for (const Observation& seen : observations) {
    lines.push_back(lineOf(seen, chain, figures));
  }
  std::vector<bool> in(lines.size(), true);
  for (std::size_t out = 0; out < lines.size() / 3; ++out) {
    // Leaving out the one whose going makes the rest agree best: a slip also pulls at the others.
    std::size_t worst = lines.size();
    double least = std::numeric_limits<double>::infinity();
    bool someDoesNotFit = false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (!in[i]) {
        continue;
      }
      Solved solved;
      const Fit fit = against(observations, lines, in, i, chain, figures, &solved);
      someDoesNotFit = someDoesNotFit || !fit.fits;
      double left = 0.0;
      for (std::size_t j = 0; j < lines.size(); ++j) {
        if (in[j] && j != i) {
          const double miss =
              (lines[j].excess - solved.offset - solved.wear * lines[j].counted) / lines[j].sigma;
          left += miss * miss;
        }
      }
      if (left < least && !fit.fits) {
        least = left;
        worst = i;
      }
    }
    if (!someDoesNotFit) {
      break;
    }
    in[worst] = false;
  }
  std::vector<Line> kept;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (in[i]) {
      kept.push_back(lines[i]);
    }
  }
  const Solved solved = solve(kept, figures);
  learned.used = static_cast<int>(kept.size());
  learned.offset = solved.offset;
  learned.wear = solved.wear;
  learned.separable = solved.separable;
  double chi = 0.0;
  double square = 0.0;
  for (const Line& line : kept) {
    const double miss = line.excess - solved.offset - solved.wear * line.counted;
    chi += miss * miss / (line.sigma * line.sigma);
    square += std::pow(miss / line.sigma * figures.angleDeg, 2);
  }
  const int freedom = learned.used - (solved.separable ? 2 : 1);
  learned.scatterDeg = kept.empty() ? 0.0 : std::sqrt(square / static_cast<double>(kept.size()));
  // Scatter beyond what an angle is good for widens the doubt; less of it does not narrow it.
  const double scale = freedom > 0 ? std::max(1.0, chi / freedom) : 1.0;
  const double factor = scale > 1.0 ? factor95(freedom) : 1.96;
  learned.offsetVariance = solved.varOffset * scale;
  learned.wearVariance = solved.varWear * scale;
  learned.covariance = solved.covariance * scale;
  learned.offsetDoubt = factor * std::sqrt(learned.offsetVariance);
  learned.wearDoubt = factor * std::sqrt(learned.wearVariance);
  for (std::size_t i = 0; i < observations.size(); ++i) {
    Solved others;
    Fit fit = against(observations, lines, in, i, chain, figures, &others);
    if (!in[i]) {
      fit.fits = false;
    }
    if (!fit.fits) {
      explain(observations[i], others, chain, gate * std::hypot(figures.angleDeg, fit.doubtDeg / 1.96), fit);
    }
    learned.fits.push_back(fit);
  }
  if (!chain.discardPercent) {
    learned.advice = Advice::unproven;
  } else if (learned.separable && 100.0 * learned.wear >= figures.quarantinePart * *chain.discardPercent) {
    learned.advice = Advice::quarantine;
  } else if (!learned.separable && !kept.empty()) {
    // All of it might be wear: then it would be this much.
    double counted = 0.0;
    for (const Line& line : kept) {
      counted += line.counted / static_cast<double>(kept.size());
    }
    if (counted > 0.0 && 100.0 * learned.offset / counted >= figures.quarantinePart * *chain.discardPercent) {
      learned.advice = Advice::quarantine;
    }
  }
  return learned;
}

Predicted predict(const Learned& learned, const PivotTriangle& triangle, int mark,
                  const ChainFigures& chain) {
  Predicted made;
  const double counted = mark * chain.pitch;
  made.statedDeg = angleAt(triangle, chain.fixed + counted);
  if (learned.used == 0 || learned.advice == Advice::quarantine) {
    return made;
  }
  made.learnedDeg = angleAt(triangle, chain.fixed + learned.offset + counted * (1.0 + learned.wear));
  if (made.learnedDeg) {
    made.doubtDeg =
        1.96 *
        std::sqrt(variance(learned.offsetVariance, learned.covariance, learned.wearVariance, counted)) /
        metresPerDegree(triangle, *made.learnedDeg);
  }
  return made;
}

} // namespace hangbook::marks
