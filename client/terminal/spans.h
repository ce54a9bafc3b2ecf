// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <QDate>

namespace hangbook::terminal {

/// The last day of a span such as "90d", "12w" or "6m" that begins on `from`; months end on the same day of
/// the month, or on its last day where it is shorter. Throws Error(badInput) for anything else, naming
/// `option`.
QDate endOfSpan(const std::string& option, const std::string& text, QDate from);

/// A date such as 2027-04-02; throws Error(badInput) for anything else, naming `option`.
QDate readDay(const std::string& option, const std::string& text);

} // namespace hangbook::terminal
