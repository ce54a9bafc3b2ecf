// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace hangbook::desk {

/// Draws the cells of every list: a verdict as sign and word, a share of a limit as bar and figure, all else
/// as text. A selected row keeps its text and verdict colours on a quiet ground, so that they stay readable.
class RowPainter : public QStyledItemDelegate {
  Q_OBJECT
public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace hangbook::desk
