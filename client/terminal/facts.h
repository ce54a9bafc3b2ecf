// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QDate>

#include "calendar/show.h"
#include "options/search.h"
#include "terminal/command.h"

namespace hangbook::store {
class Store;
}

/// What the words look up in the store, by the names that people type.
namespace hangbook::terminal {

/// --show and --tour as every word takes them.
extern const Option showOption;
extern const Option tourOption;

/// The show that --show and --tour name. Throws Error(badInput): no such show or tour, with the nearest
/// names; or several tours have a show of that name, with their names.
calendar::Show findShow(store::Store& store, const Given& given);
calendar::Show findShow(const std::vector<calendar::Show>& shows, const QString& name,
                        const std::optional<QString>& tour);

/// The tour that --tour names, or the only one that there is.
QString findTour(store::Store& store, const Given& given);

/// The hang of that name. Throws Error(badInput) with the show's hangs.
const calendar::Hang& findHang(const calendar::Show& show, const QString& name);

/// The options whose identifiers begin with `start`, in upper or lower case, decided; where there is none,
/// or `start` is empty, all of them, so that an error can name what there is.
options::ShowOptions optionsBeginning(const options::Snapshot& snapshot, const QString& start,
                                      const std::optional<QString>& hang);

/// The one option whose identifier begins with `start`. Throws Error(badInput): none does, or several.
const options::Option& findOption(const options::ShowOptions& options, const QString& start);

} // namespace hangbook::terminal
