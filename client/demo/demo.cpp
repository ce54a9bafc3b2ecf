// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/demo.h"

#include <QFile>

#include "quantity/error.h"

// A resource in a static library is left out by the linker unless somebody asks for it, and the macro that
// asks must stand outside every namespace.
static void bringIn() {
  Q_INIT_RESOURCE(demo_files);
}

namespace hangbook::demo {

std::vector<File> files() {
  bringIn();
  std::vector<File> all;
  for (const char* kind : {"types", "people", "units", "venues", "shows", "marks"}) {
    const QString name = QString::fromLatin1(kind) + QStringLiteral(".csv");
    QFile file(QStringLiteral(":/demo/") + name);
    if (!file.open(QIODevice::ReadOnly)) {
      throw Error(Trouble::badInput, "the demo's file is not in this program", name.toStdString());
    }
    all.push_back({name, QString::fromLatin1(kind), file.readAll()});
  }
  return all;
}

} // namespace hangbook::demo
