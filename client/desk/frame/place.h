// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QVBoxLayout;

namespace hangbook::desk {

/// One of the window's places: a title line with room for the place's own choosers, and its content below.
class Place : public QWidget {
  Q_OBJECT
public:
  Place(const QString& name, const QString& title, QWidget* parent = nullptr);

  const QString& title() const { return title_; }
  /// What F1 says of it, in a few plain sentences.
  virtual QString explanation() const = 0;
  /// Shows the thing of that key, as found by the search field.
  virtual void showKey(const QString& key) = 0;
  /// Shows one of the place's parts by its name; answers whether there is one.
  virtual bool showPart(const QString& /*name*/) { return false; }
  /// Where the keyboard goes when the place is opened.
  virtual void takeFocus() = 0;

protected:
  void addToTitle(QWidget* widget, int stretch = 0);
  void setNote(const QString& note);
  void setContent(QWidget* content);

private:
  QString title_;
  QHBoxLayout* titleLine_;
  QVBoxLayout* all_;
  QLabel* note_;
};

} // namespace hangbook::desk
