// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/record_text.h"

namespace hangbook::desk {

/// Saving one record of makers' data or people. The same object is a Source too, and the same holds, that it
/// runs on Work's thread alone.
class RecordSource {
public:
  RecordSource() = default;
  RecordSource(const RecordSource&) = delete;
  RecordSource& operator=(const RecordSource&) = delete;
  virtual ~RecordSource() = default;

  /// With these texts in its fields. Throws Error with words for people; nothing is saved then.
  virtual void saveRecord(const exchange::RecordName& record, const QStringList& texts,
                          const QString& by) = 0;
};

} // namespace hangbook::desk
