// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/ink.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QRegularExpression>

namespace hangbook::reports {
namespace {

/// A paragraph in the pieces that no line is broken in: words, but "3.57 kN" and "cart 1" whole.
QStringList pieces(const QString& paragraph) {
  static const QRegularExpression figure(QStringLiteral("^[(“]?[+-]?\\d[\\d.,]*$"));
  static const QRegularExpression unit(
      QStringLiteral("^(m|cm|mm|kN|kg|lb|lbf|ft|in|m/s|ft/s|s|dB|°C|%|people|×)[.,;:)”]*$"));
  static const QRegularExpression word(QStringLiteral("^[\\p{L}]+$"));
  static const QRegularExpression number(QStringLiteral("^\\d{1,4}[.,;:)”]*$"));
  QStringList made;
  QString before;
  for (const QString& each : paragraph.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    const bool whole = (figure.match(before).hasMatch() && unit.match(each).hasMatch()) ||
                       (word.match(before).hasMatch() && number.match(each).hasMatch()) ||
                       before == QStringLiteral("×");
    if (whole) {
      made.back() += QLatin1Char(' ') + each;
    } else {
      made << each;
    }
    before = each;
  }
  return made;
}

} // namespace

void Ink::use(int size, bool bold) {
  font_ = QFont(QStringLiteral("DejaVu Sans"));
  font_.setPixelSize(size);
  font_.setBold(bold);
  // Spaced by next to nothing: no letters are then drawn as one ("fi"), which whoever searches the PDF, or
  // copies a checksum out of it, would not find.
  font_.setLetterSpacing(QFont::AbsoluteSpacing, 0.1);
  painter_->setFont(font_);
  painter_->setPen(Qt::black);
}

double Ink::lineHeight() const {
  return QFontMetricsF(font_, painter_->device()).lineSpacing();
}

double Ink::widthOf(const QString& text) const {
  return QFontMetricsF(font_, painter_->device()).horizontalAdvance(text);
}

QStringList Ink::broken(const QString& text, double width) const {
  QStringList lines;
  QString line;
  const auto fits = [&](const QString& piece) {
    const QString longer = line.isEmpty() ? piece : line + QLatin1Char(' ') + piece;
    if (widthOf(longer) > width) {
      return false;
    }
    line = longer;
    return true;
  };
  const auto flush = [&] {
    if (!line.isEmpty()) {
      lines << line;
      line.clear();
    }
  };
  const auto put = [&](QString word) {
    if (fits(word)) {
      return;
    }
    flush();
    while (widthOf(word) > width && word.size() > 1) {
      qsizetype much = word.size() - 1;
      while (much > 1 && widthOf(word.left(much)) > width) {
        --much;
      }
      lines << word.left(much);
      word = word.mid(much);
    }
    line = word;
  };
  for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
    for (const QString& piece : pieces(paragraph)) {
      if (fits(piece)) {
        continue;
      }
      if (widthOf(piece) <= width) {
        flush();
        line = piece;
        continue;
      }
      const QStringList words = piece.split(QLatin1Char(' '));
      std::ranges::for_each(words, put);
    }
    lines << line;
    line.clear();
  }
  return lines;
}

double Ink::widestPiece(const QString& text) const {
  double widest = 0;
  for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
    for (const QString& piece : pieces(paragraph)) {
      widest = std::max(widest, widthOf(piece));
    }
  }
  return widest;
}

double Ink::heightOf(const QString& text, double width) const {
  return lineHeight() * static_cast<double>(broken(text, width).size());
}

double Ink::lines(const QString& text, const QRectF& room) {
  const QFontMetricsF metrics(font_, painter_->device());
  double y = room.top();
  for (const QString& line : broken(text, room.width())) {
    painter_->drawText(QPointF(room.left(), y + metrics.ascent()), line);
    y += metrics.lineSpacing();
  }
  return y;
}

void Ink::right(const QString& text, double rightEdge, double top) {
  const QFontMetricsF metrics(font_, painter_->device());
  painter_->drawText(QPointF(rightEdge - widthOf(text), top + metrics.ascent()), text);
}

void Ink::rule(double left, double right, double y, double weight) {
  painter_->setPen(QPen(Qt::black, weight));
  painter_->drawLine(QPointF(left, y), QPointF(right, y));
}

void Ink::box(const QRectF& room, double weight) {
  painter_->setPen(QPen(Qt::black, weight));
  painter_->setBrush(Qt::NoBrush);
  painter_->drawRect(room);
}

} // namespace hangbook::reports
