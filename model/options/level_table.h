// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <QString>

/// How the level falls from front to back, as plain figures: advice, which no verdict reads.
namespace hangbook::options {

/// Octave bands by their nominal names, Hz. Figures belong to the exact mid-bands 1000·10^(0.3 k) Hz, as the
/// tables of ISO 9613-1:1993 do (the band called 8 kHz is 7943 Hz).
inline constexpr std::array<int, 8> octaveBands{63, 125, 250, 500, 1000, 2000, 4000, 8000};
using PerOctave = std::array<double, octaveBands.size()>;

struct LevelAir {
  double temperature{};  ///< °C
  double humidity{};     ///< % relative
  double pressure{};     ///< kPa
  bool pressureStated{}; ///< else standard pressure
};

/// The first or last row of a section, where it is nearest to the hang's line.
struct LevelRow {
  QString section;
  bool last{};
  int element{};      ///< the cabinet that serves it, counted from 1 at the bar
  bool covered{};     ///< within that cabinet's cover and throw; else the topmost one that is there to cover
  double distanceM{}; ///< straight from where its sound leaves to the ear
  double throwM{};    ///< how far the maker says that it is good for
  double spreadingDb{};           ///< lost from 1 m in front of it, as from a point: 20 log10(distance)
  std::optional<PerOctave> airDb; ///< lost to the air beside; none where the day's air is not stated
  std::optional<double> levelAtOneMetreDb; ///< maker's

  double lossDb(std::size_t band) const { return spreadingDb + (airDb ? (*airDb)[band] : 0.0); }
};

struct LevelTable {
  std::optional<LevelAir> air;
  std::vector<LevelRow> rows; ///< first and last of each section that the hang must cover
  /// The farthest row's loss less the nearest one's; none where the day's air is not stated.
  std::optional<PerOctave> frontToBackDb;
};

} // namespace hangbook::options
