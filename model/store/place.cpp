// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/place.h"

#include <QFileInfo>
#include <QUrl>

#include "quantity/error.h"

namespace hangbook::store {

QString nameOf(Engine engine) {
  return engine == Engine::sqlite ? QStringLiteral("SQLite") : QStringLiteral("PostgreSQL");
}

QString Place::shown() const {
  if (engine == Engine::sqlite) {
    return file;
  }
  QString text = QStringLiteral("postgresql://");
  if (!user.isEmpty()) {
    text += user + u'@';
  }
  return text + host + u':' + QString::number(port) + u'/' + database;
}

namespace {

QString decoded(const QString& text) {
  return QUrl::fromPercentEncoding(text.toUtf8());
}

[[noreturn]] void refuse(const QString& why) {
  throw Error(Trouble::badInput,
              (why + QStringLiteral("; expected is postgresql://user@host:port/database")).toStdString(),
              "store");
}

int portFrom(const QString& text) {
  bool good = false;
  const int port = text.toInt(&good);
  if (!good || port < 1 || port > 65535) {
    refuse(QStringLiteral("\"%1\" is not a port").arg(text));
  }
  return port;
}

void readAuthority(const QString& authority, Place& place) {
  QString host = authority;
  if (const qsizetype at = authority.lastIndexOf(u'@'); at >= 0) {
    const QString who = authority.left(at);
    host = authority.mid(at + 1);
    const qsizetype colon = who.indexOf(u':');
    place.user = decoded(colon < 0 ? who : who.left(colon));
    place.password = colon < 0 ? QString() : decoded(who.mid(colon + 1));
  }
  // An IPv6 address stands in brackets, so that its colons are not taken for the port's.
  const qsizetype bracket = host.indexOf(u']');
  const qsizetype colon = host.indexOf(u':', bracket < 0 ? 0 : bracket);
  if (colon >= 0) {
    place.port = portFrom(host.mid(colon + 1));
    host = host.left(colon);
  }
  place.host = host.startsWith(u'[') ? host.mid(1, host.size() - 2) : decoded(host);
}

void readQuery(const QString& query, Place& place) {
  for (const QString& part : query.split(u'&', Qt::SkipEmptyParts)) {
    const qsizetype equals = part.indexOf(u'=');
    if (equals <= 0) {
      refuse(QStringLiteral("\"%1\" is not word=value").arg(part));
    }
    const QString word = decoded(part.left(equals));
    const QString value = decoded(part.mid(equals + 1));
    if (word == u"host") {
      place.host = value;
    } else if (word == u"port") {
      place.port = portFrom(value);
    } else if (word == u"user") {
      place.user = value;
    } else if (word == u"password") {
      place.password = value;
    } else if (word == u"dbname") {
      place.database = value;
    } else {
      place.options[word] = value;
    }
  }
}

} // namespace

Place placeFrom(const QString& text) {
  Place place;
  QString rest;
  for (const QString& scheme : {QStringLiteral("postgresql://"), QStringLiteral("postgres://")}) {
    if (text.startsWith(scheme)) {
      place.engine = Engine::postgresql;
      rest = text.mid(scheme.size());
    }
  }
  if (place.engine == Engine::sqlite) {
    if (text.trimmed().isEmpty()) {
      throw Error(Trouble::badInput, "no store was named; expected is a file or postgresql://…", "store");
    }
    if (text.contains(u"://")) {
      refuse(QStringLiteral("\"%1\" is neither a file nor a server that Hangbook knows").arg(text));
    }
    place.file = QFileInfo(text).absoluteFilePath();
    return place;
  }
  if (const qsizetype mark = rest.indexOf(u'?'); mark >= 0) {
    readQuery(rest.mid(mark + 1), place);
    rest.truncate(mark);
  }
  const qsizetype slash = rest.indexOf(u'/');
  Place named;
  readAuthority(slash < 0 ? rest : rest.left(slash), named);
  if (slash >= 0 && slash + 1 < rest.size()) {
    place.database = decoded(rest.mid(slash + 1));
  }
  if (!named.host.isEmpty()) {
    place.host = named.host;
  }
  if (!named.user.isEmpty()) {
    place.user = named.user;
    place.password = named.password;
  }
  if (named.port != Place().port) {
    place.port = named.port;
  }
  if (place.database.isEmpty()) {
    refuse(QStringLiteral("the address of the store names no database"));
  }
  return place;
}

} // namespace hangbook::store
