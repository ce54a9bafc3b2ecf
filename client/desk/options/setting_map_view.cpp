// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/setting_map_view.h"

#include <algorithm>
#include <cmath>

#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>

#include "desk/style/scale.h"

namespace hangbook::desk {

SettingMapView::SettingMapView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("settingMap"));
  setAccessibleName(tr("Tilts and trims at which it stands"));
  setFocusPolicy(Qt::StrongFocus);
  setToolTip(tr("Left and right: one tilt. Up and down: one centimetre of trim, with Shift ten. Page up and "
                "down: one link of the chain. Ctrl+C copies the picture."));
}

void SettingMapView::setMap(const std::optional<options::SettingMap>& map, const QString& empty) {
  has_ = map.has_value();
  shown_.map = map.value_or(options::SettingMap());
  empty_ = empty;
  tell();
}

void SettingMapView::setPoint(const options::Setting& at, std::optional<options::Verdict> verdict) {
  shown_.at = at;
  shown_.verdict = verdict;
  tell();
}

void SettingMapView::setFigures(const Figures& figures) {
  figures_ = figures;
  tell();
}

void SettingMapView::tell() {
  setAccessibleDescription(has_ ? describeMap(shown_, figures_) : empty_);
  update();
}

MapScale SettingMapView::scale() const {
  return scaleOf(shown_, QRectF(rect()).adjusted(2, 2, -2, -2), font());
}

void SettingMapView::paintInto(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), colours.ground);
  if (has_) {
    paintSettingMap(painter, shown_, scale(), colours, font(), figures_);
    return;
  }
  painter.setPen(colours.quiet);
  painter.drawText(rect().adjusted(space::broad, space::broad, -space::broad, -space::broad),
                   Qt::AlignCenter | Qt::TextWordWrap, empty_);
}

void SettingMapView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintInto(painter);
  const Colours& colours = coloursOf(palette());
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(hasFocus() ? colours.accent : colours.frame, 1));
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

QImage SettingMapView::picture() const {
  constexpr double sharp = 2.0;
  QImage image(size() * sharp, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(sharp);
  QPainter painter(&image);
  paintInto(painter);
  return image;
}

/// The next tilt of the grid that way; from between two of them the neighbour.
double SettingMapView::tiltBy(int steps) const {
  const double step = shown_.map.tiltStepDeg;
  const double now = shown_.at.tiltDeg / step;
  constexpr double slack = 1e-6;
  return step * (steps > 0 ? std::floor(now + slack) + steps : std::ceil(now - slack) + steps);
}

double SettingMapView::trimBy(int steps) const {
  const double now = shown_.at.trimM / options::mapTrimStepM;
  constexpr double slack = 1e-6;
  return options::mapTrimStepM *
         (steps > 0 ? std::floor(now + slack) + steps : std::ceil(now - slack) + steps);
}

void SettingMapView::ask(double tiltDeg, double trimM) {
  options::Setting wanted = shown_.at;
  wanted.tiltDeg = tiltDeg;
  wanted.trimM = trimM;
  setPoint(wanted, std::nullopt);
  Q_EMIT settingAsked(wanted);
}

/// The next usable link.
void SettingMapView::askMark(int by) {
  if (!shown_.at.mark) {
    return;
  }
  std::optional<int> next;
  for (const auto& line : shown_.map.marks) {
    if (by > 0 ? line.mark > *shown_.at.mark && !next : line.mark < *shown_.at.mark) {
      next = line.mark;
    }
  }
  if (next) {
    options::Setting wanted = shown_.at;
    wanted.mark = next;
    setPoint(wanted, std::nullopt);
    Q_EMIT settingAsked(wanted);
  }
}

void SettingMapView::keyPressEvent(QKeyEvent* event) {
  if (!has_) {
    QWidget::keyPressEvent(event);
    return;
  }
  if (event->matches(QKeySequence::Copy)) {
    QGuiApplication::clipboard()->setImage(picture());
    return;
  }
  const int trims = event->modifiers().testFlag(Qt::ShiftModifier) ? 10 : 1;
  switch (event->key()) {
  case Qt::Key_Left:
    ask(tiltBy(-1), shown_.at.trimM);
    break;
  case Qt::Key_Right:
    ask(tiltBy(1), shown_.at.trimM);
    break;
  case Qt::Key_Up:
    ask(shown_.at.tiltDeg, trimBy(trims));
    break;
  case Qt::Key_Down:
    ask(shown_.at.tiltDeg, trimBy(-trims));
    break;
  case Qt::Key_PageUp:
    askMark(1);
    break;
  case Qt::Key_PageDown:
    askMark(-1);
    break;
  default:
    QWidget::keyPressEvent(event);
  }
}

void SettingMapView::mousePressEvent(QMouseEvent* event) {
  const MapScale scale = this->scale();
  if (!has_ || event->button() != Qt::LeftButton || !scale.trims.contains(event->position())) {
    QWidget::mousePressEvent(event);
    return;
  }
  const double step = shown_.map.tiltStepDeg;
  ask(step * std::round(scale.tiltAt(event->position().x()) / step),
      options::mapTrimStepM * std::round(scale.trimAt(event->position().y()) / options::mapTrimStepM));
}

void SettingMapView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void SettingMapView::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

} // namespace hangbook::desk
