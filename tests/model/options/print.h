// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>

#include "options/option.h"

namespace hangbook::options {

inline std::ostream& operator<<(std::ostream& out, Verdict verdict) {
  constexpr const char* words[] = {"holds", "tight", "unproven", "fails"};
  return out << words[static_cast<int>(verdict)];
}

} // namespace hangbook::options
