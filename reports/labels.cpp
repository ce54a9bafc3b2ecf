// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/labels.h"

#include <cmath>

#include <QFile>
#include <QFont>
#include <QFontMetricsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "quantity/error.h"
#include "reports/qr.h"

namespace hangbook::reports {
namespace {

constexpr int dotsPerInch = 600;
constexpr double dotsPerMm = dotsPerInch / 25.4;
constexpr int leastModule = 4;  // dots; below 0.17 mm no cheap printer and scanner agree
constexpr double padding = 2.0; // mm, inside a label

QFont fontOf(double heightMm, bool bold) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(std::max(1, static_cast<int>(heightMm * dotsPerMm)));
  font.setBold(bold);
  return font;
}

/// A line of text that is set smaller until it fits.
double drawWhole(QPainter& painter, const QString& text, QRectF room, double heightMm) {
  for (double height = heightMm;; height *= 0.95) {
    painter.setFont(fontOf(height, true));
    const QFontMetricsF metrics(painter.font(), painter.device());
    if (metrics.horizontalAdvance(text) <= room.width() || height < 0.8) {
      painter.drawText(QPointF(room.left(), room.top() + metrics.ascent()), text);
      return metrics.height();
    }
  }
}

/// Lines broken between words, as many as fit; the last one may end in "…".
void drawLines(QPainter& painter, const QString& text, QRectF room, double heightMm) {
  painter.setFont(fontOf(heightMm, false));
  const QFontMetricsF metrics(painter.font(), painter.device());
  const int most = static_cast<int>(room.height() / metrics.lineSpacing());
  QStringList words = text.split(u' ', Qt::SkipEmptyParts);
  for (int line = 0; line < most && !words.isEmpty(); ++line) {
    QString taken = words.takeFirst();
    while (!words.isEmpty() && metrics.horizontalAdvance(taken + u' ' + words.front()) <= room.width()) {
      taken += u' ' + words.takeFirst();
    }
    if (line + 1 == most && !words.isEmpty()) {
      taken += QStringLiteral(" …");
    }
    taken = metrics.elidedText(taken, Qt::ElideRight, room.width());
    painter.drawText(QPointF(room.left(), room.top() + line * metrics.lineSpacing() + metrics.ascent()),
                     taken);
  }
}

void drawLabel(QPainter& painter, const Label& label, const LabelSheet& sheet, double leftMm, double topMm) {
  const auto dots = [](double mm) { return static_cast<int>(std::lround(mm * dotsPerMm)); };
  const double side = std::min(sheet.labelHeight - padding, sheet.labelWidth / 2);
  drawCode(painter, label.code, dots(leftMm + padding / 2), dots(topMm + (sheet.labelHeight - side) / 2),
           dots(side), leastModule);
  const double textLeft = leftMm + padding / 2 + side;
  QRectF room(dots(textLeft), dots(topMm + padding), dots(leftMm + sheet.labelWidth - padding - textLeft),
              dots(sheet.labelHeight - 2 * padding));
  painter.setPen(Qt::black);
  room.setTop(room.top() + drawWhole(painter, label.code, room, sheet.labelHeight / 5));
  const QString below = label.line.isEmpty() ? label.title : label.title + QStringLiteral(" · ") + label.line;
  drawLines(painter, below, room, sheet.labelHeight / 10);
}

void draw(QPdfWriter& writer, const std::vector<Label>& labels, const LabelSheet& sheet, int skip) {
  QPainter painter(&writer);
  int place = skip;
  const int onSheet = sheet.columns * sheet.rows;
  for (const Label& label : labels) {
    if (place == onSheet) {
      writer.newPage();
      place = 0;
    }
    drawLabel(painter, label, sheet, sheet.left + (place % sheet.columns) * sheet.stepX,
              sheet.top + (place / sheet.columns) * sheet.stepY);
    ++place;
  }
}

} // namespace

const std::vector<LabelSheet>& labelSheets() {
  constexpr double inch = 25.4;
  static const std::vector<LabelSheet> sheets{
      {QStringLiteral("a4"), 210, 297, 3, 8, 70, 36, 0, 4.5, 70, 36},
      {QStringLiteral("letter"), 8.5 * inch, 11 * inch, 3, 10, 2.625 * inch, inch, 0.1875 * inch, 0.5 * inch,
       2.75 * inch, inch},
      {QStringLiteral("roll"), 57, 32, 1, 1, 57, 32, 0, 0, 57, 32},
  };
  return sheets;
}

const LabelSheet& labelSheet(const QString& name) {
  std::string names;
  for (const LabelSheet& each : labelSheets()) {
    if (each.name.compare(name, Qt::CaseInsensitive) == 0) {
      return each;
    }
    names += (names.empty() ? "" : ", ") + each.name.toStdString();
  }
  throw Error(Trouble::badInput,
              "\"" + name.toStdString() + "\" is not a sheet of labels; expected is one of " + names);
}

Label labelOf(const fleet::Unit& unit) {
  return {unit.serial,
          unit.pieces ? QStringLiteral("%1, %2 pieces").arg(unit.type).arg(*unit.pieces) : unit.type,
          unit.owner};
}

void writeLabels(const QString& file, const std::vector<Label>& labels, const LabelSheet& sheet, int skip) {
  if (labels.empty()) {
    throw Error(Trouble::badInput, "there is nothing to print");
  }
  if (skip < 0 || skip >= sheet.columns * sheet.rows) {
    throw Error(Trouble::badInput, "a sheet has the places 0 to " +
                                       std::to_string(sheet.columns * sheet.rows - 1) + " to leave free");
  }
  QSaveFile target(file);
  if (!target.open(QIODevice::WriteOnly)) {
    throw Error(Trouble::badInput, "cannot be written: " + target.errorString().toStdString(),
                file.toStdString());
  }
  {
    QPdfWriter writer(&target);
    writer.setResolution(dotsPerInch);
    writer.setPageSize(QPageSize(QSizeF(sheet.pageWidth, sheet.pageHeight), QPageSize::Millimeter, sheet.name,
                                 QPageSize::ExactMatch));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QStringLiteral("Labels"));
    writer.setCreator(QStringLiteral("Hangbook"));
    draw(writer, labels, sheet, skip);
  }
  if (!target.commit()) {
    throw Error(Trouble::badInput, "cannot be written: " + target.errorString().toStdString(),
                file.toStdString());
  }
}

} // namespace hangbook::reports
