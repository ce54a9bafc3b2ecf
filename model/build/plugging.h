// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "quantity/text.h"

namespace hangbook::build {

/// One plug of a cabinet, as far as it is stated: empty or none is not stated, and never made up.
struct Plugged {
  QString socket;    ///< of the cabinet
  QString loom;      ///< its type
  QString label;     ///< that tells it from others of its type
  QString end;       ///< of the loom
  QString connector; ///< on that end, or that the cabinet takes
  QString colour;
  std::optional<double> reach; ///< of that end along its loom, metres
  QString rack;                ///< amplifier rack
  QString channel;
  bool operator==(const Plugged&) const = default;
};

/// What is plugged into one cabinet.
struct Plugs {
  std::vector<Plugged> all;
  QStringList sockets; ///< that the maker states, with their connectors, in words
  QString otherwise;   ///< what stands there for another type of cabinet, in words; then `all` is empty
};

/// "Marram loom 25 “left 1”, end A"
QString wordsOf(const Plugged& plug, UnitSystem units);

/// What is called out: each loom, end, connector, colour and channel, or that nobody stated it.
QString plugWords(int element, const QString& cabinet, const Plugs& plugs, UnitSystem units);
QString unplugWords(int element, const std::vector<Plugged>& plugs);

} // namespace hangbook::build
