// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "options/load_columns.h"
#include "options/load_limit.h"

namespace hangbook::options {

/// Rules that a load alone decides while the chains hang plumb, asked of all settings of a rig at once:
/// `point-load`, `zone-load`, `hoist`, `bar`, `hardware` and `uneven`. Their limits are looked up once for
/// the option; then each is the rule's own arithmetic, in its own order, over columns, without a call for
/// each setting. The verdicts are those of `Rule::evaluate` at a trim of −∞ to the bit (a test compares
/// them).
class LoadSpan {
public:
  /// Both outlive it.
  LoadSpan(const Case& option, const LoadColumns& columns);

  static bool speaksOf(const Rule& rule);
  /// Whether it can: not for bridles, nor where settings differ in more than their loads.
  bool usable() const { return usable_; }
  /// Raises each setting's verdict in `worst` (as numbers, one for each setting) to the rule's, if that is
  /// worse. Only where usable, and for a rule that it speaks of.
  void raise(const Rule& rule, std::span<double> worst) const;

private:
  void raisePoints(std::size_t stand, std::span<double> worst) const;
  void raiseZones(std::size_t stand, std::span<double> worst) const;
  void raiseHoists(std::size_t stand, std::span<double> worst) const;
  void raiseHardware(std::size_t stand, std::span<double> worst) const;
  void raiseSecondary(const LoadColumns::Pick& pick, std::span<double> worst) const;
  void raiseBar(std::span<double> worst) const;
  void raiseUneven(std::span<double> worst) const;
  void lookUpGear();
  void lookUpHardware();

  const Case& option_;
  const LoadColumns& columns_;
  bool usable_{};
  double body_ = notKnown;
  double chain_ = notKnown;
  double rigging_ = notKnown;
  double allAtPoint_ = notKnown; ///< hoist, chain and rigging in one sum
  double climbs_ = notKnown;
  double factors_ = notKnown;
  std::array<LoadLimit, 2> point_;
  std::vector<LoadLimit> zone_;
  LoadLimit hoist_;
  double hoistFloor_{};
  LoadLimit hardware_; ///< of the weakest piece; one that is not known makes no verdict better
  LoadLimit secondaryUsable_;
  LoadLimit secondaryWhole_;
  double hardwareFloor_{};
  double secondaryFloor_{};
};

} // namespace hangbook::options
