// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "desk/data/seat_blocks.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"
#include "exchange/venue_text.h"

namespace hangbook::desk {

/// The trim that is chosen for a hang of a show in the venue.
struct SideTrim {
  QString show{};
  QString hang{};
  double trim = 0.0; ///< lowest edge above the datum, metres
};

/// Of the shows there, as far as something is chosen for them.
std::vector<SideTrim> trimsIn(const Overview& overview, const QString& venue);

/// A venue from the side, to one scale both ways: each section's floor and ears over their distance from the
/// datum, low steel, bounds of trim, undersides of obstructions, points, and the trims that are chosen.
class VenueSide : public QWidget {
  Q_OBJECT
public:
  explicit VenueSide(const Figures& figures, QWidget* parent = nullptr);

  /// As far as it can be read.
  void setVenue(const venue::Venue& readable);
  void setTrims(std::vector<SideTrim> trims);
  /// The part of that name is being typed.
  void setCurrent(exchange::VenuePart part, const QString& name);
  const std::vector<SeatProfile>& profiles() const { return profiles_; }
  QSize sizeHint() const override { return {420, 200}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  /// A height over the whole width, with its words.
  struct Level {
    QString words;
    double height;
    bool trim; ///< of a hang
  };
  std::vector<Level> levels() const;
  void describe();
  QRectF extent() const;
  void paintSeats(QPainter& painter, const QTransform& to) const;
  void paintLevels(QPainter& painter, const QTransform& to) const;
  void paintSteel(QPainter& painter, const QTransform& to) const;

  Figures figures_;
  venue::Venue venue_;
  std::vector<SeatProfile> profiles_;
  std::vector<SideTrim> trims_;
  exchange::VenuePart currentPart_ = exchange::VenuePart::point;
  QString currentName_;
};

} // namespace hangbook::desk
