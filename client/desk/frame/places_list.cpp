// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/places_list.h"

#include <algorithm>

#include <QPainter>
#include <QStyledItemDelegate>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

constexpr int keysRole = Qt::UserRole;

class PlacePainter : public QStyledItemDelegate {
public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
    return {100, QFontMetrics(option.font).height() + 2 * space::step};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Colours& colours = coloursOf(option.palette);
    const bool enabled = option.state.testFlag(QStyle::State_Enabled);
    const bool here = enabled && option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->fillRect(option.rect, here ? colours.chosen : colours.raised);
    if (here) {
      painter->fillRect(QRect(option.rect.topLeft(), QSize(4, option.rect.height())), colours.accent);
    }
    QFont name(option.font);
    name.setBold(here);
    painter->setFont(name);
    painter->setPen(enabled ? colours.text : colours.quiet);
    const QRect box = option.rect.adjusted(space::wide, 0, -space::step, 0);
    painter->drawText(box, Qt::AlignVCenter | Qt::AlignLeft, index.data().toString());
    painter->setFont(fontFor(TextSize::note, option.font));
    painter->setPen(colours.quiet);
    painter->drawText(box, Qt::AlignVCenter | Qt::AlignRight, index.data(keysRole).toString());
    if (option.state.testFlag(QStyle::State_HasFocus)) {
      painter->setPen(QPen(colours.accent, 1));
      painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
    }
    painter->restore();
  }
};

} // namespace

PlacesList::PlacesList(QWidget* parent) : QListWidget(parent) {
  setObjectName(QStringLiteral("places"));
  setAccessibleName(tr("Places"));
  setItemDelegate(new PlacePainter(this));
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
  viewport()->setBackgroundRole(QPalette::Button);
}

void PlacesList::addPlace(const QString& title, const QString& keys) {
  auto* item = new QListWidgetItem(title, this);
  item->setData(keysRole, keys.right(1)); // the figure alone; the whole of it in the tooltip
  item->setToolTip(keys);
  item->setData(Qt::AccessibleTextRole, QString(title + QStringLiteral(", ") + keys));
}

QSize PlacesList::sizeHint() const {
  QFont bold(font());
  bold.setBold(true);
  int longest = QFontMetrics(font()).averageCharWidth() * 15;
  for (int row = 0; row < count(); ++row) {
    longest = std::max(longest, QFontMetrics(bold).horizontalAdvance(item(row)->text()));
  }
  return {longest + space::wide + 3 * space::step, 200}; // with the figure of its key
}

} // namespace hangbook::desk
