// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "options/option.h"

/// The order of a list as somebody likes it, and what in it another option beats in every respect.
namespace hangbook::options {

enum class RankBy { cover, lightest, gear, changes, build };

/// How options of like verdict are ordered; the verdict always comes first.
struct Ranking {
  RankBy by = RankBy::cover;
  std::optional<OptionKey> before; ///< what `changes` counts from: what hung yesterday
};

/// The words that people type: cover, lightest, gear, changes, build.
std::span<const RankBy> allRankings();
QString wordFor(RankBy by);
std::optional<RankBy> rankBy(const QString& word);

void rank(HangOptions& options, const Ranking& ranking);

/// How many parts differ: cabinets to take away or to add, bar, way of picking up, hoist.
int changesBetween(const OptionKey& one, const OptionKey& other);

/// For each option of the list the id of the first other one that is no worse in verdict, cover, mass, number
/// of cabinets and hoists, steps of the build and greatest use of a load limit, and better in one of them;
/// empty where there is none. An option without a setting is beaten by any with one.
QStringList beatenBy(const HangOptions& options);

} // namespace hangbook::options
