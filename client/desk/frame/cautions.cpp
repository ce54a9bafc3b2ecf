// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/cautions.h"

#include "desk/words/words.h"

namespace hangbook::desk {
QString cautionText() {
  return Words::tr(
      "The figures here support the maker's manual, local codes and a competent person's judgement. They do "
      "not replace them. “Holds” means within the limits that were entered; it is never permission to "
      "lift. The building, trusses and how loads move lie outside this program and belong to the "
      "engineer who answers for them.");
}

QString aboutText() {
  return Words::tr(
             "Hangbook %1 works out which loudspeaker stack a venue can take, what hangs from each point, "
             "how high it "
             "ends up and at which link the chain goes.\n\nFree software under the GNU General Public "
             "License, "
             "version 3 or any later version (GPL-3.0-or-later). It comes without any warranty.")
      .arg(QStringLiteral(HANGBOOK_VERSION));
}

} // namespace hangbook::desk
