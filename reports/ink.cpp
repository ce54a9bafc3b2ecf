// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/ink.h"

#include <QFontMetricsF>

namespace hangbook::reports {

void Ink::use(int size, bool bold) {
  font_ = QFont(QStringLiteral("DejaVu Sans"));
  font_.setPixelSize(size);
  font_.setBold(bold);
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
  for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
    QString line;
    for (QString word : paragraph.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
      const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
      if (widthOf(longer) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines << line;
      }
      while (widthOf(word) > width && word.size() > 1) {
        qsizetype fits = word.size() - 1;
        while (fits > 1 && widthOf(word.left(fits)) > width) {
          --fits;
        }
        lines << word.left(fits);
        word = word.mid(fits);
      }
      line = word;
    }
    lines << line;
  }
  return lines;
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
