// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFileInfo>

#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

Ending run(const Given& given, Context& context) {
  const QString target = QFileInfo(QString::fromStdString(*given.operand("FILE"))).absoluteFilePath();
  const auto store = openStore(context);
  store->backUpTo(target);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.backup/1")},
                        {QStringLiteral("store"), store->place().shown()},
                        {QStringLiteral("file"), target},
                        {QStringLiteral("bytes"), QFileInfo(target).size()}});
  } else {
    context.out << "Copied " << store->place().shown() << " to " << target << " ("
                << QString::number(QFileInfo(target).size()) << " bytes) and checked the copy.\n";
  }
  return Ending::done;
}

} // namespace

Command backupCommand() {
  return {"backup",
          "copy the store while it is in use, and check the copy",
          {},
          {{"FILE", "where to put the copy; it must not be there yet"}},
          "hangbook backup tour-2027-04-02.sqlite",
          run};
}

} // namespace hangbook::terminal
