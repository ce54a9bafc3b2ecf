// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/gates.h"

namespace hangbook::build {

QStringList gatesOf(const Plan& plan, const QString& hang) {
  QStringList gates;
  for (const Step& step : plan.steps) {
    if (step.hang == hang && !step.gate.isEmpty()) {
      gates << step.gate;
    }
  }
  return gates;
}

} // namespace hangbook::build
