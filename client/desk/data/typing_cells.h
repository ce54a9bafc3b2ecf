// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace hangbook::desk {

/// Cells of a table whose model follows every key, so that a picture beside it does too. Escape gives the
/// cell back what stood in it.
class TypingCells : public QStyledItemDelegate {
  Q_OBJECT
public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void follow(QWidget* editor);
};

} // namespace hangbook::desk
