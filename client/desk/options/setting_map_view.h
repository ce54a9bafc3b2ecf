// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "desk/options/paint_setting_map.h"

namespace hangbook::desk {

/// The map of settings with the chosen one as a point. Left and right move it by one tilt of the grid, up and
/// down by a centimetre of trim (with Shift ten), page up and down by a link; a click takes it to the nearest
/// place. Ctrl+C copies the map as a picture.
class SettingMapView : public QWidget {
  Q_OBJECT
public:
  explicit SettingMapView(QWidget* parent = nullptr);

  /// None: nothing but `empty` in the middle.
  void setMap(const std::optional<options::SettingMap>& map, const QString& empty);
  /// Where the point is and what was judged there; no verdict while it is being judged.
  void setPoint(const options::Setting& at, std::optional<options::Verdict> verdict);
  void setFigures(const Figures& figures);
  const options::Setting& point() const { return shown_.at; }
  MapScale scale() const;
  QImage picture() const;

  QSize minimumSizeHint() const override { return {280, 160}; }

Q_SIGNALS:
  void settingAsked(const options::Setting& setting);

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void ask(double tiltDeg, double trimM);
  void askMark(int by);
  double tiltBy(int steps) const;
  double trimBy(int steps) const;
  void paintInto(QPainter& painter) const;
  void tell();

  bool has_ = false;
  MapShown shown_;
  QString empty_;
  Figures figures_;
};

} // namespace hangbook::desk
