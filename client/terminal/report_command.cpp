// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFileInfo>
#include <QJsonArray>
#include <QSaveFile>

#include "exchange/csv_write.h"
#include "reports/code.h"
#include "reports/pdf.h"
#include "sheets/sheets.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/fleet_words.h"
#include "terminal/names.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

const QString examinationRegister = QStringLiteral("examination-register");
const QString tourSummary = QStringLiteral("tour-summary");

reports::Paper paperFrom(const Given& given) {
  const std::string text = given.option("--paper").value_or("a4");
  if (text != "a4" && text != "letter") {
    throw Error(Trouble::badInput, "--paper " + text + ": a4 or letter is expected");
  }
  return text == "letter" ? reports::Paper::letter : reports::Paper::a4;
}

void write(const QString& name, const QByteArray& bytes) {
  QSaveFile file(name);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
    throw Error(Trouble::badInput, "cannot be written: " + file.errorString().toStdString(),
                name.toStdString());
  }
}

Ending verify(const Given& given, Context& context) {
  const reports::SheetCode code = reports::readCode(textOf(given, "--verify"));
  if (!sheets::kinds().contains(code.kind)) {
    throw unknownName(code.kind, QStringLiteral("a kind of sheet"), sheets::kinds());
  }
  const auto store = openStore(context);
  const QString now = store->reading([&] { return reports::checksumOf(sheets::sheetOf(*store, code)); });
  const bool current = now == code.checksum;
  if (context.json) {
    printJson(context,
              {{QStringLiteral("format"), QStringLiteral("hangbook.report-verify/1")},
               {QStringLiteral("kind"), code.kind},
               {QStringLiteral("show"), code.show},
               {QStringLiteral("as_of"), code.asOf.toString(Qt::ISODate)},
               {QStringLiteral("standing"), current ? QStringLiteral("current") : QStringLiteral("outdated")},
               {QStringLiteral("checksum"), code.checksum},
               {QStringLiteral("checksum_now"), now}});
  } else {
    context.out << (current ? "current: " : "OUTDATED: ") << code.kind << ' '
                << (code.show.isEmpty() ? code.tour : code.show)
                << (current ? ", as this store would print it now\n"
                            : ", the store has changed since it was printed; print it again\n");
  }
  return current ? Ending::done : Ending::failing;
}

Ending run(const Given& given, Context& context) {
  if (given.has("--verify")) {
    return verify(given, context);
  }
  reports::SheetCode code;
  code.kind = QString::fromStdString(given.operand("KIND").value_or(""));
  if (!sheets::kinds().contains(code.kind)) {
    throw unknownName(code.kind, QStringLiteral("a kind of sheet"), sheets::kinds());
  }
  if (!given.has("-o")) {
    throw Error(Trouble::badInput, "report needs -o FILE (a name that ends in .pdf or .csv)");
  }
  const QString file = textOf(given, "-o");
  const QString ending = QFileInfo(file).suffix().toLower();
  if (ending != QLatin1String("pdf") && ending != QLatin1String("csv")) {
    throw Error(Trouble::badInput,
                "-o " + file.toStdString() + ": a name that ends in .pdf or .csv is expected");
  }
  code.units = context.units;
  code.asOf = today(context);
  const reports::Paper paper = paperFrom(given);
  const auto store = openStore(context);
  const reports::Sheet sheet = store->reading([&] {
    if (code.kind == tourSummary || (code.kind == examinationRegister && !given.has("--show"))) {
      code.tour = code.kind == tourSummary ? findTour(*store, given) : QString();
    } else {
      if (!given.has("--show")) {
        throw Error(Trouble::badInput, code.kind.toStdString() + " needs --show NAME");
      }
      const calendar::Show show = findShow(*store, given);
      code.tour = show.tour;
      code.show = show.name;
    }
    return sheets::sheetOf(*store, code);
  });
  code.checksum = reports::checksumOf(sheet);
  const reports::Stamp stamp{QStringLiteral(HANGBOOK_VERSION), QDateTime::currentDateTimeUtc(), code.checksum,
                             reports::textOf(code)};
  write(file, ending == QLatin1String("csv") ? exchange::writeCsv(reports::recordsOf(sheet, stamp))
                                             : reports::pdfOf(sheet, stamp, paper));
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.report/1")},
                        {QStringLiteral("kind"), code.kind},
                        {QStringLiteral("file"), file},
                        {QStringLiteral("revision"), sheet.revision},
                        {QStringLiteral("checksum"), code.checksum},
                        {QStringLiteral("code"), stamp.code},
                        {QStringLiteral("not_cleared"), QJsonArray::fromStringList(sheet.notCleared)}});
  } else {
    context.out << sheet.title << " in " << file << ", check " << code.checksum << '\n';
    if (!sheet.notCleared.isEmpty()) {
      context.out << "NOT CLEARED TO LIFT: its first page says why\n";
    }
  }
  return sheet.notCleared.isEmpty() ? Ending::done : Ending::failing;
}

} // namespace

Command reportCommand() {
  return {"report",
          "print a sheet as PDF or CSV, or say whether one that was printed is still current",
          {{"-o", "FILE", "what to write: a name that ends in .pdf or .csv"},
           {"--show", "NAME", "the show; needed but for examination-register and tour-summary"},
           tourOption,
           {"--paper", "SIZE", "a4 or letter; a4 where left out"},
           {"--verify", "CODE", "what a sheet's QR code says: current or outdated"}},
          {{"KIND", "load-sheet, build-sheet, prep-list, examination-register or tour-summary", false}},
          "hangbook report load-sheet --show Ostrel -o load.pdf",
          run};
}

} // namespace hangbook::terminal
