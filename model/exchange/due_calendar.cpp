// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/due_calendar.h"

#include <QCryptographicHash>

#include "exchange/calendar_file.h"

namespace hangbook::exchange {

QByteArray dueAsCalendar(const std::vector<calendar::Planned>& due, const QDateTime& stamp) {
  std::vector<CalendarEvent> events;
  for (const calendar::Visit& visit : calendar::visits(due)) {
    QStringList lines;
    QStringList names;
    for (const calendar::Planned& each : visit.units) {
      names << each.due.serial + u'/' + each.due.rule;
      lines << QStringLiteral("%1 (%2): %3, %4")
                   .arg(each.due.serial, each.due.type, each.due.rule,
                        each.due.due.isValid()
                            ? QStringLiteral("due %1").arg(each.due.due.toString(Qt::ISODate))
                            : each.due.note);
    }
    names.sort();
    const QByteArray name = names.join(u'\n').toUtf8();
    CalendarEvent event;
    event.uid =
        QString::fromLatin1(QCryptographicHash::hash(name, QCryptographicHash::Sha256).toHex().left(32)) +
        QStringLiteral("@hangbook");
    event.from = visit.slot.from;
    event.to = visit.slot.to;
    event.summary = QStringLiteral("%1%2 to examine")
                        .arg(visit.units.front().due.overdue ? QStringLiteral("OVERDUE: ") : QString())
                        .arg(visit.units.size());
    event.location = visit.slot.place;
    event.description = lines.join(u'\n');
    events.push_back(event);
  }
  return writeCalendar(events, stamp);
}

} // namespace hangbook::exchange
