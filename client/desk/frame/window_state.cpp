// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/window_state.h"

#include <QEvent>
#include <QSplitter>
#include <QStackedWidget>
#include <QStandardPaths>

#include "desk/frame/finder.h"
#include "desk/frame/place.h"
#include "desk/frame/window.h"
#include "desk/lists/column_fitter.h"

namespace hangbook::desk {
namespace {

const QString geometryKey = QStringLiteral("window/geometry");
const QString recentKey = QStringLiteral("finder/recent");
const QString placeKey = QStringLiteral("window/place");

QString keyOf(const QSplitter& splitter) {
  return QStringLiteral("splitters/") + splitter.objectName();
}

/// Sizes of as many parts as the splitter has, none negative and not all nothing; otherwise none.
QList<int> sizesFrom(const QStringList& texts, int parts) {
  QList<int> sizes;
  bool some = false;
  for (const QString& each : texts) {
    bool read = false;
    const int size = each.toInt(&read);
    if (!read || size < 0 || size > QWIDGETSIZE_MAX) {
      return {};
    }
    sizes.push_back(size);
    some = some || size > 0;
  }
  return sizes.size() == parts && some ? sizes : QList<int>();
}

} // namespace

WindowState::WindowState(Window& window, const QString& file, Settled settled)
    : window_(window), settings_(file, QSettings::IniFormat), settled_(settled) {
  if (!settled_.size) {
    window_.restoreGeometry(settings_.value(geometryKey).toByteArray());
  }
  if (!settled_.place) {
    window_.goTo(settings_.value(placeKey).toString());
  }
  for (Place* place : window_.places()) {
    for (QSplitter* splitter : place->findChildren<QSplitter*>()) {
      if (!splitter->objectName().isEmpty()) {
        follow(*splitter);
      }
    }
    for (ColumnFitter* columns : place->findChildren<ColumnFitter*>()) {
      const QString key = QStringLiteral("columns/") + columns->parent()->objectName();
      columns->restore(settings_.value(key).toString());
      connect(columns, &ColumnFitter::changedByHand, this,
              [this, columns, key] { settings_.setValue(key, columns->byHand()); });
    }
  }
  if (auto* finder = window_.findChild<Finder*>()) {
    finder->setRecent(settings_.value(recentKey).toStringList());
    connect(finder, &Finder::recentChanged, this,
            [this, finder] { settings_.setValue(recentKey, finder->recent()); });
  }
  window_.installEventFilter(this);
}

QString WindowState::usualFile() {
  return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) + QStringLiteral("/window.ini");
}

void WindowState::follow(QSplitter& splitter) {
  const QList<int> sizes = sizesFrom(settings_.value(keyOf(splitter)).toStringList(), splitter.count());
  if (!sizes.isEmpty()) {
    splitter.setSizes(sizes);
  }
  // Told only of moves by hand, not of what a layout or setSizes does.
  connect(&splitter, &QSplitter::splitterMoved, this, [this, &splitter] {
    QStringList texts;
    for (const int each : splitter.sizes()) {
      texts.push_back(QString::number(each));
    }
    settings_.setValue(keyOf(splitter), texts);
  });
}

bool WindowState::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Close && watched == &window_) {
    keep();
  }
  return QObject::eventFilter(watched, event);
}

void WindowState::keep() {
  if (!settled_.size) {
    settings_.setValue(geometryKey, window_.saveGeometry());
  }
  if (const auto* pages = window_.findChild<QStackedWidget*>(QStringLiteral("pages"))) {
    settings_.setValue(placeKey, pages->currentWidget()->objectName());
  }
  settings_.sync();
}

} // namespace hangbook::desk
