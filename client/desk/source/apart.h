// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <utility>

#include <QThreadPool>

namespace hangbook::desk {

/// Shared as usual; but whoever lets go of it last does not take it apart: 100,000 units take longer than the
/// window may stand still.
template <class Value>
std::shared_ptr<const Value> takenApartElsewhere(Value value) {
  return {new Value(std::move(value)),
          [](const Value* last) { QThreadPool::globalInstance()->start([last] { delete last; }); }};
}

} // namespace hangbook::desk
