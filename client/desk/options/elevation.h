// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "desk/options/paint_drawing.h"
#include "quantity/text.h"

namespace hangbook::desk {

/// The side elevation, to scale. The hang can be taken hold of and moved up or down. Wheel or + and − zoom
/// about the pointer or middle, dragging or the arrow keys pan, 0 shows the whole room, H the hang alone;
/// Ctrl+C copies it as a picture.
class Elevation : public QWidget {
  Q_OBJECT
public:
  explicit Elevation(QWidget* parent = nullptr);

  void setDrawing(const Drawing& drawing);
  const Drawing& drawing() const { return drawing_; }
  /// Stands in the middle while there is nothing to draw.
  void setEmptyText(const QString& text);
  void setUnits(UnitSystem system);
  const Scale& scale() const { return scale_; }

  void showRoom();
  void showHang();
  void zoom(double factor, QPointF about);
  void pan(QPointF pixels);
  QImage picture() const;
  void copyPicture() const;

  QSize minimumSizeHint() const override { return {280, 160}; }

Q_SIGNALS:
  /// The hang was taken hold of and moved up by so much since the last time.
  void liftAsked(double metres);

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

private:
  enum class Fit { room, hang, own };
  void fit();
  bool onHang(QPointF pixels) const;
  QRectF lensBox() const;
  void paintInto(QPainter& painter) const;

  Drawing drawing_;
  QString emptyText_;
  Scale scale_;
  Fit fit_ = Fit::room;
  QPointF dragFrom_;
  bool lifting_ = false;
  UnitSystem units_ = UnitSystem::metric;
};

} // namespace hangbook::desk
