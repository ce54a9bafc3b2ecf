// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "build/plan.h"

namespace hangbook::build {

/// What all hangs of a build share: the carts, and how much was taken from each column of each.
struct Yard {
  const Job& job;
  Plan& plan;
  std::vector<std::vector<int>> taken; ///< of each ride, of each column
};

/// One hang while it is built: how high its hooks are, how much of it hangs, what comes next.
class Side {
public:
  Side(Yard& yard, int hang);

  int hang() const { return index_; }
  /// The bar met on its case, and raised so that the first cart fits under it.
  void barUp();
  /// The ride that its next cabinet stands on; none: all of it hangs.
  std::optional<std::size_t> nextRide() const;
  /// Wheels that cart in, takes what is next from it, frees it and wheels it away or across.
  void visit(std::size_t ride);
  /// Final raise, aim, secondary steel, final check.
  void finish();

private:
  struct On {
    std::size_t ride = 0;
    std::size_t column = 0;
    int place = 0;
  };
  std::optional<On> whereIs(int element) const;
  bool isOnTop(const On& on) const;
  Step& add(StepKind kind, const QString& what);
  /// Raises until the lowest of what hangs is `over` above the floor, if it is not already; `passes` is what
  /// then fits.
  void raiseOver(double passes, double clearance, const QString& why);
  void moveHooks(Step& step, double hooks);
  /// Whether hoists and room let it: written into the plan where they do not.
  void judgeReach(Step& step);
  void join(const On& on);
  void chainOn();
  QString inWords(double metres) const;
  /// Height of all that stands on the cart that the next cabinet comes on; none: nothing comes.
  std::optional<double> nextTop() const;
  const hang::Element& element(int number) const {
    return hanging_.rig.stack[static_cast<std::size_t>(number)];
  }

  Yard& yard_;
  const Hanging& hanging_;
  int index_;
  int done_ = 0; ///< cabinets that hang
  double hooks_ = notStated;
  bool chainDone_ = false;
};

} // namespace hangbook::build
