// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/chosen.h"

#include "options/search.h"
#include "quantity/error.h"

namespace hangbook::terminal {

std::optional<options::Verdict> Chosen::verdict() const {
  if (choice == nullptr) {
    return std::nullopt;
  }
  return now ? now->verdict : options::Verdict::unproven;
}

Chosen chosenFor(const options::Snapshot& snapshot, const QString& hang) {
  Chosen chosen;
  for (const options::Choice& choice : snapshot.choices) {
    if (choice.hang == hang) {
      chosen.choice = &choice;
    }
  }
  if (chosen.choice != nullptr) {
    try {
      chosen.now = options::judge(snapshot, chosen.choice->key, chosen.choice->setting);
    } catch (const Error& error) {
      // Gone from the makers' data or the venue since it was chosen: no pass, whatever was frozen.
      chosen.trouble = QString::fromUtf8(error.what());
    }
  }
  return chosen;
}

} // namespace hangbook::terminal
