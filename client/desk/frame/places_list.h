// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>

namespace hangbook::desk {

/// The plain list of places at the left edge: names with their keys, the present one marked.
class PlacesList : public QListWidget {
  Q_OBJECT
public:
  explicit PlacesList(QWidget* parent = nullptr);
  void addPlace(const QString& title, const QString& keys);
  QSize sizeHint() const override;
};

} // namespace hangbook::desk
