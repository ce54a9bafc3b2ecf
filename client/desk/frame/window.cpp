// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/window.h"

#include <algorithm>
#include <utility>

#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QShortcut>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTime>
#include <QToolButton>
#include <QVBoxLayout>

#include "desk/building/build_place.h"
#include "desk/data/data_place.h"
#include "desk/examinations/examinations_place.h"
#include "desk/first/first_page.h"
#include "desk/fleet/fleet_place.h"
#include "desk/frame/cautions.h"
#include "desk/frame/editing.h"
#include "desk/frame/finder.h"
#include "desk/frame/keys_dialog.h"
#include "desk/frame/place_names.h"
#include "desk/frame/places_list.h"
#include "desk/importing/import_dialog.h"
#include "desk/options/options_place.h"
#include "desk/route/route_place.h"
#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

Window::Window(std::shared_ptr<Source> source, QWidget* parent)
    : QMainWindow(parent), session_(std::move(source)), list_(new PlacesList(this)),
      finder_(new Finder(this)), editing_(new Editing(session_, this)), pages_(new QStackedWidget(this)),
      outer_(new QStackedWidget(this)), first_(new FirstPage(session_, this)),
      troubleLine_(new QWidget(this)), troubleText_(new QLabel(this)), storeText_(new QLabel(this)),
      savedText_(new QLabel(this)) {
  setObjectName(QStringLiteral("window"));
  setWindowTitle(tr("Hangbook"));
  resize(1440, 900);
  pages_->setObjectName(QStringLiteral("pages"));
  addPlaces();
  addMenus();
  addStatus();

  auto* edge = new QWidget(this);
  edge->setObjectName(QStringLiteral("edge"));
  edge->setBackgroundRole(QPalette::Button);
  edge->setAutoFillBackground(true);
  auto* inEdge = new QVBoxLayout(edge);
  inEdge->setContentsMargins(0, space::step, 0, 0);
  auto* around = new QHBoxLayout;
  around->setContentsMargins(space::step, 0, space::step, 0);
  around->addWidget(finder_);
  inEdge->addLayout(around);
  inEdge->addWidget(list_, 1);
  edge->setFixedWidth(list_->sizeHint().width());

  auto* page = new QWidget(this);
  auto* inPage = new QVBoxLayout(page);
  inPage->setContentsMargins(0, 0, 0, 0);
  inPage->setSpacing(0);
  inPage->addWidget(troubleLine_);
  inPage->addWidget(outer_, 1);
  outer_->addWidget(pages_);
  outer_->addWidget(first_);

  auto* middle = new QWidget(this);
  auto* all = new QHBoxLayout(middle);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(edge);
  all->addWidget(page, 1);
  setCentralWidget(middle);

  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) { goTo(row); });
  connect(finder_, &Finder::wanted, this, &Window::goToFound);
  connect(first_, &FirstPage::startBlank, this, [this] {
    pastFirst_ = true;
    showFacts();
  });
  connect(&session_, &Session::overviewChanged, this, [this] {
    showFacts();
    followWords();
  });
  connect(&session_, &Session::trouble, this, &Window::showTrouble);
  connect(&session_, &Session::saved, this, [this] {
    savedText_->setText(tr("Saved at %1").arg(QTime::currentTime().toString(QStringLiteral("HH:mm:ss"))));
    troubleLine_->hide();
  });
  connect(editing_, &Editing::told, this, [this](const QString& what) {
    savedText_->setText(
        tr("%1 · saved at %2").arg(what, QTime::currentTime().toString(QStringLiteral("HH:mm:ss"))));
  });
  list_->setCurrentRow(0);
  showFacts();
  session_.reload();
}

Window::~Window() = default;

Place* Window::place(const QString& name) const {
  const auto found = std::find_if(places_.begin(), places_.end(),
                                  [&](const Place* each) { return each->objectName() == name; });
  return found == places_.end() ? nullptr : *found;
}

bool Window::goTo(const QString& name) {
  const auto found = std::find_if(places_.begin(), places_.end(),
                                  [&](const Place* each) { return each->objectName() == name; });
  if (found == places_.end()) {
    return false;
  }
  list_->setCurrentRow(static_cast<int>(found - places_.begin()));
  return true;
}

void Window::goToFound(const QString& name, const QString& key, const QString& part) {
  if (name == place::help) {
    part == QLatin1String("keys")    ? showKeys()
    : part == QLatin1String("about") ? showAbout()
                                     : explainPlace();
    return;
  }
  if (goTo(name)) {
    place(name)->showPart(part);
    if (!key.isEmpty()) {
      place(name)->showKey(key);
    }
    place(name)->takeFocus();
  }
}

void Window::goTo(int index) {
  if (index >= 0 && index < pages_->count()) {
    pages_->setCurrentIndex(index);
    setWindowTitle(tr("%1 – Hangbook").arg(places_[static_cast<std::size_t>(index)]->title()));
  }
}

void Window::addPlaces() {
  auto* route = new RoutePlace(session_, this);
  places_ = {route,
             new OptionsPlace(session_, this),
             new BuildPlace(session_, this),
             new FleetPlace(session_, this),
             new ExaminationsPlace(session_, this),
             new DataPlace(session_, this)};
  int number = 0;
  for (Place* each : places_) {
    pages_->addWidget(each);
    const QKeySequence keys(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + number));
    list_->addPlace(each->title(), keys.toString(QKeySequence::NativeText));
    auto* shortcut = new QShortcut(keys, this);
    shortcut->setObjectName(QStringLiteral("goTo%1").arg(++number));
    shortcut->setWhatsThis(tr("Go to %1").arg(each->title()));
    connect(shortcut, &QShortcut::activated, this, [this, each] {
      goTo(each->objectName());
      each->takeFocus();
    });
  }
  connect(route, &RoutePlace::optionsWanted, this, [this](const ShowKey& show) {
    session_.setShow(show);
    goTo(place::options);
  });
}

void Window::addStatus() {
  storeText_->setObjectName(QStringLiteral("storeText"));
  savedText_->setObjectName(QStringLiteral("savedText"));
  statusBar()->setSizeGripEnabled(false);
  statusBar()->setContentsMargins(space::step, 0, space::step, 0);
  statusBar()->addWidget(storeText_, 1);
  statusBar()->addPermanentWidget(savedText_);

  troubleLine_->setObjectName(QStringLiteral("troubleLine"));
  troubleText_->setObjectName(QStringLiteral("troubleText"));
  troubleText_->setAccessibleName(tr("What went wrong"));
  troubleText_->setWordWrap(true);
  troubleText_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* close = new QToolButton(this);
  close->setText(tr("Close"));
  close->setObjectName(QStringLiteral("troubleClose"));
  close->setAccessibleName(tr("Close this message"));
  connect(close, &QToolButton::clicked, troubleLine_, &QWidget::hide);
  auto* line = new QHBoxLayout(troubleLine_);
  line->setContentsMargins(space::wide, space::step, space::wide, space::small);
  line->addWidget(troubleText_, 1);
  line->addWidget(close);
  troubleLine_->hide();
}

void Window::showFacts() {
  if (session_.loaded()) {
    storeText_->setText(tr("Store: %1").arg(session_.storeLine().name));
    storeText_->setToolTip(session_.storeLine().location);
    if (savedText_->text().isEmpty()) {
      savedText_->setText(tr("Everything is saved"));
    }
  } else {
    storeText_->setText(tr("Opening the store …"));
  }
  const bool first = session_.loaded() && session_.overview().empty() && !pastFirst_;
  outer_->setCurrentWidget(first ? static_cast<QWidget*>(first_) : pages_);
  list_->setEnabled(!first);
  finder_->setEnabled(!first);
  finder_->setFacts(session_.facts());
}

void Window::wantShow(const QString& show, const QString& hang) {
  wantedShow_ = show;
  wantedHang_ = hang;
  followWords();
}

void Window::fillIfEmpty() {
  fillIfEmpty_ = true;
  followWords();
}

void Window::followWords() {
  if (!session_.loaded()) {
    return;
  }
  if (std::exchange(fillIfEmpty_, false) && session_.overview().empty()) {
    first_->openDemo();
    return;
  }
  const QString name = std::exchange(wantedShow_, {});
  if (name.isEmpty()) {
    return;
  }
  const auto& shows = session_.overview().shows;
  const auto found =
      std::find_if(shows.begin(), shows.end(), [&](const calendar::Show& each) { return each.name == name; });
  if (found == shows.end()) {
    Q_EMIT session_.trouble(
        tr("There is no show named “%1” in this store. Choose one from the list of the Route.").arg(name));
  } else {
    session_.setShow({found->tour, found->name}, wantedHang_);
  }
}

void Window::showTrouble(const QString& text) {
  troubleText_->setText(text);
  QPalette colours = troubleText_->palette();
  colours.setColor(QPalette::WindowText, coloursOf(palette()).fails);
  troubleText_->setPalette(colours);
  troubleLine_->show();
}

void Window::explainPlace() {
  const Place& here = *places_[static_cast<std::size_t>(std::max(0, pages_->currentIndex()))];
  QMessageBox box(QMessageBox::NoIcon, here.title(), here.explanation(), QMessageBox::Close, this);
  box.setObjectName(QStringLiteral("explanation"));
  box.setInformativeText(
      tr("Ctrl+1 to Ctrl+6 go from place to place, Ctrl+K finds anything, F5 reads the store "
         "again. Ctrl+F1 lists all keys."));
  box.exec();
}

void Window::showKeys() {
  KeysDialog dialog(*this);
  dialog.exec();
}

void Window::importFile() {
  ImportDialog dialog(session_, this);
  dialog.exec();
}

void Window::showAbout() {
  QMessageBox box(QMessageBox::NoIcon, tr("About Hangbook"), aboutText(), QMessageBox::Close, this);
  box.setObjectName(QStringLiteral("about"));
  box.setInformativeText(cautionText());
  box.exec();
}

} // namespace hangbook::desk
