// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/words.h"

#include <cmath>

namespace hangbook::build {

QString lengthText(double metres, UnitSystem units) {
  return std::isnan(metres) ? QStringLiteral("not known")
                            : QString::fromStdString(show(hangbook::metres(metres), 2, units));
}

QStringList usualCautions() {
  return {
      QStringLiteral(
          "Nobody stands under a load that moves. One voice runs the hoists; anybody may call stop."),
      QStringLiteral("A mark is never changed in the air: lower, re-clip, raise."),
      QStringLiteral(
          "Any later move: clear below, release or re-slack the secondary steel, move, refit it, sign."),
      QStringLiteral("Arms and pins are checked on both sides of a cabinet before it leaves its cart."),
      QStringLiteral(
          "Heights are above the floor under the hang, read by tape; stop where they do not agree."),
  };
}

QString wordFor(Standing standing) {
  switch (standing) {
  case Standing::planned:
    return QStringLiteral("planned");
  case Standing::unproven:
    return QStringLiteral("unproven");
  case Standing::notPossible:
    return QStringLiteral("not possible");
  }
  return {};
}

QString wordFor(StepKind kind) {
  switch (kind) {
  case StepKind::barInPlace:
    return QStringLiteral("bar-in-place");
  case StepKind::raise:
    return QStringLiteral("raise");
  case StepKind::cartIn:
    return QStringLiteral("cart-in");
  case StepKind::lowerOn:
    return QStringLiteral("lower-on");
  case StepKind::pin:
    return QStringLiteral("pin");
  case StepKind::plug:
    return QStringLiteral("plug");
  case StepKind::releaseCart:
    return QStringLiteral("release-cart");
  case StepKind::cartAway:
    return QStringLiteral("cart-away");
  case StepKind::cartAcross:
    return QStringLiteral("cart-across");
  case StepKind::chainOn:
    return QStringLiteral("chain-on");
  case StepKind::aim:
    return QStringLiteral("aim");
  case StepKind::clearBelow:
    return QStringLiteral("clear-below");
  case StepKind::secondarySteel:
    return QStringLiteral("secondary-steel");
  case StepKind::finalCheck:
    return QStringLiteral("final-check");
  case StepKind::secondaryOff:
    return QStringLiteral("secondary-off");
  case StepKind::level:
    return QStringLiteral("level");
  case StepKind::chainOff:
    return QStringLiteral("chain-off");
  case StepKind::setDown:
    return QStringLiteral("set-down");
  case StepKind::unplug:
    return QStringLiteral("unplug");
  case StepKind::unpin:
    return QStringLiteral("unpin");
  case StepKind::barAway:
    return QStringLiteral("bar-away");
  }
  return {};
}

} // namespace hangbook::build
