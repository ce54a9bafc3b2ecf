// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QLineEdit>
#include <QStandardItemModel>

#include "desk/source/overview.h"

class QCompleter;

namespace hangbook::desk {

/// Something that one can go to: a unit, venue, show, type, person.
struct Findable {
  QString text;  ///< what is looked through and shown: "MB-014, Marram bass"
  QString place; ///< object name of the place that shows it
  QString key;   ///< what it is known by there
};

/// All of it, in the order of the places.
std::vector<Findable> findablesOf(const Overview& overview);

/// The search field over everything: type part of a serial, venue, town or type and go there.
class Finder : public QLineEdit {
  Q_OBJECT
public:
  explicit Finder(QWidget* parent = nullptr);
  void setFindables(const std::vector<Findable>& all);
  /// Goes to the first thing that contains all of the text; as when Enter is pressed.
  void goToFirst();

Q_SIGNALS:
  void wanted(const QString& place, const QString& key);

private:
  void go(const QModelIndex& index);

  QStandardItemModel model_;
  QCompleter* completer_;
};

} // namespace hangbook::desk
