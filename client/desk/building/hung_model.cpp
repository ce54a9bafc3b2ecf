// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/hung_model.h"

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

/// Empty where nothing is recorded.
QString whoseFigure(const options::HungPlace& place) {
  if (place.basis.isEmpty()) {
    return {};
  }
  if (!place.weighed) {
    return place.massKg ? Words::tr("maker's figure") : Words::tr("stated by nobody");
  }
  return Words::tr("weighed %1 by %2")
      .arg(place.weighedOn.isValid() ? dateText(place.weighedOn) : Words::tr("on a day not written down"),
           place.weighedBy.isEmpty() ? Words::tr("somebody not named") : place.weighedBy);
}

} // namespace

QString hungPlaceWords(const options::HungPlace& place) {
  return place.element == 0 ? Words::tr("Bar") : Words::tr("Cabinet %1").arg(place.element);
}

int HungModel::openFrom(int from) const {
  for (int i = 0; i < rowCount(); ++i) {
    const int row = (from + i) % rowCount();
    if (at(row).serial.isEmpty()) {
      return row;
    }
  }
  return -1;
}

Heading HungModel::headingOf(HungColumn column) const {
  switch (column) {
  case HungColumn::place:
    return {.title = Words::tr("Place"), .characters = 12};
  case HungColumn::type:
    return {.title = Words::tr("Type"), .characters = 18};
  case HungColumn::serial:
    return {.title = Words::tr("Serial"), .characters = 14};
  case HungColumn::mass:
    return {.title = Words::tr("Mass"), .figure = true, .characters = 10};
  case HungColumn::from:
    return {.title = Words::tr("Whose figure"), .characters = 20, .wish = 30};
  case HungColumn::missing:
    return {.title = Words::tr("What is missing or wrong"), .characters = 28, .wish = 60};
  case HungColumn::count:
    break;
  }
  return {};
}

Cell HungModel::cellOf(const options::HungPlace& place, HungColumn column) const {
  const bool recorded = !place.serial.isEmpty();
  switch (column) {
  case HungColumn::place:
    return {.text = hungPlaceWords(place), .number = static_cast<double>(place.element)};
  case HungColumn::type:
    return {.text = place.type.isEmpty() ? QStringLiteral("–") : place.type};
  case HungColumn::serial:
    return {.text = recorded ? place.serial : QStringLiteral("–"), .missing = !recorded, .strong = recorded};
  case HungColumn::mass:
    return recorded
               ? Cell{.text = figures_.mass(place.massKg), .number = place.massKg, .missing = !place.massKg}
               : Cell{.text = QStringLiteral("–"), .missing = true};
  case HungColumn::from: {
    const QString whose = whoseFigure(place);
    return {.text = whose.isEmpty() ? QStringLiteral("–") : whose, .toolTip = whose};
  }
  case HungColumn::missing: {
    const QString text = !place.trouble.isEmpty() ? figures_.sentence(place.trouble)
                         : !recorded              ? Words::tr("not recorded by serial")
                         : !place.massKg          ? Words::tr("its mass is not known")
                                                  : QStringLiteral("–");
    return {.text = text, .toolTip = text, .strong = !place.trouble.isEmpty()};
  }
  case HungColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
