// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "people/person.h"
#include "store/store.h"

namespace hangbook::store {

/// In order of name.
std::vector<people::Person> loadPeople(Store& store);
/// As for makers' data (catalogue_store.h).
people::Person save(Store& store, const people::Person& person);
void remove(Store& store, const people::Person& person);

/// This machine's name, as facts carry it.
QString thisDevice();
/// Who is at the desk of this machine, if anybody said so.
std::optional<people::Person> personAtDesk(Store& store);
/// Throws Error (badInput) where nobody of that name is known.
void setPersonAtDesk(Store& store, const QString& name);

} // namespace hangbook::store
