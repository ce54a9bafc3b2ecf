// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bench/seam.h"
#include "options/load_columns.h"

namespace hangbook::bench {

/// The rules that a spreadsheet could check too: point-load, zone-load, hoist and bar, of chains that hang
/// plumb. From plain figures for each setting and limits for each option, written out for a script in another
/// language (plain_rules.py, which says what each column is).
class PlainRules {
public:
  explicit PlainRules(options::Snapshot snapshot);

  /// The worst verdict of each setting of each option, option by option, as the search asks for it: a rule of
  /// all settings at once. `into` has one for each of `settings()`.
  void check(std::vector<unsigned char>& into) const;
  /// The same by the rules' own `evaluate`, setting by setting.
  std::vector<unsigned char> checkOneByOne() const;
  long settings() const { return settings_; }
  /// settings.f64, limits.f64, verdicts.u8
  void writeTo(const char* folder) const;

private:
  Seam seam_;
  std::vector<options::LoadColumns> columns_; ///< of each rig
  long settings_ = 0;
};

} // namespace hangbook::bench
