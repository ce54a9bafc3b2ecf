// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "desk/source/overview.h"
#include "exchange/plug_text.h"

namespace hangbook::desk {

/// What a figure is measured in; decides how it is shown.
enum class Measure { text, count, mass, length, force, angle, percent, perMetre, speed, plain };

/// One figure of a record as the Data place shows it.
struct FigureLine {
  QString what{};
  QString text{};                ///< where it is words
  std::optional<double> value{}; ///< SI (kN for forces, degrees for angles); none and no text: not known
  Measure measure = Measure::text;
  catalogue::Source source{};
  bool optional = false; ///< no rule goes unproven without it

  bool known() const { return value.has_value() || !text.isEmpty(); }
};

enum class RecordKind {
  venue,
  cabinet,
  bar,
  hoist,
  chain,
  hardware,
  cart,
  table,
  connector,
  plugs,
  house,
  person
};

/// One record of any kind, with all of its figures.
struct RecordLine {
  RecordKind kind = RecordKind::venue;
  QString name{};
  QString belongsTo{}; ///< maker, town, role
  catalogue::Source source{};
  std::vector<FigureLine> figures{};
  exchange::HangName hang{}; ///< of the kind plugs

  int unknown() const;
};

std::vector<RecordLine> recordsOf(const Overview& overview);

QString wordOf(RecordKind kind);

} // namespace hangbook::desk
