// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::desk {

/// What stands on the first page, in the About box and beside every choice.
QString cautionText();
/// The program, its version and its licence.
QString aboutText();

} // namespace hangbook::desk
