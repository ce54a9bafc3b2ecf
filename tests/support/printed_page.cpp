// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/printed_page.h"

#include <boost/test/unit_test.hpp>

#include <QProcess>
#include <QXmlStreamReader>

namespace hangbook::testing {

QString PrintedPage::text() const {
  QStringList all;
  for (const PrintedWord& word : words) {
    all << word.text;
  }
  return all.join(QLatin1Char(' '));
}

QByteArray runTool(const QString& name, const QStringList& words) {
  QProcess process;
  process.start(name, words);
  BOOST_REQUIRE_MESSAGE(process.waitForFinished(120'000), name.toStdString() << " is missing or hangs");
  return process.readAllStandardOutput();
}

std::vector<PrintedPage> printedPages(const QString& pdf) {
  std::vector<PrintedPage> pages;
  QXmlStreamReader xml(
      runTool(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), pdf, QStringLiteral("-")}));
  const auto figure = [&xml](const char* name) {
    return xml.attributes().value(QLatin1String(name)).toDouble();
  };
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) {
      continue;
    }
    if (xml.name() == QLatin1String("page")) {
      pages.push_back({QSizeF(figure("width"), figure("height")), {}});
    } else if (xml.name() == QLatin1String("word")) {
      const QRectF box(QPointF(figure("xMin"), figure("yMin")), QPointF(figure("xMax"), figure("yMax")));
      pages.back().words.push_back({xml.readElementText(), box});
    }
  }
  BOOST_TEST(!xml.hasError(), xml.errorString().toStdString());
  return pages;
}

QStringList misplacedWords(const PrintedPage& page, double margin) {
  QStringList faults;
  const QRectF inside(margin, margin, page.size.width() - 2 * margin, page.size.height() - 2 * margin);
  // A word's box is as high as its font, with room above and below its letters.
  const auto letters = [](const QRectF& box) {
    return box.adjusted(0.5, box.height() * 0.25, -0.5, -box.height() * 0.25);
  };
  for (std::size_t i = 0; i < page.words.size(); ++i) {
    const PrintedWord& word = page.words[i];
    if (!inside.contains(letters(word.box))) {
      faults << QStringLiteral("beyond the margin: ") + word.text;
    }
    for (std::size_t k = 0; k < i; ++k) {
      if (letters(page.words[k].box).intersects(letters(word.box))) {
        faults << QStringLiteral("over one another: %1, %2").arg(page.words[k].text, word.text);
      }
    }
  }
  return faults;
}

} // namespace hangbook::testing
