// SPDX-License-Identifier: GPL-3.0-or-later
// The way down: every step of the build undone, last first. A cart comes in where it went away, a cabinet is
// set down where it was taken, and a cart that was wheeled across first gets back what was taken last.
#include <map>

#include "build/plugging.h"
#include "build/words.h"

namespace hangbook::build {
namespace {

/// Heights as they stand before each step of the build: what undoing it leads to.
struct Before {
  std::optional<double> hooks;
  std::optional<double> lowest;
};

Step undone(const Step& step, StepKind kind, const QString& what) {
  Step back = step;
  back.kind = kind;
  back.what = what;
  back.gate.clear();
  return back;
}

/// The hang that had the cart before step `at`, where that is another one; else empty.
QString cameFrom(const Plan& plan, std::size_t at) {
  for (std::size_t i = at; i-- > 0;) {
    const Step& step = plan.steps[i];
    if (step.cart == plan.steps[at].cart &&
        (step.kind == StepKind::cartAcross || step.kind == StepKind::cartAway)) {
      return step.hang != plan.steps[at].hang ? step.hang : QString();
    }
  }
  return {};
}

} // namespace

std::vector<Step> loadOutOf(const Plan& plan) {
  std::map<QString, Before> now;
  std::vector<Before> before;
  for (const Step& step : plan.steps) {
    Before& here = now[step.hang];
    before.push_back(here);
    if (step.hooks) {
      here = {step.hooks, step.lowest};
    }
  }
  std::vector<Step> out;
  const auto add = [&](Step step) {
    step.number = static_cast<int>(out.size()) + 1;
    out.push_back(std::move(step));
  };
  for (std::size_t i = plan.steps.size(); i-- > 0;) {
    const Step& step = plan.steps[i];
    const QString cabinet = QString::number(step.element);
    switch (step.kind) {
    case StepKind::finalCheck:
      add(undone(step, StepKind::clearBelow,
                 QStringLiteral("Sound off and unplugged at the rack; clear below")));
      break;
    case StepKind::secondarySteel: {
      Step back =
          undone(step, StepKind::secondaryOff, QStringLiteral("Release the secondary steel; coil it"));
      back.missing.clear();
      add(back);
      break;
    }
    case StepKind::aim:
      add(undone(step, StepKind::level, QStringLiteral("Pan to 0 and actuator to its middle, bar level")));
      break;
    case StepKind::clearBelow:
    case StepKind::plug:
    case StepKind::releaseCart:
      if (step.kind == StepKind::plug) {
        add(undone(step, StepKind::unplug, unplugWords(step.element, step.plugs)));
      } else if (step.kind == StepKind::releaseCart) {
        Step back = undone(step, StepKind::releaseCart,
                           QStringLiteral("Hold what stands on %1 to it").arg(step.cart));
        add(back);
      }
      break;
    case StepKind::chainOn: {
      Step back =
          undone(step, StepKind::chainOff,
                 QStringLiteral(
                     "One takes the weight of cabinet %1, the other unclips the chain; stow it on the bar")
                     .arg(cabinet));
      add(back);
      break;
    }
    case StepKind::cartAway:
    case StepKind::cartAcross: {
      Step back =
          undone(step, StepKind::cartIn, QStringLiteral("%1 in under the hang; brakes on").arg(step.cart));
      back.across.clear();
      add(back);
      break;
    }
    case StepKind::pin:
      add(undone(step, StepKind::unpin,
                 QStringLiteral(
                     "Pins of cabinet %1 out on its left and on its right; arms back in transport position")
                     .arg(cabinet)));
      break;
    case StepKind::raise:
    case StepKind::lowerOn: {
      const bool raise = step.kind == StepKind::raise;
      Step back = undone(
          step, raise ? StepKind::setDown : StepKind::raise,
          raise ? QStringLiteral("Lower, to where %1 was freed")
          : step.move && *step.move > 0
              ? QStringLiteral("Ease the weight of cabinet %1 off onto what stands below it").arg(cabinet)
              : QStringLiteral("Raise, clear of cabinet %1").arg(cabinet));
      if (raise) {
        back.what = QStringLiteral("Lower, undoing “%1”").arg(step.what);
      }
      back.hooks = before[i].hooks;
      back.lowest = before[i].lowest;
      back.move = step.move ? std::optional(-*step.move) : std::nullopt;
      add(back);
      break;
    }
    case StepKind::cartIn: {
      const QString to = cameFrom(plan, i);
      Step back = undone(step, to.isEmpty() ? StepKind::cartAway : StepKind::cartAcross,
                         to.isEmpty()
                             ? QStringLiteral("%1 out from under the hang, to the truck").arg(step.cart)
                             : QStringLiteral("%1 across to hang %2, to be filled there").arg(step.cart, to));
      back.across = to;
      add(back);
      break;
    }
    case StepKind::barInPlace:
      add(undone(step, StepKind::barAway, QStringLiteral("Bar into its case; hoists off and run in")));
      break;
    default:
      break;
    }
  }
  return out;
}

} // namespace hangbook::build
