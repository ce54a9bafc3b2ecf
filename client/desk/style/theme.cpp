// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/theme.h"

#include <QLocale>
#include <QToolTip>

#include "desk/style/colours.h"
#include "desk/style/outlined_style.h"

namespace hangbook::desk {

Theme themeOf(const QApplication& application) {
  return coloursOf(application.palette()).dark ? Theme::dark : Theme::light;
}

void applyTheme(QApplication& application, Theme theme) {
  application.setStyle(new OutlinedStyle); // the application takes it
  const QPalette palette = paletteFrom(theme == Theme::dark ? darkColours() : lightColours());
  application.setPalette(palette);
  QToolTip::setPalette(palette);
}

void fixLooks(QApplication& application) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(12);
  application.setFont(font);
  QLocale plain(QLocale::English, QLocale::UnitedKingdom);
  plain.setNumberOptions(QLocale::OmitGroupSeparator);
  QLocale::setDefault(plain);
}

} // namespace hangbook::desk
