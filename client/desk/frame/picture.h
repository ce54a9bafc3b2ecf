// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::desk {

class Window;

/// Shows the window, waits until the store is read and nothing is being worked on, and writes it into a PNG
/// file. Throws Error (badInput) where the file cannot be written, Error (store) where the store could not be
/// read.
void takePicture(Window& window, const QString& file);

} // namespace hangbook::desk
