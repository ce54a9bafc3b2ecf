// SPDX-License-Identifier: GPL-3.0-or-later
#include "printed_demo.h"

#include <boost/test/unit_test.hpp>

namespace hangbook::testing {

Printed::Printed() {
  BOOST_REQUIRE(program({QStringLiteral("demo"), QStringLiteral("--store"), store}).status == 0);
}

const Printed& Printed::demo() {
  static const Printed made;
  return made;
}

Said Printed::say(QStringList words) const {
  return program(words << QStringLiteral("--store") << store << QStringLiteral("--as-of")
                       << QStringLiteral("2027-03-30"));
}

QString Printed::sheet(const QString& kind, const QString& show, const QStringList& more,
                       const char* ending) const {
  const QString file = folder.filePath(kind + show + more.join(QString()) + QLatin1String(ending));
  QStringList words{QStringLiteral("report"), kind, QStringLiteral("-o"), file};
  if (!show.isEmpty()) {
    words << QStringLiteral("--show") << show;
  }
  const Said said = say(words + more);
  BOOST_REQUIRE_MESSAGE((said.status == 0 || said.status == 1), said.err.toStdString());
  return file;
}

QString Printed::text(const QString& pdf) {
  return QString::fromUtf8(
      runTool(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")}));
}

} // namespace hangbook::testing
