// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/level_table.h"
#include "options/rule.h"

/// What is lost on the way to the audience: spreading of a point source (6.02 dB a doubling of distance) and
/// absorption by the air after ISO 9613-1:1993. One cabinet alone, along its axis: neither how several add up
/// nor what the room gives back is in it.
namespace hangbook::options {

/// Exact mid-band of the octave of that number in `octaveBands`, Hz.
double exactMidBand(std::size_t octave);

/// The day's air; none where temperature or humidity is not stated.
std::optional<LevelAir> airOf(const calendar::Show&);

inline constexpr std::size_t oneKilohertzBand = 4; ///< of `octaveBands`
inline constexpr std::size_t fourKilohertzBand = 6;
/// What the day's air takes of an octave's exact mid-band, dB a metre; none as above.
std::optional<double> airLoss(const calendar::Show&, std::size_t octave);

/// Absorbed over a straight way, dB by octave.
PerOctave absorbed(const LevelAir&, double metres);

/// None where there is no covering cabinet, no audience or no trim.
std::optional<LevelTable> levelOf(const Case&, const Settled&, double trimM);

} // namespace hangbook::options
