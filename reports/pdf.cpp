// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/pdf.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "reports/ink.h"
#include "reports/pieces.h"
#include "reports/qr.h"

namespace hangbook::reports {
namespace {

constexpr double margin = 400;     // 40 pt
constexpr double headHeight = 950; // title, show, QR code
constexpr double footHeight = 420; // two lines and a rule
constexpr double codeSide = 800;   // 28 mm

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
  std::vector<std::vector<Piece>> pagesFor(QPainter& painter) const {
    return paginated(piecesOf(sheet_, Ink(painter), body().width()), body().height());
  }
  QRectF body() const { return page_.adjusted(margin, margin + headHeight, -margin, -margin - footHeight); }

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
    const double width = right - left - codeSide - 150;
    double y = page_.top() + margin;
    ink.use(220, true);
    y = ink.lines(sheet_.title, {left, y, width, 300});
    ink.use(130, true);
    y = ink.lines(sheet_.show, {left, y + 10, width, 200});
    ink.use(105, false);
    for (const QString& line : sheet_.about) {
      y = ink.lines(line, {left, y, width, 150});
    }
    if (number > 1 && !sheet_.notCleared.isEmpty()) {
      ink.use(140, true);
      ink.lines(QStringLiteral("NOT CLEARED TO LIFT – see page 1"), {left, y + 15, width, 200});
    }
    drawCode(painter, stamp_.code, static_cast<int>(right - codeSide + 60),
             static_cast<int>(page_.top() + margin - 60), static_cast<int>(codeSide), 1);
    ink.rule(left, right, page_.top() + margin + headHeight - 90, 12);
    const double foot = page_.bottom() - margin - footHeight + 100;
    ink.rule(left, right, foot, 6);
    ink.use(86, false);
    double at = ink.lines(QStringLiteral("%1 · Hangbook %2 · printed %3 · check %4")
                              .arg(sheet_.revision, stamp_.program,
                                   stamp_.printed.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")),
                                   stamp_.checksum),
                          {left, foot + 30, right - left - 900, 150});
    ink.lines(sheet_.sides, {left, at, right - left - 900, 150});
    ink.use(110, true);
    ink.right(QStringLiteral("page %1 of %2").arg(number).arg(count), right, foot + 30);
  }

  const Sheet& sheet_;
  const Stamp& stamp_;
  Paper paper_;
  QRectF page_;
};

} // namespace

QByteArray pdfOf(const Sheet& sheet, const Stamp& stamp, Paper paper) {
  return Pages(sheet, stamp, paper).print();
}

std::vector<QImage> picturesOf(const Sheet& sheet, const Stamp& stamp, Paper paper, int dots) {
  return Pages(sheet, stamp, paper).pictures(dots);
}

} // namespace hangbook::reports
