// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/flown.h"

#include "actions/choose.h"
#include "actions/facts.h"
#include "actions/plans.h"
#include "options/freeze.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/snapshot_store.h"

namespace hangbook::actions {
namespace {

void check(const Moved& moved) {
  const options::Choice& was = moved.standing;
  if (moved.option.id != was.option || !moved.option.setting ||
      moved.option.setting->mark != was.setting.mark ||
      moved.option.setting->holesDeg != was.setting.holesDeg) {
    throw Error(Trouble::notPossible,
                "stack, bar, points, holes and chain mark are never changed in the air: bring it down and "
                "choose anew");
  }
  if (moved.reason.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "why a hang that is up is moved must be said", "reason");
  }
}

} // namespace

options::Choice keepMoved(store::Store& store, const Moved& moved, const QString& by) {
  check(moved);
  return run(store, [&] {
    const options::Snapshot& of = moved.snapshot;
    const QString tour = of.tour.name;
    auto show = store::loadShow(store, tour, of.show.name);
    if (show && show->wind != of.show.wind) {
      show->wind = of.show.wind;
      saveShow(store, *show, by);
    }
    const options::Snapshot now = store::loadSnapshot(store, tour, of.show.name, of.today);
    options::Choice choice = choiceOf(now, moved.option, moved.reason);
    if (choice.revision != moved.standing.revision ||
        options::inputsOf(now, moved.option.key) != options::inputsOf(of, moved.option.key)) {
      throw Error(
          Trouble::notPossible,
          "what this setting was judged from was changed meanwhile; nothing was kept: look at it again");
    }
    choice.movedFrom = moved.standing.revision;
    return chooseOption(store, choice, by);
  });
}

} // namespace hangbook::actions
