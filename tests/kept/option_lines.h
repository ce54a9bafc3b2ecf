// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonValue>

#include "kept/kept.h"
#include "options/option.h"

namespace hangbook::testing {

/// Every figure and word of a JSON value, in order of its keys.
void add(Line& line, const QJsonValue& value);

/// What an option says, in two lines: its findings, whose verdicts stand there by their first letters in the
/// order of the rules, and everything else.
void addOption(std::vector<Line>& lines, const std::string& name, const options::Option& option);

/// The first letter of each finding's verdict, a dot where the rule does not apply.
std::string letters(const options::Option& option);

} // namespace hangbook::testing
