// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "desk/source/session.h"

class QComboBox;

namespace hangbook::desk {

/// Which show and which of its hangs; follows the session and sets it.
class ShowChooser : public QWidget {
  Q_OBJECT
public:
  /// `name` begins the object names of its fields.
  ShowChooser(const QString& name, Session& session, QWidget* parent = nullptr);

private:
  void fill();
  void follow();

  Session& session_;
  QComboBox* show_;
  QComboBox* hang_;
};

} // namespace hangbook::desk
