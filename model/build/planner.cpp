// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "build/plan.h"
#include "build/rides.h"
#include "build/shape.h"
#include "build/side.h"
#include "build/words.h"

namespace hangbook::build {
namespace {

void addOnce(QStringList& list, const QString& text) {
  if (!list.contains(text)) {
    list << text;
  }
}

/// A cart that is shared goes to its next hang only when the one before has taken what is its own.
bool isFree(const Job& job, const CartRide& ride, const std::vector<int>& taken, int hang) {
  Q_UNUSED(job)
  for (std::size_t c = 0; c < ride.columns.size(); ++c) {
    for (std::size_t i = static_cast<std::size_t>(taken[c]); i < ride.columns[c].size(); ++i) {
      if (ride.columns[c][i].hang < hang) {
        return false;
      }
    }
  }
  return true;
}

void judgeData(const Job& job, Plan& plan) {
  if (std::isnan(job.cartClearance)) {
    addOnce(plan.missing, QStringLiteral("the house's clearance above carts (cart-clearance) as a length"));
  }
  if (std::isnan(job.swingClearance)) {
    addOnce(plan.missing,
            QStringLiteral("the house's clearance below a downfill (swing-clearance) as a length"));
  }
  for (const Hanging& hanging : job.hangs) {
    for (const QString& what : hanging.missing) {
      addOnce(plan.missing, QStringLiteral("%1 (hang %2)").arg(what, hanging.hang));
    }
  }
}

} // namespace

Plan planBuild(const Job& job) {
  Plan plan;
  plan.show = job.show;
  plan.cautions = usualCautions();
  judgeData(job, plan);
  Job known = job;
  std::erase_if(known.hangs, [](const Hanging& each) { return !each.missing.isEmpty(); });
  for (const Hanging& each : known.hangs) {
    plan.hangs << each.hang;
  }
  plan.carts = ridesOf(known);
  Yard yard{known, plan, {}};
  for (const CartRide& ride : plan.carts) {
    yard.taken.emplace_back(ride.columns.size(), 0);
  }
  std::vector<Side> sides;
  sides.reserve(known.hangs.size());
  for (std::size_t h = 0; h < known.hangs.size(); ++h) {
    sides.emplace_back(yard, static_cast<int>(h));
  }
  for (Side& side : sides) {
    side.barUp();
  }
  // In turn, one cart each: a shared cart is free for the next hang once the one before has passed it.
  for (bool more = true; more;) {
    more = false;
    for (Side& side : sides) {
      if (const auto ride = side.nextRide();
          ride && isFree(known, plan.carts[*ride], yard.taken[*ride], side.hang())) {
        side.visit(*ride);
        more = true;
      }
    }
  }
  for (Side& side : sides) {
    side.finish();
  }
  int number = 0;
  for (Step& step : plan.steps) {
    step.number = ++number;
    for (const QString& what : step.missing) {
      addOnce(plan.missing, what);
    }
  }
  plan.loadOut = loadOutOf(plan);
  plan.standing = !plan.impossible.isEmpty() ? Standing::notPossible
                  : plan.missing.isEmpty()   ? Standing::planned
                                             : Standing::unproven;
  return plan;
}

} // namespace hangbook::build
