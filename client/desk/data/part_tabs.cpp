// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/part_tabs.h"

#include <QShortcut>

#include "desk/words/words.h"

namespace hangbook::desk {

QTabWidget* partTabs(const QString& name, const QString& says, QWidget* parent) {
  auto* tabs = new QTabWidget(parent);
  tabs->setObjectName(name);
  tabs->setAccessibleName(says);
  tabs->setDocumentMode(true);
  const auto step = [tabs](const QKeySequence& keys, int by, const QString& what) {
    auto* shortcut = new QShortcut(keys, tabs);
    shortcut->setWhatsThis(what);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(shortcut, &QShortcut::activated, tabs, [tabs, by] {
      tabs->setCurrentIndex((tabs->currentIndex() + by + tabs->count()) % tabs->count());
      if (tabs->focusWidget() == nullptr || !tabs->focusWidget()->isVisible()) {
        tabs->setFocus();
      }
    });
  };
  step(Qt::CTRL | Qt::Key_Tab, 1, Words::tr("Next part"));
  step(Qt::CTRL | Qt::SHIFT | Qt::Key_Tab, -1, Words::tr("Part before it"));
  return tabs;
}

} // namespace hangbook::desk
