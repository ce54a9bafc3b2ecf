// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/plug_text.h"
#include "exchange/record_text.h"

namespace hangbook::desk {

class Source;

/// Saving and removing one record of makers' data, people or venues, and the plugs of a hang. The same object
/// is a Source too, and the same holds, that it runs on Work's thread alone.
class RecordSource {
public:
  RecordSource() = default;
  RecordSource(const RecordSource&) = delete;
  RecordSource& operator=(const RecordSource&) = delete;
  virtual ~RecordSource() = default;

  /// With these texts in its fields and parts; one without a name in `record` is new. Throws Error with words
  /// for people; nothing is saved then.
  virtual void saveRecord(const exchange::RecordName& record, const exchange::RecordText& text,
                          const QString& by) = 0;
  /// Throws Error that tells what names it; nothing is removed then.
  virtual void removeRecord(const exchange::RecordName& record, const QString& by) = 0;
  /// What the plugs of a hang are read against.
  virtual exchange::Data plugData(const exchange::HangName& hang) = 0;
  /// Puts these in the place of all plugs that the hang has. Throws Error with words for people; nothing is
  /// saved then.
  virtual void savePlugs(const exchange::HangName& hang, const std::vector<QStringList>& rows,
                         const QString& by) = 0;
};

/// The source's side for records. Throws Error (badInput) where it has none.
RecordSource& recordsOf(Source& source);

} // namespace hangbook::desk
