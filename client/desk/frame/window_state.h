// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QSettings>

class QSplitter;

namespace hangbook::desk {

class Window;

/// Keeps how the window was left, and makes it so again: size and position, the place that was looked at,
/// every splitter that was moved by hand, width and order of columns, and what was searched for. The rest
/// stays as the program has it, so that a better layout of a later version reaches those who never touched
/// it. What cannot be read is passed over.
class WindowState : public QObject {
public:
  /// Which part of it the command line has settled for this run.
  struct Settled {
    bool size = false;
    bool place = false;
  };

  /// Restores at once and keeps from then on, in the file of that name (the usual one: `usualFile()`).
  /// A settled size is neither restored nor kept; a settled place is not restored.
  WindowState(Window& window, const QString& file, Settled settled);

  /// `window.ini` in the folder of the desktop for this program's settings.
  static QString usualFile();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void follow(QSplitter& splitter);
  void keep();

  Window& window_;
  QSettings settings_;
  Settled settled_;
};

} // namespace hangbook::desk
