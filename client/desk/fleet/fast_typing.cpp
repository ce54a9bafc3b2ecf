// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/fast_typing.h"

#include <utility>

namespace hangbook::desk {

bool FastTyping::add(const QString& text, qint64 atMs) {
  const bool begins = run_.isEmpty() || atMs - last_ > gapMs;
  if (begins) {
    run_.clear();
  }
  run_ += text;
  last_ = atMs;
  return begins;
}

QString FastTyping::endedAt(qint64 atMs) {
  const QString run = std::exchange(run_, {});
  return run.size() >= fewest && atMs - last_ <= gapMs ? run : QString();
}

} // namespace hangbook::desk
