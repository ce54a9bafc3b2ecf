// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>

#include <QDate>
#include <QString>
#include <QUuid>

#include "quantity/quantity.h"

/// Makers' data: types of cabinet, bar, hoist, chain, cart and hardware, and who may stand under whom.
/// Everything is named by its name, which is unique among its kind; `Record::id` is for the store alone.
/// A figure that is not known is std::nullopt, never 0: what needs it stays unproven.
namespace hangbook::catalogue {

/// Where figures come from, as it is shown beside them: "Saltmarsh leaflet 4, page 2".
struct Source {
  QString text;
  QDate date;
  bool operator==(const Source&) const = default;
};

/// How far a maker's figures may be off, either way, as he states it. Not stated: the house's figure stands
/// in.
struct Tolerances {
  std::optional<Mass> mass;     ///< of each mass of the record
  std::optional<Length> centre; ///< of each coordinate of a centre of gravity
  std::optional<Length> place;  ///< of each coordinate of every other place, and of every length
  bool operator==(const Tolerances&) const = default;
};

/// What each edited record carries besides its figures.
struct Record {
  QUuid id;         ///< null until it was stored
  int revision = 0; ///< counts up with each edit; a write that names an older one is refused
  Source source;
  /// What was typed where it was not typed in our own unit: column -> text such as "32 ft 6 in".
  std::map<QString, QString> typed;
  bool operator==(const Record&) const = default;
};

/// Whether a stated limit or capacity is compared with the load at rest or with the load with the
/// dynamic factor. A capacity of unknown basis leaves its rule unproven.
enum class Basis { unknown, atRest, dynamic };

} // namespace hangbook::catalogue
