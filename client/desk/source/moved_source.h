// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "desk/source/overview.h"
#include "options/snapshot.h"

namespace hangbook::desk {

/// A flown hang at another setting, to be kept as the new signed one.
struct MoveRequest {
  options::Snapshot snapshot{}; ///< what it was judged from, with the wind that it is to stand in
  options::Choice standing{};   ///< what it moves from
  options::Option option{};
  QString by{};
  QString reason{};
};

/// Hangs that are moved once they have been flown. A source that keeps them is one of these too; everything
/// here may take long and refuses to run on the window's thread.
class MovedSource {
public:
  MovedSource() = default;
  MovedSource(const MovedSource&) = delete;
  MovedSource& operator=(const MovedSource&) = delete;
  virtual ~MovedSource() = default;

  /// Everything that was ever signed for the hang, newest first.
  virtual std::vector<options::Choice> signedSettings(const ShowKey& show, const QString& hang) = 0;
  /// Throws Error with words for people.
  virtual void keepMoved(const MoveRequest& request) = 0;
};

} // namespace hangbook::desk
