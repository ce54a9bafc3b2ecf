// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QMainWindow>

#include "desk/source/session.h"

class QLabel;
class QStackedWidget;
class QToolButton;

namespace hangbook::desk {

class Editing;
class Finder;
class FirstPage;
class Place;
class PlacesList;

/// The window: places at the left edge, the present place beside it, what store is open below.
class Window : public QMainWindow {
  Q_OBJECT
public:
  explicit Window(std::shared_ptr<Source> source, QWidget* parent = nullptr);
  ~Window() override;

  Session& session() { return session_; }
  Place* place(const QString& name) const;
  /// Answers whether there is such a place.
  bool goTo(const QString& name);
  /// Goes to the show of that name once the store is read. An unknown name is told as trouble.
  void wantShow(const QString& show, const QString& hang);
  /// Fills the store with the demo tour once it is read and found empty.
  void fillIfEmpty();
  const std::vector<Place*>& places() const { return places_; }

private:
  void addPlaces();
  void addMenus();
  void addStatus();
  void goTo(int index);
  void showFacts();
  void followWords();
  void showTrouble(const QString& text);
  void importFile();
  void goToFound(const QString& name, const QString& key, const QString& part);
  void showKeys();
  void explainPlace();
  void showAbout();

  Session session_;
  PlacesList* list_;
  Finder* finder_;
  Editing* editing_;
  QStackedWidget* pages_;
  QStackedWidget* outer_;
  FirstPage* first_;
  QWidget* troubleLine_;
  QLabel* troubleText_;
  QLabel* storeText_;
  QLabel* savedText_;
  std::vector<Place*> places_;
  bool pastFirst_ = false;
  bool fillIfEmpty_ = false;
  QString wantedShow_;
  QString wantedHang_;
};

} // namespace hangbook::desk
