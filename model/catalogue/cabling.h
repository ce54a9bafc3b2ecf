// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "catalogue/source.h"
#include "quantity/quantity.h"

/// What a crew plugs, as its makers state it. Beside the catalogue, since no rule and no choice reads it:
/// whatever nobody stated stays the maker's data.
namespace hangbook::catalogue {

enum class Carries { loudspeaker, signal, power, signalAndPower };

/// A kind of connector: what fits what.
struct ConnectorType : Record {
  QString name;
  QString maker;
  std::optional<Carries> carries;
  bool operator==(const ConnectorType&) const = default;
};

/// Where a type of cabinet is plugged.
struct Socket : Record {
  QString cabinet;   ///< the type
  QString name;      ///< as it is written beside it, unique on the cabinet
  QString connector; ///< kind of connector that it takes; empty: not stated
  bool operator==(const Socket&) const = default;
};

/// One end of a loom.
struct LoomEnd : Record {
  QString loom;                ///< type of hardware
  QString name;                ///< as it is written on it, unique on the loom
  QString connector;           ///< kind of connector on it; empty: not stated
  QString colour;              ///< of its marking; empty: not stated
  std::optional<Length> reach; ///< along the loom, from its end at the rack
  bool operator==(const LoomEnd&) const = default;
};

} // namespace hangbook::catalogue
