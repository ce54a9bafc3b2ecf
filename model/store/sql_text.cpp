// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sql_text.h"

#include <sqlite3.h>

#include "quantity/error.h"

namespace hangbook::store {

namespace {

bool isNameCharacter(QChar c) {
  return c.isLetterOrNumber() || c == u'_';
}

[[noreturn]] void notClosed(const char* what, const QString& sql, qsizetype at) {
  throw Error(Trouble::store, std::string(what) + " is not closed in the statement that begins with \"" +
                                  sql.mid(at, 40).toStdString() + '"');
}

/// One past the closing mark of a quote that opens at `at`; a doubled mark does not close it.
qsizetype quoteEnd(const QString& sql, qsizetype at, QChar closing, bool backslashes) {
  for (qsizetype i = at + 1; i < sql.size(); ++i) {
    if (backslashes && sql[i] == u'\\') {
      ++i;
    } else if (sql[i] == closing) {
      if (closing == u']' || i + 1 >= sql.size() || sql[i + 1] != closing) {
        return i + 1;
      }
      ++i;
    }
  }
  notClosed("A quote", sql, at);
}

qsizetype blockCommentEnd(const QString& sql, qsizetype at, Engine engine) {
  int depth = 1;
  for (qsizetype i = at + 2; i + 1 < sql.size(); ++i) {
    if (sql[i] == u'*' && sql[i + 1] == u'/') {
      ++i;
      if (--depth == 0) {
        return i + 1;
      }
    } else if (engine == Engine::postgresql && sql[i] == u'/' && sql[i + 1] == u'*') {
      ++i;
      ++depth;
    }
  }
  notClosed("A comment", sql, at);
}

/// One past a dollar quote that opens at `at`, or -1 where none opens there.
qsizetype dollarQuoteEnd(const QString& sql, qsizetype at) {
  if (at > 0 && isNameCharacter(sql[at - 1])) {
    return -1;
  }
  qsizetype i = at + 1;
  while (i < sql.size() && isNameCharacter(sql[i]) && !(i == at + 1 && sql[i].isDigit())) {
    ++i;
  }
  if (i >= sql.size() || sql[i] != u'$') {
    return -1;
  }
  const QString tag = sql.mid(at, i + 1 - at);
  const qsizetype close = sql.indexOf(tag, i + 1);
  if (close < 0) {
    notClosed("A dollar quote", sql, at);
  }
  return close + tag.size();
}

/// Whether the quote at `at` is an escape string (E'…') of PostgreSQL.
bool isEscapeString(const QString& sql, qsizetype at, Engine engine) {
  return engine == Engine::postgresql && at > 0 && sql[at - 1].toLower() == u'e' &&
         (at == 1 || !isNameCharacter(sql[at - 2]));
}

/// One past the quote or comment that opens at `at`, or -1 where plain text goes on.
qsizetype specialEnd(const QString& sql, qsizetype at, Engine engine, SqlSpan::Kind& kind) {
  const QChar c = sql[at];
  const QChar next = at + 1 < sql.size() ? sql[at + 1] : QChar();
  kind = SqlSpan::Kind::comment;
  if (c == u'-' && next == u'-') {
    const qsizetype end = sql.indexOf(u'\n', at);
    return end < 0 ? sql.size() : end;
  }
  if (c == u'/' && next == u'*') {
    return blockCommentEnd(sql, at, engine);
  }
  kind = SqlSpan::Kind::quoted;
  if (c == u'\'' || c == u'"') {
    return quoteEnd(sql, at, c, c == u'\'' && isEscapeString(sql, at, engine));
  }
  if (engine == Engine::sqlite && (c == u'[' || c == u'`')) {
    return quoteEnd(sql, at, c == u'[' ? u']' : u'`', false);
  }
  return engine == Engine::postgresql && c == u'$' ? dollarQuoteEnd(sql, at) : -1;
}

bool hasPlainWords(const QString& statement, Engine engine) {
  for (const SqlSpan& span : spansOf(statement, engine)) {
    if (span.kind == SqlSpan::Kind::quoted ||
        (span.kind == SqlSpan::Kind::plain && !QString(span.text).remove(u';').trimmed().isEmpty())) {
      return true;
    }
  }
  return false;
}

/// SQLite's own word on whether a statement ends here: a trigger's inner semicolons do not end it.
bool isComplete(const QString& statement, Engine engine) {
  return engine != Engine::sqlite || sqlite3_complete(statement.toUtf8().constData()) != 0;
}

} // namespace

std::vector<SqlSpan> spansOf(const QString& sql, Engine engine) {
  std::vector<SqlSpan> spans;
  qsizetype plainFrom = 0;
  qsizetype i = 0;
  const auto endPlain = [&](qsizetype end) {
    if (end > plainFrom) {
      spans.push_back({SqlSpan::Kind::plain, sql.mid(plainFrom, end - plainFrom)});
    }
  };
  while (i < sql.size()) {
    SqlSpan::Kind kind = SqlSpan::Kind::plain;
    const qsizetype end = specialEnd(sql, i, engine, kind);
    if (end < 0) {
      ++i;
      continue;
    }
    endPlain(i);
    spans.push_back({kind, sql.mid(i, end - i)});
    plainFrom = i = end;
  }
  endPlain(sql.size());
  return spans;
}

QStringList statementsOf(const QString& script, Engine engine) {
  QStringList statements;
  QString current;
  const auto close = [&] {
    if (hasPlainWords(current, engine)) {
      statements.append(current.trimmed());
    }
    current.clear();
  };
  for (const SqlSpan& span : spansOf(script, engine)) {
    if (span.kind != SqlSpan::Kind::plain) {
      current += span.text;
      continue;
    }
    for (const QChar c : span.text) {
      current += c;
      if (c == u';' && isComplete(current, engine)) {
        close();
      }
    }
  }
  close();
  return statements;
}

Placeholders placeholdersOf(const QString& sql, Engine engine) {
  Placeholders result;
  for (const SqlSpan& span : spansOf(sql, engine)) {
    if (span.kind == SqlSpan::Kind::comment) {
      result.sql += u' ';
      continue;
    }
    if (span.kind == SqlSpan::Kind::quoted) {
      result.sql += span.text;
      continue;
    }
    const QString& text = span.text;
    for (qsizetype i = 0; i < text.size(); ++i) {
      const bool cast =
          text[i] == u':' && ((i > 0 && text[i - 1] == u':') || (i + 1 < text.size() && text[i + 1] == u':'));
      qsizetype end = i + 1;
      while (text[i] == u':' && !cast && end < text.size() && isNameCharacter(text[end])) {
        ++end;
      }
      if (end > i + 1) {
        result.names.append(text.mid(i + 1, end - i - 1));
        result.sql += u'?';
        i = end - 1;
      } else if (text[i] == u'?') {
        throw Error(Trouble::store, "A placeholder without a name stands in \"" + sql.toStdString() + '"');
      } else {
        result.sql += text[i];
      }
    }
  }
  return result;
}

} // namespace hangbook::store
