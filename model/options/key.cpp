// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCryptographicHash>

#include "options/option.h"

namespace hangbook::options {

QString wordFor(Verdict verdict) {
  switch (verdict) {
  case Verdict::holds:
    return QStringLiteral("holds");
  case Verdict::tight:
    return QStringLiteral("tight");
  case Verdict::unproven:
    return QStringLiteral("unproven");
  case Verdict::fails:
    break;
  }
  return QStringLiteral("fails");
}

QString wordFor(catalogue::Picks picks) {
  switch (picks) {
  case catalogue::Picks::sidePair:
    return QStringLiteral("side-pair");
  case catalogue::Picks::foreAftPair:
    return QStringLiteral("fore-aft-pair");
  case catalogue::Picks::single:
    break;
  }
  return QStringLiteral("single");
}

QString idOf(const OptionKey& key) {
  QByteArray bytes;
  // Each text with its length before it, so that no two lists run together into the same bytes.
  const auto add = [&bytes](const QString& text) {
    const QByteArray each = text.toUtf8();
    bytes += QByteArray::number(each.size()) + ':' + each;
  };
  const auto addAll = [&](const QStringList& texts) {
    add(QString::number(texts.size()));
    for (const QString& text : texts) {
      add(text);
    }
  };
  add(key.hang);
  addAll(key.stack);
  add(key.bar);
  add(wordFor(key.picks));
  add(key.hoist);
  addAll(key.points);
  return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().left(16));
}

} // namespace hangbook::options
