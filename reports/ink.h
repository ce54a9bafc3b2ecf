// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QString>

namespace hangbook::reports {

/// Dots of the page: a tenth of a point each, so that letters are measured without rounding to whole points.
inline constexpr int unitsPerInch = 720;

/// Text and rules on the page, black on white, in tenths of a point.
class Ink {
public:
  explicit Ink(QPainter& painter) : painter_(&painter) { use(100, false); }

  void use(int size, bool bold);
  double lineHeight() const;
  double widthOf(const QString& text) const;
  /// The text broken between words to a width; a longer word is broken anywhere. A figure stays with its
  /// unit, and a number with the word that it counts ("cart 1"), where the width allows.
  QStringList broken(const QString& text, double width) const;
  /// Of the widest of what `broken` keeps in one piece.
  double widestPiece(const QString& text) const;
  /// How high the text stands in a width.
  double heightOf(const QString& text, double width) const;
  /// Draws it broken into the room's width and answers where the next line would begin.
  double lines(const QString& text, const QRectF& room);
  void right(const QString& text, double rightEdge, double top);
  void rule(double left, double right, double y, double weight);
  void box(const QRectF& room, double weight);
  QPainter& painter() { return *painter_; }

private:
  QPainter* painter_;
  QFont font_;
};

} // namespace hangbook::reports
