// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "catalogue/cabling.h"

namespace hangbook::calendar {

/// One end of a loom in one cabinet of a hang.
struct Plug : catalogue::Record {
  QString tour;
  QString show;
  QString hang;
  int element = 0; ///< which cabinet, counted from 1 at the bar
  QString socket;  ///< of its type; empty = not stated
  QString cabinet; ///< its type: where another stands there this plug is not meant for it
  QString loom;    ///< type of hardware
  QString label;   ///< what is written on it, where looms of one type must be told apart
  QString end;     ///< of the loom
  QString rack;    ///< amplifier rack; empty = not stated
  QString channel; ///< of that rack; empty = not stated
  bool operator==(const Plug&) const = default;
};

/// All that is stated about cabling, each list in order of names.
struct Cabling {
  std::vector<catalogue::ConnectorType> connectors;
  std::vector<catalogue::Socket> sockets;
  std::vector<catalogue::LoomEnd> ends;
  std::vector<Plug> plugs;
  bool operator==(const Cabling&) const = default;
};

} // namespace hangbook::calendar
