// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QDialog>

namespace hangbook::desk {

/// One key and what it does.
struct KeyLine {
  QString keys{};
  QString what{};
  QString where{}; ///< a place's title; empty: everywhere
};

/// Every key of the window, from its own actions and shortcuts, and what lists and fields take besides.
std::vector<KeyLine> keysOf(const QWidget& window);

/// All of them as a list to read.
class KeysDialog : public QDialog {
  Q_OBJECT
public:
  explicit KeysDialog(QWidget& window);
};

} // namespace hangbook::desk
