// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/overview.h"

namespace hangbook::desk {

/// Offline copies of shows. A source that makes them is one of these too; it may take long and refuses to run
/// on the window's thread.
class OfflineSource {
public:
  OfflineSource() = default;
  OfflineSource(const OfflineSource&) = delete;
  OfflineSource& operator=(const OfflineSource&) = delete;
  virtual ~OfflineSource() = default;

  /// One dated file of the show, which must not exist. Throws Error with words for people.
  virtual void copyShow(const ShowKey& show, const QString& file) = 0;
};

} // namespace hangbook::desk
