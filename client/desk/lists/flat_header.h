// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHeaderView>

namespace hangbook::desk {

/// Headings of a list: flat, on the same margins as the cells below them, with a small arrow where the list
/// is sorted.
class FlatHeader : public QHeaderView {
  Q_OBJECT
public:
  explicit FlatHeader(QWidget* parent = nullptr);

protected:
  void paintSection(QPainter* painter, const QRect& box, int section) const override;
};

} // namespace hangbook::desk
