// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QRectF>
#include <QStringList>

/// A PDF as somebody else's reader sees it (poppler's pdftotext): each word and where it stands.
namespace hangbook::testing {

struct PrintedWord {
  QString text;
  QRectF box; ///< in points from the page's upper left corner
};

struct PrintedPage {
  QSizeF size; ///< points
  std::vector<PrintedWord> words;

  QString text() const; ///< words in the order of the file, one space between
};

/// What a program of the system writes to its standard output; a failing test where it is missing or hangs.
QByteArray runTool(const QString& name, const QStringList& words);

std::vector<PrintedPage> printedPages(const QString& pdf);

/// Words that come nearer to an edge than `margin` points, and words that stand over one another.
QStringList misplacedWords(const PrintedPage& page, double margin);

} // namespace hangbook::testing
