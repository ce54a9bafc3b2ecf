// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>

#include "options/option.h"

/// Options for people: the list of a hang, and the whole rule sheet of one.
namespace hangbook::terminal {

/// One option a line, in the order given, under what was decided and how. `most` cuts the list and says how
/// many are left out; 0 = all.
void printHang(const options::HangOptions& hang, std::ostream& out, int most = 0);

/// Everything about one option: its parts, its setting, loads by point and part, aims, and every rule.
void printRuleSheet(const options::Option& option, std::ostream& out);

/// How the list ends, in words: "4 hold, 2 are tight, 1 is unproven, 30 fail".
QString countsInWords(const std::vector<options::Option>& options);

/// The rules that give an option its verdict, such as "point-load, headroom"; empty where it holds.
QStringList decidingRules(const options::Option& option);

/// How many digits of the identifiers tell these options apart, at least 8.
int tellingDigits(const std::vector<options::Option>& options);

/// The bar and how it is picked up: "Marram bar, side-pair".
QString shownBar(const options::OptionKey& key);

} // namespace hangbook::terminal
