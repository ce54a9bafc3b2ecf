// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json_text.h"

#include <string>
#include <vector>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSet>

#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

std::string lineAndColumn(const QByteArray& text, qsizetype offset) {
  const QByteArray before = text.left(offset);
  const qsizetype line = before.count('\n') + 1;
  const qsizetype column = offset - (before.lastIndexOf('\n') + 1) + 1;
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

/// The text of a string token, quotes included, with its escapes read.
QString unescaped(const QByteArray& token) {
  if (!token.contains('\\')) {
    return QString::fromUtf8(token.mid(1, token.size() - 2));
  }
  return QJsonDocument::fromJson('[' + token + ']').array().at(0).toString();
}

/// To be called with text that is known to be JSON.
void refuseRepeatedKeys(const QByteArray& text) {
  struct Level {
    bool object;
    bool keyNext;
    QSet<QString> keys;
  };
  std::vector<Level> levels;
  for (qsizetype at = 0; at < text.size(); ++at) {
    switch (text[at]) {
    case '{':
    case '[':
      levels.push_back({text[at] == '{', text[at] == '{', {}});
      break;
    case '}':
    case ']':
      levels.pop_back();
      break;
    case ',':
      levels.back().keyNext = levels.back().object;
      break;
    case ':':
      levels.back().keyNext = false;
      break;
    case '"': {
      const qsizetype start = at;
      for (++at; text[at] != '"'; ++at) {
        at += text[at] == '\\' ? 1 : 0;
      }
      if (!levels.back().keyNext) {
        break;
      }
      const QString key = unescaped(text.mid(start, at - start + 1));
      if (levels.back().keys.contains(key)) {
        throw Error(Trouble::badInput,
                    "the key \"" + key.toStdString() + "\" stands here for the second time",
                    lineAndColumn(text, start));
      }
      levels.back().keys.insert(key);
      break;
    }
    default:
      break;
    }
  }
}

} // namespace

QJsonValue readJson(const QByteArray& text) {
  if (text.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "there is nothing to read: a JSON object or list is expected");
  }
  QJsonParseError fault;
  const QJsonDocument document = QJsonDocument::fromJson(text, &fault);
  if (fault.error != QJsonParseError::NoError) {
    throw Error(Trouble::badInput, "this is not JSON: " + fault.errorString().toStdString(),
                lineAndColumn(text, fault.offset));
  }
  refuseRepeatedKeys(text);
  return document.isArray() ? QJsonValue(document.array()) : QJsonValue(document.object());
}

} // namespace hangbook::exchange
