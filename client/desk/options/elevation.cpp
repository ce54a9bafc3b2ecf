// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/elevation.h"

#include <algorithm>

#include <QClipboard>
#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QWheelEvent>

#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

constexpr double leastPixelsPerMetre = 2.0;
constexpr double mostPixelsPerMetre = 2000.0;

QString metricBar(int metres) {
  return QStringLiteral("%1 m").arg(metres);
}

QString customaryBar(int metres) {
  return QString::fromStdString(show(hangbook::metres(metres), 1, UnitSystem::usCustomary));
}

} // namespace

Elevation::Elevation(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("elevation"));
  setAccessibleName(tr("Side elevation"));
  setToolTip({});
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setCursor(Qt::OpenHandCursor);
}

void Elevation::setDrawing(const Drawing& drawing) {
  const bool sameRoom = drawing.room == drawing_.room;
  drawing_ = drawing;
  setAccessibleDescription(drawing.description);
  if (!sameRoom || fit_ != Fit::own) {
    if (!sameRoom && fit_ == Fit::own) {
      fit_ = Fit::room;
    }
    fit();
  }
  update();
}

void Elevation::setEmptyText(const QString& text) {
  emptyText_ = text;
  update();
}

void Elevation::setUnits(UnitSystem system) {
  units_ = system;
  update();
}

void Elevation::showRoom() {
  fit_ = Fit::room;
  fit();
}

void Elevation::showHang() {
  fit_ = Fit::hang;
  fit();
}

void Elevation::fit() {
  if (fit_ != Fit::own) {
    const double margin = fit_ == Fit::room ? 18.0 : 40.0;
    const QRectF box = QRectF(rect()).adjusted(margin, margin, -margin, -margin - 6);
    const QRectF& metres = fit_ == Fit::room || drawing_.hang.isEmpty() ? drawing_.room : drawing_.hang;
    scale_ = fitted(metres, box);
    if (fit_ == Fit::room) {
      // A long room leaves height over: it stands on the lower edge, and the hang is shown larger above it.
      const double over = box.height() - metres.height() * scale_.pixelsPerMetre;
      scale_.origin.ry() += over / 2.0;
    }
  }
  update();
}

/// Where the hang is shown larger while the whole room is; empty where there is no height left for it.
QRectF Elevation::lensBox() const {
  constexpr double leastHeight = 96.0;
  if (fit_ != Fit::room || drawing_.hang.isEmpty()) {
    return {};
  }
  const double roomTop =
      scale_.toScreen({0.0, drawing_.room.bottom()}).y(); // metres count up: bottom() is the top
  const double height = roomTop - 2.0 * space::step - 14.0;
  return height < leastHeight ? QRectF()
                              : QRectF(width() * 0.4, space::step, width() * 0.6 - space::step, height);
}

void Elevation::zoom(double factor, QPointF about) {
  const double wanted = std::clamp(scale_.pixelsPerMetre * factor, leastPixelsPerMetre, mostPixelsPerMetre);
  const QPointF fixed = scale_.toMetres(about);
  scale_.pixelsPerMetre = wanted;
  scale_.origin += about - scale_.toScreen(fixed);
  fit_ = Fit::own;
  update();
}

void Elevation::pan(QPointF pixels) {
  scale_.origin += pixels;
  fit_ = Fit::own;
  update();
}

void Elevation::paintInto(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  painter.fillRect(rect(), colours.sheet);
  if (drawing_.shapes.empty()) {
    painter.setPen(colours.quiet);
    painter.drawText(rect().adjusted(space::broad, 0, -space::broad, 0), Qt::AlignCenter | Qt::TextWordWrap,
                     emptyText_);
  } else {
    const auto barText = units_ == UnitSystem::metric ? &metricBar : &customaryBar;
    const QRectF lens = lensBox();
    Drawing room = drawing_;
    if (!lens.isEmpty()) {
      std::erase_if(room.labels, [](const Label& each) { return each.ofHang; });
    }
    paintDrawing(painter, room, scale_, rect(), colours, font(), barText);
    if (!lens.isEmpty()) {
      painter.fillRect(lens, colours.sheet);
      paintDrawing(painter, drawing_, fitted(drawing_.hang, lens.adjusted(4, 4, -4, -18)), lens, colours,
                   font(), barText);
      painter.setPen(QPen(colours.line, 1));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(lens);
    }
  }
  painter.setPen(hasFocus() ? QPen(colours.accent, 2) : QPen(colours.frame, 1));
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

QImage Elevation::picture() const {
  // Twice the screen's grid, so that it can go into a document.
  QImage image(size() * 2, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(2.0);
  QPainter painter(&image);
  paintInto(painter);
  return image;
}

void Elevation::copyPicture() const {
  QGuiApplication::clipboard()->setImage(picture());
}

void Elevation::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintInto(painter);
}

void Elevation::resizeEvent(QResizeEvent*) {
  fit();
}

void Elevation::wheelEvent(QWheelEvent* event) {
  zoom(event->angleDelta().y() > 0 ? 1.15 : 1.0 / 1.15, event->position());
  event->accept();
}

void Elevation::mousePressEvent(QMouseEvent* event) {
  dragFrom_ = event->position();
  lifting_ = event->button() == Qt::LeftButton && onHang(dragFrom_);
}

/// On a cabinet or within a finger's width of one.
bool Elevation::onHang(QPointF pixels) const {
  constexpr double reach = 6.0;
  if (drawing_.hang.isEmpty()) {
    return false;
  }
  const QRectF box =
      QRectF(scale_.toScreen(drawing_.hang.topLeft()), scale_.toScreen(drawing_.hang.bottomRight()))
          .normalized();
  return box.adjusted(-reach, -reach, reach, reach).contains(pixels);
}

void Elevation::mouseMoveEvent(QMouseEvent* event) {
  if (!event->buttons().testFlag(Qt::LeftButton)) {
    return;
  }
  if (lifting_) {
    Q_EMIT liftAsked((dragFrom_.y() - event->position().y()) / scale_.pixelsPerMetre);
    dragFrom_ = event->position();
  } else {
    pan(event->position() - dragFrom_);
    dragFrom_ = event->position();
  }
}

void Elevation::keyPressEvent(QKeyEvent* event) {
  constexpr double step = 40.0;
  const QPointF middle = QRectF(rect()).center();
  if (event->matches(QKeySequence::Copy)) {
    copyPicture();
    return;
  }
  switch (event->key()) {
  case Qt::Key_Plus:
    zoom(1.25, middle);
    return;
  case Qt::Key_Minus:
    zoom(0.8, middle);
    return;
  case Qt::Key_0:
    showRoom();
    return;
  case Qt::Key_H:
    showHang();
    return;
  case Qt::Key_Left:
    pan({step, 0});
    return;
  case Qt::Key_Right:
    pan({-step, 0});
    return;
  case Qt::Key_Up:
    pan({0, step});
    return;
  case Qt::Key_Down:
    pan({0, -step});
    return;
  default:
    QWidget::keyPressEvent(event);
  }
}

void Elevation::contextMenuEvent(QContextMenuEvent* event) {
  QMenu menu(this);
  menu.addAction(tr("Whole room\t0"), this, &Elevation::showRoom);
  menu.addAction(tr("Hang alone\tH"), this, &Elevation::showHang);
  menu.addAction(tr("Copy as picture\tCtrl+C"), this, &Elevation::copyPicture);
  menu.exec(event->globalPos());
}

} // namespace hangbook::desk
