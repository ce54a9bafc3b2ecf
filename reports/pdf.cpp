// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/pdf.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <algorithm>

#include "reports/ink.h"
#include "reports/pieces.h"
#include "reports/qr.h"

namespace hangbook::reports {
namespace {

constexpr double margin = 400;    // 40 pt
constexpr double codeSide = 800;  // 28 mm
constexpr double footRight = 900; // of the foot: for the page's number

/// One text of the frame, from its own size.
struct Line {
  QString text;
  int size;
  bool bold;
  double above = 0;
};

class Pages {
public:
  Pages(const Sheet& sheet, const Stamp& stamp, Paper paper) : sheet_(sheet), stamp_(stamp), paper_(paper) {}

  QByteArray print() {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
      QPdfWriter writer(&buffer);
      writer.setResolution(unitsPerInch);
      writer.setPageSize(QPageSize(paper_ == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
      writer.setPageMargins(QMarginsF(0, 0, 0, 0));
      writer.setTitle(sheet_.title + QStringLiteral(" – ") + sheet_.show);
      writer.setCreator(QStringLiteral("Hangbook ") + stamp_.program);
      QPainter painter(&writer);
      page_ = QRectF(0, 0, writer.width(), writer.height());
      const auto pages = pagesFor(painter);
      for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
          writer.newPage();
        }
        draw(painter, pages, i);
      }
    }
    return bytes;
  }

  std::vector<QImage> pictures(int dots) {
    const QSizeF inches =
        QPageSize(paper_ == Paper::a4 ? QPageSize::A4 : QPageSize::Letter).size(QPageSize::Inch);
    page_ = QRectF(QPointF(), inches * unitsPerInch);
    std::vector<QImage> made;
    std::size_t count = 1;
    for (std::size_t i = 0; i < count; ++i) {
      QImage picture((inches * dots).toSize(), QImage::Format_Grayscale8);
      picture.fill(Qt::white);
      QPainter painter(&picture);
      painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
      painter.scale(static_cast<double>(dots) / unitsPerInch, static_cast<double>(dots) / unitsPerInch);
      const auto pages = pagesFor(painter);
      count = pages.size();
      draw(painter, pages, i);
      painter.end();
      made.push_back(picture);
    }
    return made;
  }

private:
  std::vector<std::vector<Piece>> pagesFor(QPainter& painter) {
    Ink ink(painter);
    // Long names take more lines: the body gives way, so that nothing runs into it.
    headHeight_ = std::max(codeSide - 40, heightOf(ink, head(2), headWidth())) + 110;
    footHeight_ = heightOf(ink, foot(), footWidth()) + 180;
    return paginated(piecesOf(sheet_, ink, body().width()), body().height());
  }
  QRectF body() const { return page_.adjusted(margin, margin + headHeight_, -margin, -margin - footHeight_); }
  double headWidth() const { return page_.width() - 2 * margin - codeSide - 150; }
  double footWidth() const { return page_.width() - 2 * margin - footRight; }

  std::vector<Line> head(int number) const {
    std::vector<Line> lines{{sheet_.title, 220, true}, {sheet_.show, 130, true, 10}};
    for (const QString& line : sheet_.about) {
      lines.push_back({line, 105, false});
    }
    if (number > 1 && !sheet_.notCleared.isEmpty()) {
      lines.push_back({QStringLiteral("NOT CLEARED TO LIFT – see page 1"), 140, true, 15});
    }
    return lines;
  }
  std::vector<Line> foot() const {
    return {
        {sheet_.sides, 100, true},
        {QStringLiteral("%1 · Hangbook %2 · printed %3 · check %4")
             .arg(sheet_.revision, stamp_.program,
                  stamp_.printed.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")), stamp_.checksum),
         86, false}};
  }
  static double heightOf(Ink& ink, const std::vector<Line>& lines, double width) {
    double height = 0;
    for (const Line& line : lines) {
      ink.use(line.size, line.bold);
      height += line.above + ink.heightOf(line.text, width);
    }
    return height;
  }
  static void put(Ink& ink, const std::vector<Line>& lines, QRectF room) {
    for (const Line& line : lines) {
      ink.use(line.size, line.bold);
      room.setTop(ink.lines(line.text, room.adjusted(0, line.above, 0, 0)));
    }
  }

  void draw(QPainter& painter, const std::vector<std::vector<Piece>>& pages, std::size_t index) {
    Ink ink(painter);
    frame(ink, painter, static_cast<int>(index) + 1, static_cast<int>(pages.size()));
    double y = body().top();
    for (const Piece& piece : pages[index]) {
      piece.draw(ink, QRectF(body().left(), y, body().width(), piece.height));
      y += piece.height;
    }
  }

  void frame(Ink& ink, QPainter& painter, int number, int count) {
    const double left = page_.left() + margin;
    const double right = page_.right() - margin;
    const double top = page_.top() + margin;
    put(ink, head(number), {left, top, headWidth(), headHeight_});
    drawCode(painter, stamp_.code, static_cast<int>(right - codeSide + 60), static_cast<int>(top - 60),
             static_cast<int>(codeSide), 1);
    ink.rule(left, right, body().top() - 50, 12);
    const double foot = body().bottom() + 90;
    ink.rule(left, right, foot, 6);
    put(ink, this->foot(), {left, foot + 30, footWidth(), footHeight_});
    ink.use(120, true);
    ink.right(QStringLiteral("page %1 of %2").arg(number).arg(count), right, foot + 30);
  }

  const Sheet& sheet_;
  const Stamp& stamp_;
  Paper paper_;
  QRectF page_;
  double headHeight_ = 0;
  double footHeight_ = 0;
};

} // namespace

QByteArray pdfOf(const Sheet& sheet, const Stamp& stamp, Paper paper) {
  return Pages(sheet, stamp, paper).print();
}

std::vector<QImage> picturesOf(const Sheet& sheet, const Stamp& stamp, Paper paper, int dots) {
  return Pages(sheet, stamp, paper).pictures(dots);
}

} // namespace hangbook::reports
