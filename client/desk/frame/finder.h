// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>
#include <QStandardItemModel>

#include "desk/frame/find_index.h"
#include "desk/source/work.h"

class QCompleter;

namespace hangbook::desk {

/// The search field over everything: type part of a name, use the arrows or Enter, and go there. It looks on
/// a thread of its own; what was gone to before comes first.
class Finder : public QLineEdit {
  Q_OBJECT
public:
  explicit Finder(QWidget* parent = nullptr);
  /// The facts to look through from now on.
  void setFacts(std::shared_ptr<const Overview> facts);
  /// Takes the keyboard and offers what was gone to before.
  void begin();
  /// Goes to the best answer to the text, as soon as it is found; as when Enter is pressed.
  void goToFirst();
  bool busy() const { return work_.busy(); }
  const Found& found() const { return found_; }

  /// What was gone to, the newest first, as lines that can be kept.
  QStringList recent() const;
  void setRecent(const QStringList& lines);

Q_SIGNALS:
  void wanted(const QString& place, const QString& key, const QString& part);
  void recentChanged();

private:
  void look();
  void show(Found found);
  void go(int row);

  std::shared_ptr<const Overview> facts_;
  std::vector<Findable> recent_;
  Found found_;
  QStandardItemModel model_;
  QCompleter* completer_;
  std::shared_ptr<Watch> watch_;
  bool goOn_ = false; ///< to the first answer, once there is one
  struct Held;
  std::shared_ptr<Held> held_; ///< the index and what it was made of; touched by the worker alone
  Work work_;
};

} // namespace hangbook::desk
