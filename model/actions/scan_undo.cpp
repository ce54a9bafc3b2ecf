// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "actions/scan_parts.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"

namespace hangbook::actions {

using fleet::Act;
using fleet::Movement;
using Word = ScanAnswer::Word;

ScanAnswer undoScan(store::Store& store, const QUuid& scan, const QDateTime& now, const QString& by) {
  try {
    return withDeed(store, by, {"undo scan", scan.toString(QUuid::WithoutBraces)}, [&](const QString& who) {
      const std::vector<Movement> facts = store::loadScan(store, scan);
      if (facts.empty()) {
        throw Cannot{Word::unknown, QStringLiteral("there is no such scan")};
      }
      ScanAnswer answer{Word::undone, facts.front().serial, {}, {}, scan};
      for (const Movement& fact : facts) {
        const std::optional<Movement> last = store::loadLastMovement(store, fact.serial);
        if (!last || last->id != fact.id) {
          throw Cannot{Word::refused, store::isCorrected(store, fact)
                                          ? QStringLiteral("this scan was undone already")
                                          : QStringLiteral("%1 was moved since").arg(fact.serial)};
        }
        const std::optional<Movement> before = store::loadMovementBefore(store, fact);
        if (!before) {
          throw Cannot{Word::refused, QStringLiteral("nothing says where %1 was before").arg(fact.serial)};
        }
        Movement back = *before;
        back.id = {};
        back.scan = {};
        back.recordedAt = {};
        back.act = Act::undone;
        back.reason = QStringLiteral("scan undone");
        back.corrects = fact.id;
        back.by = who;
        back.happenedAt = std::max(now, fact.happenedAt);
        store::append(store, back);
        answer.serials << fact.serial;
      }
      answer.text = QStringLiteral("back at \"%2\": %1")
                        .arg(answer.serials.join(QStringLiteral(", ")),
                             store::loadUnit(store, facts.front().serial)->place);
      return answer;
    });
  } catch (const Cannot& cannot) {
    return {cannot.word, {}, cannot.text, {}, scan};
  }
}

} // namespace hangbook::actions
