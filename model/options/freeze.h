// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QString>

#include "options/option.h"
#include "options/snapshot.h"

namespace hangbook::options {

/// What a chosen option keeps: canonical JSON (keys in order, no blanks, shortest figures that read back to
/// the bit, UTF-8) of what it was computed from and of its results, and the SHA-256 of exactly these bytes.
struct Frozen {
  QByteArray json;
  QString sha256; ///< hex
  QString program;
};

/// All that the option's weights, trim, aim and cover were computed from: its types with their sources, the
/// stacking table, the venue, the show and its hangs, all house figures, and the other hangs' chosen options.
/// Of the fleet only cabinets and bars that the crew weighed are part of it: where units are and until when
/// they are examined changes daily and is judged anew whenever the option is shown.
QJsonObject inputsOf(const Snapshot& snapshot, const OptionKey& key);

/// All that any option of the show is decided from, the fleet too, as far as its hangs may take it: two shows
/// with the same inputs have the same options.
QJsonObject inputsOf(const Snapshot& snapshot);

Frozen freeze(const Snapshot& snapshot, const Option& option);

/// The frozen results. Throws Error(badInput) where the bytes are not such a record.
Option thaw(const QByteArray& frozen);

enum class Standing {
  current,  ///< today's inputs are those that it was computed from
  outdated, ///< they differ: the sheet says so
  damaged,  ///< the bytes are not those that the SHA-256 names
};
Standing standingOf(const Snapshot& snapshot, const Choice& choice);

} // namespace hangbook::options
