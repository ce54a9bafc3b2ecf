// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFileInfo>
#include <QSaveFile>

#include "actions/import_file.h"
#include "exchange/import.h"
#include "quantity/error.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/export_facts.h"
#include "terminal/fleet_words.h"
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

void tell(Context& context, const QString& kind, const QString& path, qint64 bytes) {
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.export/1")},
                        {QStringLiteral("kind"), kind},
                        {QStringLiteral("file"), path},
                        {QStringLiteral("bytes"), bytes}});
  } else {
    context.out << "Wrote " << path << " (" << QString::number(bytes) << " bytes).\n";
  }
}

/// Facts are written as they are read: two million movements need not fit into memory.
Ending writeFacts(store::Store& store, const QString& kind, const QString& path, Context& context) {
  const auto all = [&](const Taker& take) {
    if (kind == QStringLiteral("movements")) {
      writeMovements(store, take);
    } else if (kind == QStringLiteral("gates")) {
      writeGates(store, take);
    } else if (kind == QStringLiteral("readings")) {
      writeReadings(store, take);
    } else {
      writeOccurrences(store, take);
    }
  };
  if (path.isEmpty()) {
    all([&](const QByteArray& bytes) { context.out.write(bytes.constData(), bytes.size()); });
    return Ending::done;
  }
  QSaveFile target(path);
  qint64 size = 0;
  bool good = target.open(QIODevice::WriteOnly);
  if (good) {
    all([&](const QByteArray& bytes) {
      good = good && target.write(bytes) == bytes.size();
      size += bytes.size();
    });
  }
  if (!good || !target.commit()) {
    throw Error(Trouble::badInput,
                "the file could not be written (" + target.errorString().toStdString() + ")",
                path.toStdString());
  }
  tell(context, kind, path, size);
  return Ending::done;
}

Ending exportFacts(const QString& kind, const Given& given, Context& context) {
  const QString said = textOf(given, "-o");
  const QString path = said.isEmpty() ? QString() : QFileInfo(said).absoluteFilePath();
  if (context.json && path.isEmpty()) {
    throw Error(Trouble::badInput, "export writes CSV; --json needs -o FILE, and then tells about that file");
  }
  if (kind != QStringLiteral("files")) {
    return writeFacts(*openStore(context), kind, path, context);
  }
  if (path.isEmpty()) {
    throw Error(Trouble::badInput, "kept files need -o FOLDER to be written into");
  }
  const int count = writeKeptFiles(*openStore(context), path);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.export/1")},
                        {QStringLiteral("kind"), kind},
                        {QStringLiteral("folder"), path},
                        {QStringLiteral("files"), count}});
  } else {
    context.out << "Wrote " << QString::number(count) << " files into " << path << ", with files.csv.\n";
  }
  return Ending::done;
}

Ending run(const Given& given, Context& context) {
  if (const QString word = textOf(given, "--kind"); isFactKind(word)) {
    return exportFacts(word, given, context);
  }
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
  tell(context, exchange::wordFor(kind), path, bytes.size());
  return Ending::done;
}

} // namespace

Command exportCommand() {
  return {
      "export",
      "write all of a kind as a spreadsheet (CSV) that import takes in again, exact to the bit",
      {{"--kind", "KIND",
        "types, people, units, venues, shows or marks; or movements, occurrences, gates, readings or files, "
        "which go out only",
        true},
       {"-o", "FILE",
        "the file, replaced as a whole where it is there; standard output where left out; a folder for "
        "files"}},
      {},
      "hangbook export --kind units -o fleet.csv",
      run,
      true};
}

} // namespace hangbook::terminal
