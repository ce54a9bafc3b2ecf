// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/export_facts.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QSet>

#include "exchange/cell.h"
#include "exchange/csv_write.h"
#include "quantity/error.h"
#include "quantity/text.h"
#include "store/fleet_store.h"
#include "store/gate_store.h"
#include "store/reading_store.h"
#include "store/warehouse_store.h"
#include "terminal/fleet_words.h"

namespace hangbook::terminal {
namespace {

QString entry(const QUuid& id) {
  return id.isNull() ? QString() : id.toString(QUuid::WithoutBraces);
}

QString number(const std::optional<int>& value) {
  return value ? QString::number(*value) : QString();
}

void takeLine(const Taker& take, const QStringList& cells) {
  take(exchange::writeCsv({cells}));
}

QStringList lineOf(const fleet::Movement& fact) {
  return {fact.serial,
          exchange::writeInstant(fact.happenedAt),
          wordOf(fact.act),
          fact.toPlace,
          wordOf(fact.toState),
          fact.toCart,
          number(fact.cartPosition),
          fact.tour,
          fact.show,
          fact.reason,
          entry(fact.scan),
          entry(fact.id),
          entry(fact.corrects),
          fact.by,
          exchange::writeInstant(fact.recordedAt)};
}

QStringList lineOf(const fleet::Occurrence& fact) {
  return {fact.serial,
          exchange::writeDate(fact.date),
          wordOf(fact.kind),
          number(fact.uses),
          fact.hours ? exchange::writeNumber(*fact.hours) : QString(),
          fact.place,
          fact.remark,
          entry(fact.id),
          entry(fact.corrects),
          fact.by,
          exchange::writeInstant(fact.recordedAt)};
}

QStringList lineOf(const marks::GateSigned& fact) {
  return {fact.tour,
          fact.show,
          fact.hang,
          fact.option,
          fact.gate,
          fact.skipped ? QStringLiteral("skipped") : QStringLiteral("signed"),
          fact.reason,
          entry(fact.id),
          entry(fact.corrects),
          fact.by,
          exchange::writeInstant(fact.recordedAt)};
}

QStringList lineOf(const marks::LoadReading& fact) {
  return {fact.tour,
          fact.show,
          fact.hang,
          fact.option,
          entry(fact.lift),
          fact.pick,
          fact.cellAt,
          exchange::writeNumber(inKilonewtons(fact.reading)),
          exchange::writeNumber(inKilonewtons(fact.computed)),
          fact.instrument,
          fact.remark,
          entry(fact.id),
          entry(fact.corrects),
          fact.by,
          exchange::writeInstant(fact.recordedAt),
          fact.legTo};
}

QString wordOf(fleet::DocumentKind kind) {
  switch (kind) {
  case fleet::DocumentKind::certificate:
    return QStringLiteral("certificate");
  case fleet::DocumentKind::photograph:
    return QStringLiteral("photograph");
  case fleet::DocumentKind::other:
    break;
  }
  return QStringLiteral("other");
}

/// A name that any file system takes: no folders in it, no signs that steer a terminal, not too long.
QString plainName(const QString& name) {
  constexpr qsizetype most = 80;
  QString plain;
  for (const QChar each : name.right(most)) {
    const bool plainSign = each.isLetterOrNumber() || QStringLiteral("._-").contains(each);
    plain += plainSign ? each : QChar(u'_');
  }
  return plain;
}

void write(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
    throw Error(Trouble::badInput, "the file could not be written (" + file.errorString().toStdString() + ")",
                path.toStdString());
  }
}

} // namespace

bool isFactKind(const QString& kind) {
  return QStringList{QStringLiteral("movements"), QStringLiteral("occurrences"), QStringLiteral("gates"),
                     QStringLiteral("readings"), QStringLiteral("files")}
      .contains(kind);
}

void writeMovements(store::Store& store, const Taker& take) {
  takeLine(take, {QStringLiteral("serial"), QStringLiteral("happened at"), QStringLiteral("what"),
                  QStringLiteral("place"), QStringLiteral("state"), QStringLiteral("cart"),
                  QStringLiteral("cart position"), QStringLiteral("tour"), QStringLiteral("show"),
                  QStringLiteral("reason"), QStringLiteral("scan"), QStringLiteral("entry"),
                  QStringLiteral("corrects"), QStringLiteral("recorded by"), QStringLiteral("recorded at")});
  store.reading([&] {
    for (const fleet::Unit& unit : store::loadUnits(store)) {
      std::vector<QStringList> lines;
      for (const fleet::Movement& fact : store::loadMovements(store, unit.serial)) {
        lines.push_back(lineOf(fact));
      }
      take(exchange::writeCsv(lines));
    }
  });
}

void writeOccurrences(store::Store& store, const Taker& take) {
  takeLine(take, {QStringLiteral("serial"), QStringLiteral("date"), QStringLiteral("what"),
                  QStringLiteral("uses"), QStringLiteral("hours [h]"), QStringLiteral("place"),
                  QStringLiteral("remark"), QStringLiteral("entry"), QStringLiteral("corrects"),
                  QStringLiteral("recorded by"), QStringLiteral("recorded at")});
  for (const fleet::Occurrence& fact : store::loadOccurrences(store)) {
    takeLine(take, lineOf(fact));
  }
}

void writeGates(store::Store& store, const Taker& take) {
  takeLine(take, {QStringLiteral("tour"), QStringLiteral("show"), QStringLiteral("hang"),
                  QStringLiteral("option"), QStringLiteral("hold point"), QStringLiteral("what"),
                  QStringLiteral("reason"), QStringLiteral("entry"), QStringLiteral("corrects"),
                  QStringLiteral("recorded by"), QStringLiteral("recorded at")});
  for (const marks::GateSigned& fact : store::loadGates(store)) {
    takeLine(take, lineOf(fact));
  }
}

void writeReadings(store::Store& store, const Taker& take) {
  takeLine(take,
           {QStringLiteral("tour"), QStringLiteral("show"), QStringLiteral("hang"), QStringLiteral("option"),
            QStringLiteral("lift"), QStringLiteral("pick"), QStringLiteral("cell at"),
            QStringLiteral("reading [kN]"), QStringLiteral("computed [kN]"), QStringLiteral("instrument"),
            QStringLiteral("remark"), QStringLiteral("entry"), QStringLiteral("corrects"),
            QStringLiteral("recorded by"), QStringLiteral("recorded at"), QStringLiteral("leg to")});
  for (const marks::LoadReading& fact : store::loadReadings(store)) {
    takeLine(take, lineOf(fact));
  }
}

int writeKeptFiles(store::Store& store, const QString& folder) {
  if (!QDir().mkpath(folder)) {
    throw Error(Trouble::badInput, "this folder cannot be made", folder.toStdString());
  }
  std::vector<QStringList> lines{{QStringLiteral("serial"), QStringLiteral("file"), QStringLiteral("kept as"),
                                  QStringLiteral("kind"), QStringLiteral("sha256"),
                                  QStringLiteral("examination"), QStringLiteral("recorded by"),
                                  QStringLiteral("recorded at")}};
  QSet<QString> written;
  store.reading([&] {
    for (const fleet::Unit& unit : store::loadUnits(store)) {
      for (const fleet::UnitDocument& document : store::loadDocuments(store, unit.serial)) {
        const QString name = document.sha256.left(16) + QLatin1Char('-') + plainName(document.fileName);
        if (!written.contains(name)) {
          write(QDir(folder).filePath(name), store::loadDocumentBytes(store, document.sha256));
          written.insert(name);
        }
        lines.push_back({document.serial, document.fileName, name, wordOf(document.kind), document.sha256,
                         entry(document.examination), document.by,
                         exchange::writeInstant(document.recordedAt)});
      }
    }
  });
  write(QDir(folder).filePath(QStringLiteral("files.csv")), exchange::writeCsv(lines));
  return static_cast<int>(lines.size()) - 1;
}

} // namespace hangbook::terminal
