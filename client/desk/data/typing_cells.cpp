// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/typing_cells.h"

#include <QKeyEvent>
#include <QLineEdit>

#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

constexpr const char* stoodBefore = "stoodBefore";

} // namespace

QWidget* TypingCells::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                   const QModelIndex& index) const {
  auto* line = new QLineEdit(parent);
  line->setObjectName(QStringLiteral("cellEditor"));
  line->setFrame(false);
  line->setProperty(stoodBefore, index.data(Qt::EditRole));
  const QString row = index.siblingAtColumn(0).data().toString();
  line->setAccessibleName(Words::tr("%1 of %2")
                              .arg(index.model()->headerData(index.column(), Qt::Horizontal).toString(),
                                   row.isEmpty() ? QString::number(index.row() + 1) : row));
  auto* self = const_cast<TypingCells*>(this); // Qt makes editors in a const function
  connect(line, &QLineEdit::textEdited, self, [self, line] { self->follow(line); });
  return line;
}

void TypingCells::follow(QWidget* editor) {
  Q_EMIT commitData(editor);
}

void TypingCells::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* line = qobject_cast<QLineEdit*>(editor);
  const QString text = index.data(Qt::EditRole).toString();
  if (line != nullptr && line->text() != text) { // what the editor itself just gave must not move its cursor
    line->setText(text);
  }
}

bool TypingCells::eventFilter(QObject* watched, QEvent* event) {
  auto* line = qobject_cast<QLineEdit*>(watched);
  if (line != nullptr && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    line->setText(line->property(stoodBefore).toString());
    follow(line);
  }
  return QStyledItemDelegate::eventFilter(watched, event);
}

} // namespace hangbook::desk
