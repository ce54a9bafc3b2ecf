// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/cautions.h"

#include <QCoreApplication>

namespace hangbook::desk {
namespace {

QString words(const char* text) {
  return QCoreApplication::translate("Cautions", text);
}

} // namespace

QString cautionText() {
  return words(
      "The figures here support the maker's manual, local codes and a competent person's judgement. They do "
      "not replace them. “Holds” means within the limits that were entered; it is never permission to "
      "lift. The building, trusses and how loads move lie outside this program and belong to the "
      "engineer who answers for them.");
}

QString aboutText() {
  return words("Hangbook %1 works out which loudspeaker stack a venue can take, what hangs from each point, "
               "how high it "
               "ends up and at which link the chain goes.\n\nFree software under the GNU General Public "
               "License, "
               "version 3 or any later version (GPL-3.0-or-later). It comes without any warranty.")
      .arg(QStringLiteral(HANGBOOK_VERSION));
}

} // namespace hangbook::desk
