// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHeaderView>

#include "desk/style/scale.h"

namespace hangbook::desk {

/// Headings of a list: flat, on the same margins as the cells below them, with a small arrow where the list
/// is sorted. In two lines where `lines` is 2: a heading of several words is then broken where both are
/// shortest.
class FlatHeader : public QHeaderView {
  Q_OBJECT
public:
  explicit FlatHeader(QWidget* parent = nullptr, int lines = 1, int margin = space::cell);

  /// The least width in which that heading is read whole, its arrow left out.
  int leastWidth(int section) const;

protected:
  void paintSection(QPainter* painter, const QRect& box, int section) const override;

private:
  QStringList linesOf(int section) const;

  int lines_;
  int margin_; ///< left and right of a text
};

} // namespace hangbook::desk
