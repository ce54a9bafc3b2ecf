// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringView>

namespace hangbook::desk {

/// Order in which people look for serials: runs of digits by their number ("MB-9" before "MB-10"), all else
/// by letter without regard to case; equal so far, the plain order of the text decides, so that the order is
/// total. Below 0, 0 or above 0.
int compareNatural(QStringView one, QStringView other);

} // namespace hangbook::desk
