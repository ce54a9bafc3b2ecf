// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/language.h"

#include <cstring>

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

namespace hangbook::desk {
namespace {

/// The tool that collects texts files most of a widget's under its class alone; the program asks for them by
/// class and namespace.
class OwnTexts : public QTranslator {
public:
  using QTranslator::QTranslator;

  QString translate(const char* context, const char* source, const char* comment, int n) const override {
    constexpr const char* space = "hangbook::desk::";
    const bool inside = std::strncmp(context, space, std::strlen(space)) == 0;
    const QString text =
        inside ? QTranslator::translate(context + std::strlen(space), source, comment, n) : QString();
    return text.isNull() ? QTranslator::translate(context, source, comment, n) : text;
  }
};

/// Qt's own texts may be missing on a machine; then its dialogs speak English.
void take(QTranslator* texts, const QString& file, const QString& folder) {
  if (texts->load(file, folder)) {
    QCoreApplication::installTranslator(texts);
  }
}

QString english() {
  return QStringLiteral("en");
}

} // namespace

QStringList languages() {
  return {english(), QStringLiteral("de")};
}

QString languageFor(const QLocale& asked) {
  const QStringList all = languages();
  for (const QString& each : asked.uiLanguages()) {
    const QString language = each.section(QLatin1Char('-'), 0, 0);
    if (all.contains(language)) {
      return language;
    }
  }
  return english();
}

void speak(QCoreApplication& application, const QString& language) {
  qDeleteAll(application.findChildren<QTranslator*>(Qt::FindDirectChildrenOnly)); // they withdraw themselves
  if (language == english()) {
    return;
  }
  const QLocale wanted(language);
  if (QLocale().language() != wanted.language()) {
    QLocale::setDefault(wanted);
  }
  take(new QTranslator(&application), QStringLiteral("qtbase_") + language,
       QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  take(new OwnTexts(&application), QStringLiteral("hangbook_") + language, QStringLiteral(":/languages"));
}

} // namespace hangbook::desk
