// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/people.h"

#include <pwd.h>
#include <unistd.h>

#include "quantity/error.h"
#include "store/people_store.h"

namespace hangbook::terminal {
namespace {

/// Empty where nobody is named.
QString nameGiven(store::Store& store, const Context& context) {
  if (context.by) {
    const QString name = QString::fromStdString(*context.by).simplified();
    if (name.isEmpty()) {
      throw Error(Trouble::badInput, "--by needs a name");
    }
    return name;
  }
  const auto atDesk = store::personAtDesk(store);
  return atDesk ? atDesk->name : QString();
}

/// As the system knows whose session this is; not from the environment, which anything may set.
QString sessionName() {
  const passwd* entry = getpwuid(geteuid());
  return entry != nullptr && entry->pw_name != nullptr ? QString::fromLocal8Bit(entry->pw_name) : QString();
}

} // namespace

QString namedPerson(store::Store& store, const Context& context, const std::string& why) {
  const QString name = nameGiven(store, context);
  if (name.isEmpty()) {
    throw Error(Trouble::badInput, "--by NAME is needed " + why);
  }
  return name;
}

QString person(store::Store& store, const Context& context) {
  const QString name = nameGiven(store, context);
  const QString found = name.isEmpty() ? sessionName() : name;
  if (found.isEmpty()) {
    throw Error(Trouble::badInput, "--by NAME is needed to say who does this");
  }
  return found;
}

} // namespace hangbook::terminal
