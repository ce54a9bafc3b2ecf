// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "calendar/show.h"
#include "fleet/unit.h"

/// Booking by scanner: one code, one transaction, one answer. A code is the serial of a unit or of a cart; a
/// cart's code moves the cart and everything on it. What a scan cannot do is answered in words and changes
/// nothing.
namespace hangbook::actions {

/// What the scanner is set to.
struct ScanTask {
  enum class Kind {
    out,       ///< leaves for a show: away, at `place` (its truck or the venue)
    in,        ///< comes back into `place`
    ontoCart,  ///< onto the cart `cart`, on its next free place
    ontoTruck, ///< into the truck `place`
    transfer,  ///< to `place`, its state as it is
  };
  Kind kind = Kind::in;
  std::optional<calendar::Show> show; ///< out
  QString place;
  QString cart;
  QString
      from; ///< where the one who scans stands; what is recorded elsewhere is a wrong place. Empty = anywhere
};

struct ScanAnswer {
  enum class Word {
    done,       ///< recorded
    again,      ///< it is there already; nothing recorded
    unknown,    ///< no unit has this serial
    wrongPlace, ///< it is recorded somewhere else; nothing recorded
    refused,    ///< it may not: quarantined, not examined long enough, the cart is full; nothing recorded
    undone,     ///< the scan was corrected
  };
  Word word = Word::done;
  QString code;
  QString text;        ///< one line, for people
  QStringList serials; ///< of what was moved
  QUuid scan;          ///< names what was recorded; null where nothing was
};

/// "done", "again", "unknown", "wrong place", "refused", "undone".
QString wordFor(ScanAnswer::Word word);

/// The task for one who stands at the terminal: checks that its cart, truck or place can be meant. Throws
/// Error.
void checkTask(store::Store& store, const ScanTask& task);

/// Books one code. `now` stands as when it happened, except where the unit's last movement is said to have
/// happened later: a scan is evidence of where the thing is at this moment, whatever another machine's clock
/// says.
ScanAnswer scan(store::Store& store, const ScanTask& task, const QString& code, const QDateTime& now,
                const QString& by = {});

/// Corrects a scan: each unit is where it was before. Refused, in words, where one of them was moved since.
ScanAnswer undoScan(store::Store& store, const QUuid& scan, const QDateTime& now, const QString& by = {});

} // namespace hangbook::actions
