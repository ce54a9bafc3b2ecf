// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/pieces.h"

namespace hangbook::reports {

/// How wide each column is: by its share of the room, but never narrower than its widest word and its
/// figures, where the room allows.
std::vector<double> widthsOf(const Table& table, Ink ink, double room);

/// A table's rows, its title and heading first; each row knows what stands over it on a further page.
std::vector<Piece> tablePieces(const Table& table, Ink ink, double width);

} // namespace hangbook::reports
