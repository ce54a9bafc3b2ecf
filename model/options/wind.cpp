// SPDX-License-Identifier: GPL-3.0-or-later
// wind: indoors there is none. Outdoors the lean and the pick loads under the gust are not judged by this
// version, and a rule that is not judged is unproven.
#include "options/loads.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

Use evaluate(const Case& option, const Settled*, double) {
  Use use;
  if (!option.snapshot->venue.outdoors) {
    use.verdict = Verdict::holds;
    use.applies = false;
  }
  return use;
}

Finding explain(const Case&, const Settled*, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply("wind", QStringLiteral("the venue is indoors."));
  }
  Finding finding = findingFor("wind", use, "");
  finding.text =
      QStringLiteral("What the wind does to this hang is not judged by this version; the engineer must.");
  return finding;
}

} // namespace

const Rule windRule{"wind", false, evaluate, nullptr, explain};

} // namespace hangbook::options
