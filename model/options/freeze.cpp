// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/freeze.h"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>

#include "options/freeze_others.h"
#include "options/option_json.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

const QString format = QStringLiteral("hangbook.frozen/1");

QString hashOf(const QByteArray& bytes) {
  return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

QJsonObject read(const QByteArray& frozen) {
  QJsonParseError error;
  const QJsonDocument document = QJsonDocument::fromJson(frozen, &error);
  if (error.error != QJsonParseError::NoError || !document.isObject() ||
      document.object().value(QLatin1String("format")).toString() != format) {
    throw Error(Trouble::badInput, "is no record of a chosen option", "frozen");
  }
  return document.object();
}

} // namespace

Frozen freeze(const Snapshot& snapshot, const Option& option) {
  const QString program = QStringLiteral(HANGBOOK_VERSION);
  const QJsonObject whole{{QStringLiteral("format"), format},
                          {QStringLiteral("program"), program},
                          {QStringLiteral("judged_on"), snapshot.today.toString(Qt::ISODate)},
                          {QStringLiteral("inputs"), inputsOf(snapshot, option.key)},
                          {QStringLiteral("results"), toJson(option)}};
  const QByteArray bytes = QJsonDocument(whole).toJson(QJsonDocument::Compact);
  return {bytes, hashOf(bytes), program};
}

Option thaw(const QByteArray& frozen) {
  return optionFromJson(read(frozen).value(QLatin1String("results")).toObject());
}

Standing standingOf(const Snapshot& snapshot, const Choice& choice) {
  if (hashOf(choice.frozen) != choice.sha256) {
    return Standing::damaged;
  }
  // Both through text: what was read back is compared with what would be read back.
  QJsonObject today =
      QJsonDocument::fromJson(QJsonDocument(inputsOf(snapshot, choice.key)).toJson(QJsonDocument::Compact))
          .object();
  QJsonObject frozen = read(choice.frozen).value(QLatin1String("inputs")).toObject();
  const QLatin1String others("other_hangs");
  const QJsonArray then = frozen.take(others).toArray();
  const QJsonArray now = today.take(others).toArray();
  return frozen == today && (then == now || sameFromOthers(snapshot, choice, then, now)) ? Standing::current
                                                                                         : Standing::outdated;
}

} // namespace hangbook::options
