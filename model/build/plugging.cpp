// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/plugging.h"

#include "build/words.h"

namespace hangbook::build {
namespace {

QString orNotStated(const QString& what, const QString& text) {
  return text.isEmpty() ? what + QStringLiteral(" not stated") : what + QLatin1Char(' ') + text;
}

QString loomOf(const Plugged& plug) {
  const QString label = plug.label.isEmpty() ? QString() : QStringLiteral(" “%1”").arg(plug.label);
  return QStringLiteral("%1%2, end %3").arg(plug.loom, label, plug.end);
}

} // namespace

QString wordsOf(const Plugged& plug, UnitSystem units) {
  QStringList parts{loomOf(plug), orNotStated(QStringLiteral("connector"), plug.connector),
                    orNotStated(QStringLiteral("colour"), plug.colour)};
  if (plug.reach) {
    parts << QStringLiteral("reach %1").arg(lengthText(*plug.reach, units));
  }
  parts << (plug.rack.isEmpty() ? QStringLiteral("rack and channel not stated")
                                : QStringLiteral("rack %1, %2")
                                      .arg(plug.rack, orNotStated(QStringLiteral("channel"), plug.channel)));
  const QString into = plug.socket.isEmpty() ? QString() : QStringLiteral("socket %1: ").arg(plug.socket);
  return into + parts.join(QStringLiteral(", "));
}

QString plugWords(int element, const QString& cabinet, const Plugs& plugs, UnitSystem units) {
  QString words = QStringLiteral("Plug cabinet %1, %2: ").arg(element).arg(cabinet);
  QStringList said;
  for (const Plugged& plug : plugs.all) {
    said << wordsOf(plug, units);
  }
  if (plugs.all.empty()) {
    QString open = QStringLiteral("loom, connector, colour and channel not stated: follow the maker's data");
    if (!plugs.sockets.isEmpty()) {
      open += QStringLiteral(" (sockets: %1)").arg(plugs.sockets.join(QStringLiteral(", ")));
    }
    said << open;
  }
  if (!plugs.otherwise.isEmpty()) {
    said << plugs.otherwise;
  }
  return words + said.join(QStringLiteral("; ")) + QStringLiteral("; cable dressed clear of arms and chain");
}

QString unplugWords(int element, const std::vector<Plugged>& plugs) {
  QStringList said;
  for (const Plugged& plug : plugs) {
    said << loomOf(plug);
  }
  const QString words = QStringLiteral("Unplug cabinet %1").arg(element);
  return said.isEmpty() ? words : words + QStringLiteral(": ") + said.join(QStringLiteral("; "));
}

} // namespace hangbook::build
