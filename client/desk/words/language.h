// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QStringList>

class QCoreApplication;

namespace hangbook::desk {

/// Codes of the languages that the window speaks ("en", "de"); English is the one that it is written in.
QStringList languages();

/// The first of the languages that the person's settings ask for and that the window speaks; English where it
/// speaks none of them.
QString languageFor(const QLocale& asked);

/// From here on the window speaks this language, and Qt's own dialogs with it. Where the person's settings
/// are of another language, numbers are written as is usual in this one. Sentences of rules and sheets stay
/// English: they are what files and other programs read.
void speak(QCoreApplication& application, const QString& language);

} // namespace hangbook::desk
