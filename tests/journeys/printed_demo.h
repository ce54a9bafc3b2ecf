// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTemporaryDir>

#include "program.h"
#include "support/printed_page.h"

namespace hangbook::testing {

/// The demo in a store of its own, and its sheets as somebody prints them on 30 March 2027.
struct Printed {
  QTemporaryDir folder;
  QString store = folder.filePath(QStringLiteral("tour.sqlite"));

  Printed();
  /// Filled once, for tests that change nothing.
  static const Printed& demo();

  Said say(QStringList words) const;
  /// A sheet as a file; without a show where `show` is empty. Where it ends in .csv in `ending`, as CSV.
  QString sheet(const QString& kind, const QString& show, const QStringList& more = {},
                const char* ending = ".pdf") const;
  /// As it stands on the page, line by line.
  static QString text(const QString& pdf);
};

} // namespace hangbook::testing
