// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QEventLoop>

namespace hangbook::testing {

/// Handles events until `done` says so, at most `most` rounds. Each round waits for an event, so no time is
/// guessed and none is slept; answers whether it came true.
template <class Done>
bool waitUntil(Done done, int most = 2000) {
  for (int round = 0; round < most; ++round) {
    if (done()) {
      return true;
    }
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
  return done();
}

} // namespace hangbook::testing
