// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/run.h"

#include "quantity/error.h"
#include "store/people_store.h"

namespace hangbook::actions {

QString whoActs(store::Store& store, const QString& by) {
  if (!by.trimmed().isEmpty()) {
    return by.trimmed();
  }
  const std::optional<people::Person> person = store::personAtDesk(store);
  if (!person) {
    throw Error(Trouble::badInput, "nobody is named for this; say who acts, or who is at the desk");
  }
  return person->name;
}

} // namespace hangbook::actions
