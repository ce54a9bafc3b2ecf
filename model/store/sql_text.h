// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "store/engine.h"

/// SQL as text: what is a string or a comment in it, where its statements end, what it wants bound.
namespace hangbook::store {

/// A stretch of SQL of one kind.
struct SqlSpan {
  enum class Kind { plain, quoted, comment };
  Kind kind = Kind::plain;
  QString text;
};

/// Cuts SQL into plain text, quoted text ('…', "…", on PostgreSQL $tag$…$tag$ and E'…', on SQLite […] and
/// `…`) and comments. Joined again the spans give the text back. Throws Error (store) where a quote or a
/// comment is not closed.
std::vector<SqlSpan> spansOf(const QString& sql, Engine engine);

/// The single statements of a script, without what is only comment, ends and space. Never cuts inside
/// quotes, comments or a trigger's BEGIN … END.
QStringList statementsOf(const QString& script, Engine engine);

/// A statement with its named placeholders (":name") put as "?", and the names in order of place; a name that
/// stands twice is listed twice. Comments are dropped.
struct Placeholders {
  QString sql;
  QStringList names;
};
Placeholders placeholdersOf(const QString& sql, Engine engine);

/// Writes each type word of a migration as the engine's own type:
///
/// | word       | SQLite                        | PostgreSQL         |
/// | ---------- | ----------------------------- | ------------------ |
/// | `@text`    | TEXT                          | TEXT COLLATE "C"   |
/// | `@int`     | INTEGER                       | bigint             |
/// | `@real`    | REAL                          | double precision   |
/// | `@bool`    | INTEGER, 0 or 1               | boolean            |
/// | `@uuid`    | TEXT of 36 characters         | uuid               |
/// | `@instant` | TEXT, ISO with Z, milliseconds | timestamptz       |
/// | `@date`    | TEXT, ISO                     | date               |
/// | `@json`    | TEXT, a JSON list or object   | json               |
/// | `@bytes`   | BLOB                          | bytea              |
/// | `@strict`  | STRICT                        | (nothing)          |
///
/// A word that needs a check on SQLite must follow its column's name. Text is compared by bytes on both.
/// Throws Error (store) at a word that it does not know.
QString withTypeWords(const QString& sql, Engine engine);

} // namespace hangbook::store
