// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>

#include "desk/lists/table_model.h"
#include "desk/source/source.h"

namespace hangbook::desk {

/// One thing that is recorded of a unit.
struct StoryLine {
  QDateTime at{};
  bool dayOnly = false; ///< no time of day was recorded
  QString what{};
  QString words{};
  QString by{};
  bool corrected = false; ///< a later entry stands in its place
};

/// All of a unit's entries, the newest first.
std::vector<StoryLine> storyLines(const UnitStory& story);

enum class StoryColumn { when, what, words, by, count };

class StoryModel : public ListOf<StoryLine, StoryColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(StoryColumn column) const override;
  Cell cellOf(const StoryLine& line, StoryColumn column) const override;
  QString keyOf(const StoryLine& line) const override { return line.at.toString(Qt::ISODate); }
};

} // namespace hangbook::desk
