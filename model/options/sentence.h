// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/rule.h"

/// Bits of the sentences that findings are made of.
namespace hangbook::options {

QString inM(double metres); ///< "6.20 m"
QString inDeg(double deg);  ///< "-2.5°"

/// The venue's sheet, with what is known of it.
QString venueSource(const venue::Venue& venue);

/// A maker's record: "maker's data for X (leaflet 4, page 2)".
QString makerSource(const QString& name, const catalogue::Source& source);

/// The worse of two.
Verdict worse(Verdict one, Verdict other);

/// Puts numbers of `use` into a finding; the sentence and source are for the rule to add.
Finding findingFor(const char* rule, const Use& use, const char* unit);

/// The same for a rule that does not apply.
Finding doesNotApply(const char* rule, const QString& why);

} // namespace hangbook::options
