// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>

namespace hangbook::desk {

enum class Theme { light, dark };

/// The set that the desktop seems to be in.
Theme themeOf(const QApplication& application);

/// Sets style, palette and size of text for the whole program.
void applyTheme(QApplication& application, Theme theme);

/// For pictures and tests: the same font and language everywhere.
void fixLooks(QApplication& application);

} // namespace hangbook::desk
