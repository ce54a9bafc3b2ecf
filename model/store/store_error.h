// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>

#include "quantity/error.h"

namespace hangbook::store {

/// What made an engine refuse, as far as a caller may want to act on it.
enum class Cause {
  busy,      ///< another connection holds the store
  conflict,  ///< the engine asks for the whole transaction to be repeated
  duplicate, ///< something of that name or key is there already
  reference, ///< something names what is not there, or what is named elsewhere would go
  check,     ///< a value that the store does not allow
  refused,   ///< a trigger refused: a fact was to be changed, something double booked
  readOnly,
  full,
  damaged,
  notAStore,
  newer, ///< written by a newer program
  lost,  ///< the link to the server
  other,
};

/// Trouble with the store, with its cause. `what()` is for people.
class StoreError : public Error {
public:
  StoreError(Cause cause, const std::string& text, std::string place = {})
      : Error(Trouble::store, text, std::move(place)), cause_(cause) {}
  Cause cause() const { return cause_; }

private:
  Cause cause_;
};

} // namespace hangbook::store
