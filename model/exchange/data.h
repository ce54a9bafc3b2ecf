// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "calendar/cabling.h"
#include "calendar/hung.h"
#include "calendar/show.h"
#include "catalogue/catalogue.h"
#include "fleet/place.h"
#include "fleet/unit.h"
#include "marks/mark.h"
#include "people/person.h"
#include "venue/venue.h"

namespace hangbook::exchange {

/// A chosen option as a file says it: the option is computed and chosen anew, never copied.
struct Chosen {
  QString tour;
  QString show;
  QString hang;
  QString option; ///< its id
  QString because;
  QString by;
  QDateTime on; ///< UTC; null = not stated
  bool operator==(const Chosen&) const = default;
};

/// What the files hold, as a value: the store's current state on the way in, all of it on the way out.
struct Data {
  catalogue::Catalogue catalogue;
  calendar::Cabling cabling;
  std::vector<people::Person> people;
  std::vector<fleet::ExaminationRule> examinationRules;
  std::vector<fleet::NamedPlace> places;
  std::vector<fleet::Unit> units;
  std::vector<fleet::Examination> examinations; ///< all of them, corrected ones too
  std::vector<venue::Venue> venues;
  std::vector<calendar::Tour> tours;
  std::vector<calendar::Show> shows;
  std::vector<calendar::Hung> hung;
  std::vector<Chosen> chosen;
  std::vector<marks::MarkUsed> marks; ///< all of them, corrected ones too
  bool operator==(const Data&) const = default;
};

} // namespace hangbook::exchange
