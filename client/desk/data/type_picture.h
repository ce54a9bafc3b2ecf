// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "catalogue/catalogue.h"

namespace hangbook::desk {

/// A place of a type, with how it is drawn.
struct TypeMark {
  enum class Shape { pin, centre, corner };
  QString name{};
  QPointF place{}; ///< metres: x forward, y up
  Shape shape = Shape::pin;
};

struct TypeDrawing {
  std::vector<QPointF> outline{};
  std::vector<TypeMark> marks{};
  bool empty() const { return outline.empty() && marks.empty(); }
};

TypeDrawing drawingOf(const catalogue::CabinetType& type);
TypeDrawing drawingOf(const catalogue::BarType& type);

/// A cabinet or bar from its side, forward to the right, to one scale: outline, pins and centres of gravity.
class TypePicture : public QWidget {
  Q_OBJECT
public:
  explicit TypePicture(QWidget* parent = nullptr);
  void setDrawing(TypeDrawing drawing);
  const TypeDrawing& drawing() const { return drawing_; }
  QSize sizeHint() const override { return {360, 420}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  TypeDrawing drawing_;
};

} // namespace hangbook::desk
