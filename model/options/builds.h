// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "options/judge_case.h"
#include "options/rig_shelf.h"
#include "options/search.h"
#include "options/stacks.h"

/// What a search of one hang goes through: every build, and of each build every way of reaching the points
/// with every type of hoist.
namespace hangbook::options {

/// One stack on one bar, picked up one way.
struct Build {
  const catalogue::StackingTable* table = nullptr;
  const catalogue::BarType* bar = nullptr;
  const catalogue::PickArrangement* arrangement = nullptr;
  Stack stack;

  /// The same for the same build of another hang or show.
  QString name() const;
};

/// In order of table, bar, arrangement. `notes`: what was left out, in words.
std::vector<Build> buildsFor(const Snapshot& snapshot, const calendar::Hang& hang, QStringList& notes);

/// One way of reaching the points, with the types of hoist that are asked for.
struct Way {
  std::vector<const venue::Point*> points;
  std::vector<const catalogue::HoistType*> hoists;
};

/// The ways of a build, of those options alone whose id begins with `idStart`.
std::vector<Way> waysOf(const Search& search, const Build& build,
                        const std::vector<const venue::Point*>& candidates, const QString& idStart);

/// An option of a build with what deciding it took.
struct Found {
  Option option;
  qint64 settings{};
  std::vector<BoundCount> bounds;
};

/// Every option of a build. `shelf`: rigs that others may have solved before.
std::vector<Found> decideBuild(const Search& search, const Build& build, const std::vector<Way>& ways,
                               RigShelf& shelf, bool brief);

} // namespace hangbook::options
