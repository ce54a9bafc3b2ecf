// SPDX-License-Identifier: GPL-3.0-or-later
#include <iterator>

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>

#include "actions/import_file.h"
#include "exchange/import.h"
#include "quantity/error.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

QByteArray readAll(const std::string& file, std::istream& in) {
  if (file == "-") {
    return QByteArray::fromStdString(
        std::string{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()});
  }
  QFile source(QString::fromStdString(file));
  if (QFileInfo(source).isDir() || !source.open(QIODevice::ReadOnly)) {
    throw Error(
        Trouble::badInput,
        "the file cannot be read (" +
            (QFileInfo(source).isDir() ? std::string("it is a folder") : source.errorString().toStdString()) +
            ")",
        file);
  }
  QByteArray bytes = source.readAll();
  if (source.error() != QFileDevice::NoError) {
    throw Error(Trouble::badInput, "the file cannot be read (" + source.errorString().toStdString() + ")",
                file);
  }
  return bytes;
}

/// One of the signs in `known`, or "tab".
std::optional<char> readSign(const Given& given, const std::string& option, const std::string& known) {
  const auto text = given.option(option);
  if (!text) {
    return std::nullopt;
  }
  const std::string sign = *text == "tab" ? "\t" : *text;
  if (sign.size() != 1 || known.find(sign) == std::string::npos) {
    throw Error(Trouble::badInput, option + " " + *text + ": one of \",\" and " +
                                       (option == "--decimal-mark" ? "\".\"" : "\";\" and tab") +
                                       " is expected");
  }
  return sign[0];
}

exchange::CsvForm formOf(const Given& given) {
  exchange::CsvForm form;
  form.separator = readSign(given, "--separator", ",;\t");
  form.decimalMark = readSign(given, "--decimal-mark", ",.");
  form.dateFormat = QString::fromStdString(given.option("--date-format").value_or(""));
  return form;
}

/// Takes the file in, on paper or in the store. A store that is not there yet is made only for a file without
/// faults that is really to be taken in.
exchange::Import takeIn(exchange::Kind kind, const QByteArray& bytes, const exchange::CsvForm& form, bool dry,
                        const Context& context) {
  const QDateTime now = QDateTime::currentDateTimeUtc();
  if (!storeExists(context)) {
    exchange::Importer onPaper{QString::fromStdString(context.by.value_or("-")), now};
    exchange::Import import = exchange::readFile(kind, bytes, {}, onPaper, form);
    if (dry || !import.faults.empty()) {
      return import;
    }
  }
  const auto store = dry ? openStore(context) : openOrMakeStore(context);
  return actions::importFile(*store, kind, bytes, {person(*store, context), now}, form, dry);
}

QJsonObject inJson(const exchange::Import& import, const QString& kind, const std::string& file, bool dry) {
  QJsonArray counts;
  for (const exchange::Count& count : import.counts) {
    counts.append(QJsonObject{{QStringLiteral("record"), count.sort},
                              {QStringLiteral("added"), count.added},
                              {QStringLiteral("changed"), count.changed},
                              {QStringLiteral("same"), count.same}});
  }
  QJsonArray faults;
  for (const exchange::Fault& fault : import.faults) {
    faults.append(QJsonObject{{QStringLiteral("line"), fault.line},
                              {QStringLiteral("column"), fault.column},
                              {QStringLiteral("read"), fault.read},
                              {QStringLiteral("expected"), fault.expected}});
  }
  return {{QStringLiteral("format"), QStringLiteral("hangbook.import/1")},
          {QStringLiteral("kind"), kind},
          {QStringLiteral("file"), QString::fromStdString(file)},
          {QStringLiteral("written"), !dry && import.faults.empty()},
          {QStringLiteral("form"), import.form},
          {QStringLiteral("counts"), counts},
          {QStringLiteral("faults"), faults}};
}

void printForPeople(const exchange::Import& import, const std::string& file, bool dry, Context& context) {
  for (const exchange::Fault& fault : import.faults) {
    context.err << exchange::text(fault) << '\n';
  }
  if (!import.faults.empty()) {
    context.err << "hangbook: " << file << ": " << import.faults.size()
                << (import.faults.size() == 1 ? " fault" : " faults") << "; nothing was written\n";
    return;
  }
  for (const exchange::Count& count : import.counts) {
    context.out << count.sort << ": " << QString::number(count.added) << " new, "
                << QString::number(count.changed) << " changed, " << QString::number(count.same)
                << " the same already\n";
  }
  context.out << file << ": read as " << import.form
              << (dry ? "; dry run, nothing was written\n" : "; written\n");
}

Ending run(const Given& given, Context& context) {
  const exchange::Kind kind = exchange::kindFrom(QString::fromStdString(*given.option("--kind")));
  const std::string file = *given.operand("FILE");
  const exchange::CsvForm form = formOf(given);
  const bool dry = given.has("--dry-run");
  const exchange::Import import = takeIn(kind, readAll(file, context.in), form, dry, context);
  if (context.json) {
    printJson(context, inJson(import, exchange::wordFor(kind), file, dry));
    for (const exchange::Fault& fault : import.faults) {
      context.err << exchange::text(fault) << '\n';
    }
  } else {
    printForPeople(import, file, dry, context);
  }
  return import.faults.empty() ? Ending::done : Ending::badInput;
}

} // namespace

Command importCommand() {
  return {"import",
          "take a spreadsheet (CSV) into the store: all of it, or nothing where anything in it is wrong",
          {{"--kind", "KIND", "types, people, units, venues, shows or marks", true},
           {"--dry-run", "", "say what would be done, and write nothing"},
           {"--date-format", "FORM", "how dates are written, such as dd.MM.yyyy; 2027-04-02 where left out"},
           {"--decimal-mark", "MARK", "\".\" or \",\"; found in the file where left out"},
           {"--separator", "MARK", "\",\", \";\" or tab; found in the file where left out"}},
          {{"FILE", "the file; - for standard input"}},
          "hangbook import --kind units fleet.csv --dry-run",
          run};
}

} // namespace hangbook::terminal
