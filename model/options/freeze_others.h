// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonArray>

#include "options/frozen.h"
#include "options/snapshot.h"

namespace hangbook::options {

/// The other hangs' chosen options, by what the sums over structures take from them: `other_hangs` of a
/// frozen record. A point's loads in kN: at rest, dynamic, and both at the unfavourable end where known.
QJsonArray otherHangs(const Snapshot& snapshot, const QString& hang);

/// Whether two such lists put the same loads onto the points and zones that carry the choice. A hang that
/// had nothing chosen counted as its mirror image, so that choosing just that for it changes nothing.
bool sameFromOthers(const Snapshot& snapshot, const Choice& choice, const QJsonArray& then,
                    const QJsonArray& now);

} // namespace hangbook::options
