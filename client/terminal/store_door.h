// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QString>

#include "store/store.h"
#include "terminal/command.h"

/// How the words of the terminal come to their store.
namespace hangbook::terminal {

/// --store, else the usual place: hangbook.sqlite in the user's own folder of application data.
QString storePlace(const Context& context);

/// Whether a file is there; a server always counts as there.
bool storeExists(const Context& context);

/// Opens what is there. Throws StoreError, in one line that says how to make one, where there is none.
std::unique_ptr<store::Store> openStore(const Context& context);

/// Opens it or makes it; the usual place's folder is made too.
std::unique_ptr<store::Store> openOrMakeStore(const Context& context);

} // namespace hangbook::terminal
