// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/calendar_file.h"

namespace hangbook::exchange {
namespace {

/// RFC 5545, 3.3.11: backslash, semicolon, comma and line ends; other control signs have no place in a text.
QString escaped(const QString& text) {
  QString result;
  for (const QChar each : text) {
    if (each == u'\n') {
      result += QStringLiteral("\\n");
    } else if (each == u'\\' || each == u';' || each == u',') {
      result += u'\\';
      result += each;
    } else if (each.category() != QChar::Other_Control || each == u'\t') {
      result += each;
    }
  }
  return result;
}

/// RFC 5545, 3.1: a line has at most 75 octets without its end; what follows begins with a space.
void append(QByteArray& into, const QString& text) {
  constexpr qsizetype most = 75;
  QByteArray rest = text.toUtf8();
  qsizetype room = most;
  while (rest.size() > room) {
    qsizetype cut = room;
    while (cut > 0 && (static_cast<unsigned char>(rest[cut]) & 0xC0U) == 0x80U) {
      --cut; // a further octet of the same character
    }
    into += rest.left(cut) + "\r\n ";
    rest = rest.mid(cut);
    room = most - 1;
  }
  into += rest + "\r\n";
}

QString day(QDate date) {
  return date.toString(QStringLiteral("yyyyMMdd"));
}

} // namespace

QByteArray writeCalendar(const std::vector<CalendarEvent>& events, const QDateTime& stamp) {
  QByteArray file;
  append(file, QStringLiteral("BEGIN:VCALENDAR"));
  append(file, QStringLiteral("VERSION:2.0"));
  append(file, QStringLiteral("PRODID:-//Hangbook//Hangbook " HANGBOOK_VERSION "//EN"));
  for (const CalendarEvent& event : events) {
    append(file, QStringLiteral("BEGIN:VEVENT"));
    append(file, QStringLiteral("UID:") + escaped(event.uid));
    append(file, QStringLiteral("DTSTAMP:") + stamp.toUTC().toString(QStringLiteral("yyyyMMdd'T'HHmmss'Z'")));
    append(file, QStringLiteral("DTSTART;VALUE=DATE:") + day(event.from));
    append(file,
           QStringLiteral("DTEND;VALUE=DATE:") + day(event.to.addDays(1))); // the day after the last one
    append(file, QStringLiteral("SUMMARY:") + escaped(event.summary));
    if (!event.location.isEmpty()) {
      append(file, QStringLiteral("LOCATION:") + escaped(event.location));
    }
    if (!event.description.isEmpty()) {
      append(file, QStringLiteral("DESCRIPTION:") + escaped(event.description));
    }
    append(file, QStringLiteral("TRANSP:TRANSPARENT"));
    append(file, QStringLiteral("END:VEVENT"));
  }
  append(file, QStringLiteral("END:VCALENDAR"));
  return file;
}

} // namespace hangbook::exchange
