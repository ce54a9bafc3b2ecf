// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bench/seam.h"

namespace hangbook::bench {

/// The rules that a spreadsheet could check too: point-load, zone-load, hoist and bar, of chains that hang
/// plumb. From plain figures for each setting and limits for each option, written out for a script in another
/// language (plain_rules.py, which says what each column is).
class PlainRules {
public:
  explicit PlainRules(options::Snapshot snapshot);

  /// By the rules' own `evaluate`: the worst verdict of each setting of each option, option by option.
  std::vector<unsigned char> check() const;
  long settings() const { return settings_; }
  /// settings.f64, limits.f64, verdicts.u8
  void writeTo(const char* folder) const;

private:
  Seam seam_;
  long settings_ = 0;
};

} // namespace hangbook::bench
