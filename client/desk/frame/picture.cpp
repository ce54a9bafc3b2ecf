// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/picture.h"

#include <QApplication>
#include <QEventLoop>

#include "desk/frame/window.h"
#include "quantity/error.h"

namespace hangbook::desk {

void takePicture(Window& window, const QString& file) {
  window.show();
  QString trouble;
  QObject::connect(&window.session(), &Session::trouble, &window,
                   [&](const QString& text) { trouble = text; });
  // Every job ends with an event on this thread, so waiting for events is enough: no timer, no guessing.
  while (window.session().busy()) {
    QApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
  if (!window.session().loaded()) {
    throw Error(Trouble::store, trouble.toStdString());
  }
  QApplication::processEvents();
  if (!trouble.isEmpty()) {
    throw Error(Trouble::badInput, trouble.toStdString()); // a picture of something else would mislead
  }
  if (!window.grab().save(file, "PNG")) {
    throw Error(Trouble::badInput, "the picture could not be written there", file.toStdString());
  }
}

} // namespace hangbook::desk
