// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QDate>

#include "calendar/show.h"
#include "catalogue/catalogue.h"
#include "fleet/occurrence.h"
#include "fleet/unit.h"
#include "options/frozen.h"
#include "venue/venue.h"

namespace hangbook::options {

/// Everything that decides the options of one show, as a value: same snapshot in, same options out.
struct Snapshot {
  catalogue::Catalogue catalogue;
  venue::Venue venue;
  calendar::Tour tour;
  calendar::Show show;
  std::vector<fleet::Unit> units;
  std::vector<fleet::ExaminationRule> examinationRules;
  std::vector<fleet::Examination> examinations; ///< the newest valid one of each unit and rule
  std::vector<fleet::Occurrence> occurrences;   ///< what happened to units, as fleet::Happened takes it
  std::vector<Choice> choices;                  ///< this show's chosen options
  /// Chosen options of other shows whose time away overlaps this one's, of any tour.
  std::vector<Choice> otherChoices;
  /// Units that stand against this show's stock for reasons beside choices are judged by place and state.
  QDate today;
};

} // namespace hangbook::options
