// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "terminal/command.h"

namespace hangbook::store {
class Store;
}

/// Who does what is being done.
namespace hangbook::terminal {

/// --by, else who is at the desk of this machine. Throws Error(badInput) where nobody is named, saying `why`
/// somebody must be ("to pencil in what is unproven").
QString namedPerson(store::Store& store, const Context& context, const std::string& why);

/// The same, else the name under which this session runs.
QString person(store::Store& store, const Context& context);

} // namespace hangbook::terminal
