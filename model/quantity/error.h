// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>
#include <utility>

namespace hangbook {

/// What kind of trouble it is: decides the exit status in the terminal and the tone in the window.
enum class Trouble {
  badInput,    ///< wrong words, wrong file, wrong figure: nothing was changed
  notPossible, ///< understood, but it cannot be: a failing option, a stale revision
  store,       ///< the store cannot be opened, read or written
};

/// The one exception family. `what()` is one sentence for people: what happened and what is expected.
/// `place` names where (a key, a line and column, a file), empty where it goes without saying.
class Error : public std::runtime_error {
public:
  Error(Trouble trouble, const std::string& text, std::string place = {})
      : std::runtime_error(place.empty() ? text : place + ": " + text), trouble_(trouble),
        place_(std::move(place)) {}

  Trouble trouble() const { return trouble_; }
  const std::string& place() const { return place_; }

private:
  Trouble trouble_;
  std::string place_;
};

} // namespace hangbook
