// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "store/store.h"

namespace hangbook::store {

/// What a check of all options of a show said, and what it was said of.
struct KeptCheck {
  QString tour;
  QString show;
  QString inputs;      ///< SHA-256 of all that decides the show's options, hex
  QString program;     ///< which build of the program checked
  QByteArray result;   ///< JSON
  QDateTime checkedAt; ///< UTC
};

std::optional<KeptCheck> loadKeptCheck(Store& store, const QString& tour, const QString& show);
/// Takes the place of an older one of the same show.
void keep(Store& store, const KeptCheck& check);

/// What somebody at this machine likes; empty = nothing said.
QString liking(Store& store, const QString& name);
void setLiking(Store& store, const QString& name, const QString& value);

} // namespace hangbook::store
