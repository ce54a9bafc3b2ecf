// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::desk {

/// Tells a scanner that types like a keyboard from fingers: a run of characters each of which follows the one
/// before within `gapMs`.
class FastTyping {
public:
  static constexpr qint64 gapMs = 40; ///< common practice, no source: fingers leave more, scanners less
  static constexpr int fewest = 4;    ///< shorter runs may be a chord of fingers

  /// Answers whether a new run began with this character.
  bool add(const QString& text, qint64 atMs);
  /// What was typed, where it is a scanner's and Enter follows it as fast; empty otherwise. Ends the run.
  QString endedAt(qint64 atMs);
  void forget() { run_.clear(); }

private:
  QString run_;
  qint64 last_ = 0;
};

} // namespace hangbook::desk
