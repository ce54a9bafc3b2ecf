// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFileInfo>
#include <QSaveFile>

#include "actions/import_file.h"
#include "exchange/import.h"
#include "quantity/error.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

/// Aside first, then renamed: what stood there before stays whole until the new file is.
void writeFile(const QString& file, const QByteArray& bytes) {
  QSaveFile target(file);
  const bool written =
      target.open(QIODevice::WriteOnly) && target.write(bytes) == bytes.size() && target.commit();
  if (!written) {
    throw Error(Trouble::badInput,
                "the file could not be written (" + target.errorString().toStdString() + ")",
                file.toStdString());
  }
}

Ending run(const Given& given, Context& context) {
  const exchange::Kind kind = exchange::kindFrom(QString::fromStdString(*given.option("--kind")));
  const auto file = given.option("-o");
  if (context.json && !file) {
    throw Error(Trouble::badInput, "export writes CSV; --json needs -o FILE, and then tells about that file");
  }
  const auto store = openStore(context);
  const QByteArray bytes = exchange::writeFile(kind, actions::everything(*store));
  if (!file) {
    context.out.write(bytes.constData(), bytes.size());
    return Ending::done;
  }
  const QString path = QFileInfo(QString::fromStdString(*file)).absoluteFilePath();
  writeFile(path, bytes);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.export/1")},
                        {QStringLiteral("kind"), exchange::wordFor(kind)},
                        {QStringLiteral("file"), path},
                        {QStringLiteral("bytes"), bytes.size()}});
  } else {
    context.out << "Wrote " << path << " (" << QString::number(bytes.size()) << " bytes).\n";
  }
  return Ending::done;
}

} // namespace

Command exportCommand() {
  return {"export",
          "write all of a kind as a spreadsheet (CSV) that import takes in again, exact to the bit",
          {{"--kind", "KIND", "types, people, units, venues, shows or marks", true},
           {"-o", "FILE", "the file, replaced as a whole where it is there; standard output where left out"}},
          {},
          "hangbook export --kind units -o fleet.csv",
          run};
}

} // namespace hangbook::terminal
