// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "hang/bridle.h"

/// A bridle of stiff legs whose load is also pulled sideways, from no direction that is known. Metres, N,
/// degrees; z up. Mechanics: force balance at the apex.
///
/// Two legs: their plane swings freely about the line u through the points until the load lies in it. With x
/// = load · u and R the size of the load, a leg of length a pulls a ÷ apart · (k √(R² − x²) + x), k = (foot
/// of the apex on u, from the other point) ÷ (depth of the apex under u). From all directions x goes from −H
/// c − V s to H c − V s (c, s: the level and the rising part of u), and a wider range with more to the side.
///
/// Three legs: the apex stands still while all pull, and each pull is linear in the load.
namespace hangbook::hang {

/// A load at the apex: so much down, and up to so much sideways in any one direction.
struct SidewaysLoad {
  double down{}; ///< N, above 0; NaN gives NaN
  double side{}; ///< N; infinite: no chain leans so far
};

/// What becomes of one leg, each figure in the direction that is worst for it.
struct PushedLeg {
  double most{};  ///< N; exact. Infinite where the load may come to lie along the line through two points
  double least{}; ///< N; 0 or below: it goes slack, and the apex leaves its place
  double down{};  ///< N on its point; exact of three legs and of points at one height, else a bound that none
                  ///< passes
  double fromHorizontalDeg{}; ///< the flattest that it stands; exact
};

class PushedBridle {
public:
  /// Two or three legs without stretch. Throws as settleBridle where they do not hold a load straight down.
  explicit PushedBridle(std::span<const BridleLeg> legs);

  /// NaN but for `least` of 0 where one of three legs hangs slack without any push.
  PushedLeg leg(std::size_t which, SidewaysLoad load) const;
  /// The highest pull where it and one other carry all of it, N (see hang/bridle.h); exact.
  double worstOfTwo(std::size_t which, SidewaysLoad load) const;

private:
  /// A leg beside one other.
  struct OfTwo {
    OfTwo(const BridleLeg& own, const BridleLeg& other);
    double most(SidewaysLoad) const;
    double least(SidewaysLoad) const;
    double down(SidewaysLoad) const;
    double flattestDeg(SidewaysLoad) const;
    /// The load may lie along the line through the points: no finite pull follows.
    bool beyond(SidewaysLoad) const;
    double leastUpright(SidewaysLoad) const;

    double own{};
    double other{};
    double apart{};
    double foot{}; ///< of the apex on the line, from its own point
    double depth{};
    double level{}; ///< of the way to the other point
    double rise{};
  };
  /// A leg beside two others, for 1 N.
  struct OfThree {
    double down{}; ///< its pull by a load straight down
    double side{}; ///< by one to the side, in the worst direction
    double fromHorizontalDeg{};
  };

  std::vector<std::vector<OfTwo>> twos_; ///< of each leg, beside each other one
  std::array<OfThree, 3> three_{};
  std::array<bool, 3> slack_{};
};

} // namespace hangbook::hang
