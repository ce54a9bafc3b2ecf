// SPDX-License-Identifier: GPL-3.0-or-later
#include <QActionGroup>
#include <QApplication>
#include <QFileDialog>
#include <QMenuBar>

#include "desk/first/first_page.h"
#include "desk/frame/editing.h"
#include "desk/frame/finder.h"
#include "desk/frame/window.h"
#include "desk/style/theme.h"

namespace hangbook::desk {

void Window::addMenus() {
  auto* store = menuBar()->addMenu(tr("&Store"));
  auto* reload = store->addAction(tr("&Read again"), &session_, &Session::reload);
  reload->setShortcut(Qt::Key_F5);
  auto* one = store->addAction(tr("&Import a spreadsheet…"), this, &Window::importFile);
  one->setObjectName(QStringLiteral("importFile"));
  one->setShortcut(Qt::CTRL | Qt::Key_I);
  auto* import = store->addAction(tr("Import a &folder of spreadsheets…"), this, [this] {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder with CSV files"));
    if (!folder.isEmpty()) {
      first_->importFrom(folder);
    }
  });
  import->setObjectName(QStringLiteral("import"));
  store->addSeparator();
  auto* quit = store->addAction(tr("&Quit"), this, &QWidget::close);
  quit->setShortcut(QKeySequence::Quit);

  editing_->addTo(*menuBar()->addMenu(tr("&Edit")));

  auto* view = menuBar()->addMenu(tr("&View"));
  auto* find = view->addAction(tr("&Find anything"), finder_, &Finder::begin);
  find->setObjectName(QStringLiteral("find"));
  find->setShortcut(Qt::CTRL | Qt::Key_K);
  view->addSeparator();
  auto* units = new QActionGroup(this);
  const auto addUnits = [&](const QString& name, const QString& text, UnitSystem system) {
    auto* action = view->addAction(text, this, [this, system] { session_.setUnits(system); });
    action->setObjectName(name);
    action->setCheckable(true);
    action->setChecked(session_.figures().system() == system);
    units->addAction(action);
  };
  addUnits(QStringLiteral("metric"), tr("&Metric units (m, kg, kN)"), UnitSystem::metric);
  addUnits(QStringLiteral("usCustomary"), tr("&US customary units (ft, lb, lbf)"), UnitSystem::usCustomary);
  view->addSeparator();
  auto* light = new QActionGroup(this);
  const auto addLight = [&](const QString& text, Theme theme) {
    auto* action = view->addAction(text, this, [theme] { applyTheme(*qApp, theme); });
    action->setCheckable(true);
    action->setChecked(themeOf(*qApp) == theme);
    light->addAction(action);
  };
  addLight(tr("&Light"), Theme::light);
  addLight(tr("&Dark"), Theme::dark);

  auto* help = menuBar()->addMenu(tr("&Help"));
  auto* explain = help->addAction(tr("&This place"), this, &Window::explainPlace);
  explain->setObjectName(QStringLiteral("thisPlace"));
  explain->setShortcut(Qt::Key_F1);
  auto* keys = help->addAction(tr("All &keys"), this, &Window::showKeys);
  keys->setObjectName(QStringLiteral("allKeys"));
  keys->setShortcut(Qt::CTRL | Qt::Key_F1);
  auto* about = help->addAction(tr("&About Hangbook"), this, &Window::showAbout);
  about->setObjectName(QStringLiteral("about"));
}

} // namespace hangbook::desk
