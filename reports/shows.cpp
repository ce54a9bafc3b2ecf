// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/shows.h"

#include "build/inputs.h"
#include "options/freeze.h"
#include "options/search.h"
#include "quantity/error.h"

namespace hangbook::reports {
namespace {

HangAsIs hangAsIs(const options::Snapshot& snapshot, const QString& name) {
  HangAsIs hang;
  hang.hang = name;
  for (const options::Choice& choice : snapshot.choices) {
    if (choice.hang == name && (!hang.choice || hang.choice->revision <= choice.revision)) {
      hang.choice = choice;
    }
  }
  if (!hang.choice) {
    return hang;
  }
  hang.outdated = options::standingOf(snapshot, *hang.choice) != options::Standing::current;
  try {
    hang.now = options::judge(snapshot, hang.choice->key, hang.choice->setting);
  } catch (const Error& error) {
    // Gone from the makers' data or the venue since it was chosen: no pass, whatever was frozen.
    hang.trouble = QString::fromUtf8(error.what());
  }
  return hang;
}

} // namespace

ShowAsIs showAsIs(const options::Snapshot& snapshot, const calendar::Cabling& cabling, UnitSystem units) {
  ShowAsIs show;
  show.snapshot = snapshot;
  show.plugs = cabling.plugs;
  std::vector<options::Option> built;
  for (const calendar::Hang& hang : snapshot.show.hangs) {
    show.hangs.push_back(hangAsIs(snapshot, hang.name));
    if (show.hangs.back().now) {
      built.push_back(*show.hangs.back().now);
    }
  }
  build::Job job = build::jobOf(snapshot, built, cabling);
  job.units = units;
  show.plan = build::planBuild(job);
  return show;
}

} // namespace hangbook::reports
