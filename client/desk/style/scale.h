// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

namespace hangbook::desk {

/// Distances in device-independent pixels. Everything is laid out on these.
namespace space {
inline constexpr int hair = 2;
inline constexpr int small = 4;
inline constexpr int cell = 5; ///< left and right of a text in a list
inline constexpr int step = 8;
inline constexpr int wide = 16;
inline constexpr int broad = 28;
} // namespace space

/// The sizes of text, as shares of the size that the desktop is set to, so that somebody who needs larger
/// text gets all of it larger.
enum class TextSize {
  note,    ///< units, sources, counts
  body,    ///< lists, fields
  heading, ///< of a part of a page
  reading, ///< what is read standing, at arm's length
  title,   ///< of the place
  figure,  ///< one figure that is read across a room
};

QFont fontFor(TextSize size, const QFont& base);

} // namespace hangbook::desk
