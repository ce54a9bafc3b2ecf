// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "desk/source/session.h"

class QLabel;
class QPushButton;

namespace hangbook::desk {

/// What stands in the window while the store is empty: three ways to begin, and the cautions.
class FirstPage : public QWidget {
  Q_OBJECT
public:
  explicit FirstPage(Session& session, QWidget* parent = nullptr);

  void openDemo();
  /// Reads the spreadsheets of a folder.
  void importFrom(const QString& folder);

Q_SIGNALS:
  void startBlank();

private:
  void setBusy(const QString& what);

  Session& session_;
  QPushButton* demo_;
  QPushButton* import_;
  QPushButton* blank_;
  QLabel* state_;
};

} // namespace hangbook::desk
