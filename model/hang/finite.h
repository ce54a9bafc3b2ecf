// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <concepts>
#include <optional>

/// Whether figures are figures: neither NaN nor without end.
namespace hangbook::hang {

/// One answer over many figures, shown a few at a time.
class AllFinite {
public:
  /// Figures, or what may be one; none is not without end.
  template <class... Each>
  requires((std::same_as<Each, double> ||
            std::same_as<Each, std::optional<double>>)&&...) void see(const Each&... each) {
    yes_ = (yes_ && ... && isFinite(each));
  }
  /// Of all that it has seen; with nothing seen too.
  bool yes() const { return yes_; }

private:
  static bool isFinite(const std::optional<double>& figure) { return !figure || std::isfinite(*figure); }

  bool yes_ = true;
};

} // namespace hangbook::hang
