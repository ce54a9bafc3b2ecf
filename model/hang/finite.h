// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <concepts>

/// Whether figures are figures: neither NaN nor without end.
namespace hangbook::hang {

/// One answer over many figures, shown a few at a time.
class AllFinite {
public:
  template <std::same_as<double>... Each>
  void see(Each... each) {
    yes_ = (yes_ && ... && std::isfinite(each));
  }
  /// Of all that it has seen; with nothing seen too.
  bool yes() const { return yes_; }

private:
  bool yes_ = true;
};

} // namespace hangbook::hang
