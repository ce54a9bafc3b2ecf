// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/store.h"

/// How somebody's own lists were read the last time, by kind of file and headings.
namespace hangbook::store {

struct KeptMapping {
  QString kind;
  QString headings; ///< exchange::headingsKey
  QByteArray mapping;
  QString dateFormat;
  QString by;
  QDateTime at; ///< UTC
};

std::optional<KeptMapping> loadMapping(Store& store, const QString& kind, const QString& headings);
/// In place of what was kept before.
void keepMapping(Store& store, const KeptMapping& kept);

} // namespace hangbook::store
