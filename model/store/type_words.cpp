// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include <QRegularExpression>

#include "quantity/error.h"
#include "store/sql_text.h"

namespace hangbook::store {

namespace {

struct TypeWord {
  const char* word;
  const char* sqlite;
  const char* sqliteCheck; ///< "%1" is the column; empty = none
  const char* postgresql;
};

constexpr std::array words{
    TypeWord{"text", "TEXT", "", "TEXT COLLATE \"C\""},
    TypeWord{"int", "INTEGER", "", "bigint"},
    TypeWord{"real", "REAL", "", "double precision"},
    TypeWord{"bool", "INTEGER", "%1 IN (0, 1)", "boolean"},
    TypeWord{"uuid", "TEXT", "length(%1) = 36", "uuid"},
    TypeWord{"instant", "TEXT",
             "%1 GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-6][0-9]."
             "[0-9][0-9][0-9]Z'",
             "timestamptz"},
    TypeWord{"date", "TEXT", "%1 GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'", "date"},
    // json_valid() is not allowed in a table's check while the schema is not trusted.
    TypeWord{"json", "TEXT", "substr(%1, 1, 1) IN ('[', '{')", "json"},
    TypeWord{"bytes", "BLOB", "", "bytea"},
    TypeWord{"strict", "STRICT", "", ""},
};

const TypeWord& find(const QString& name) {
  for (const TypeWord& each : words) {
    if (name == QLatin1StringView(each.word)) {
      return each;
    }
  }
  throw Error(Trouble::store, "\"@" + name.toStdString() + "\" is not a type word of a migration");
}

QString expanded(const QString& plain, Engine engine) {
  static const QRegularExpression pattern(QStringLiteral("(?:(\\w+)(\\s+))?@([A-Za-z]\\w*)"));
  QString result;
  qsizetype from = 0;
  for (auto matches = pattern.globalMatch(plain); matches.hasNext();) {
    const QRegularExpressionMatch match = matches.next();
    const TypeWord& word = find(match.captured(3));
    result += plain.mid(from, match.capturedStart() - from) + match.captured(1) + match.captured(2);
    result += QLatin1StringView(engine == Engine::sqlite ? word.sqlite : word.postgresql);
    const QString check = QString::fromLatin1(word.sqliteCheck);
    if (engine == Engine::sqlite && !check.isEmpty()) {
      if (match.captured(1).isEmpty()) {
        throw Error(Trouble::store,
                    "\"@" + match.captured(3).toStdString() + "\" must stand behind its column's name");
      }
      result += QStringLiteral(" CHECK (") + check.arg(match.captured(1)) + u')';
    }
    from = match.capturedEnd();
  }
  return result + plain.mid(from);
}

} // namespace

QString withTypeWords(const QString& sql, Engine engine) {
  QString result;
  for (const SqlSpan& span : spansOf(sql, engine)) {
    result += span.kind == SqlSpan::Kind::plain ? expanded(span.text, engine) : span.text;
  }
  return result;
}

} // namespace hangbook::store
