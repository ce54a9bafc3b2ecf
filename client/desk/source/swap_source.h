// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "actions/swap.h"
#include "desk/source/overview.h"

namespace hangbook::desk {

class Source;

/// Which unit takes the place of which, at a show.
struct SwapWish {
  ShowKey show{};
  QString dead{};
  QString stand{};
  QString reason{};
  QString by{};
};

/// Units that are dead at load-in and swapped. A source that does it is one of these too; everything here may
/// take long and refuses to run on the window's thread.
class SwapSource {
public:
  SwapSource() = default;
  SwapSource(const SwapSource&) = delete;
  SwapSource& operator=(const SwapSource&) = delete;
  virtual ~SwapSource() = default;

  virtual std::vector<actions::StandIn> standInsFor(const ShowKey& show, const QString& dead) = 0;
  /// What it would come to; nothing is written. Throws Error with words for people.
  virtual actions::Swap trySwap(const SwapWish& wish) = 0;
  /// Does it; it can be undone. Throws Error with words for people.
  virtual void swapUnit(const SwapWish& wish) = 0;
};

/// The source's swapping side. Throws Error (notPossible) where it has none.
SwapSource& swapOf(Source& source);

} // namespace hangbook::desk
