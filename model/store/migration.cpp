// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migration.h"

#include <map>

#include <QCryptographicHash>
#include <QDir>
#include <QRegularExpression>

#include "quantity/error.h"
#include "store/sql_text.h"

// Resources of a static library are linked only where somebody asks for them. Qt's macro must stand outside
// every namespace.
static void linkMigrations() {
  Q_INIT_RESOURCE(migrations);
}

namespace hangbook::store {

QString Migration::checksum() const {
  QCryptographicHash hash(QCryptographicHash::Sha256);
  for (const QByteArray& part : {name.toUtf8(), common, sqlite, postgresql}) {
    hash.addData(QByteArray::number(part.size()) + ':' + part);
  }
  return QString::fromLatin1(hash.result().toHex());
}

QStringList Migration::statements(Engine engine) const {
  const QString script = QString::fromUtf8(common);
  const QString more = QString::fromUtf8(engine == Engine::sqlite ? sqlite : postgresql);
  return statementsOf(withTypeWords(script, engine), engine) +
         statementsOf(withTypeWords(more, engine), engine);
}

std::vector<Migration> migrationsIn(const QString& folder) {
  static const QRegularExpression pattern(
      QStringLiteral("^(\\d{4})_([a-z0-9_]+)(\\.sqlite|\\.postgresql)?\\.sql$"));
  std::map<int, Migration> byNumber;
  const QDir dir(folder);
  for (const QString& file : dir.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name)) {
    const QRegularExpressionMatch match = pattern.match(file);
    QFile source(dir.filePath(file));
    if (!match.hasMatch() || !source.open(QIODevice::ReadOnly)) {
      throw Error(Trouble::store, "is not a readable migration NNNN_name.sql", file.toStdString());
    }
    const int number = match.captured(1).toInt();
    Migration& step = byNumber[number];
    if (!step.name.isEmpty() && step.name != match.captured(2)) {
      throw Error(Trouble::store, "two migrations carry the same number", file.toStdString());
    }
    step.number = number;
    step.name = match.captured(2);
    QByteArray& part = match.captured(3).isEmpty()       ? step.common
                       : match.captured(3) == u".sqlite" ? step.sqlite
                                                         : step.postgresql;
    part = source.readAll();
  }
  std::vector<Migration> steps;
  for (auto& [number, step] : byNumber) {
    if (number != static_cast<int>(steps.size()) + 1) {
      throw Error(Trouble::store, "the migrations have a gap before number " + std::to_string(number));
    }
    steps.push_back(std::move(step));
  }
  return steps;
}

const std::vector<Migration>& ownMigrations() {
  static const std::vector<Migration> steps = [] {
    linkMigrations();
    return migrationsIn(QStringLiteral(":/migrations"));
  }();
  return steps;
}

} // namespace hangbook::store
