// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <QJsonDocument>
#include <QProcess>

#include "where.h"

namespace hangbook::testing {

QJsonObject Said::json() const {
  return QJsonDocument::fromJson(out).object();
}

QString programPath() {
  return qEnvironmentVariable("HANGBOOK_TRIED_PROGRAM", QStringLiteral(HANGBOOK_PROGRAM));
}

Said program(const QStringList& words, const QByteArray& input) {
  QProcess process;
  process.start(programPath(), words);
  process.write(input);
  process.closeWriteChannel();
  constexpr int patience = 300'000; // a loaded machine under sanitizers
  const bool ended = process.waitForFinished(patience) && process.exitStatus() == QProcess::NormalExit;
  return {ended ? process.exitCode() : -1, process.readAllStandardOutput(), process.readAllStandardError()};
}

} // namespace hangbook::testing
