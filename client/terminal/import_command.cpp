// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
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

/// "left=right", both without spaces around them.
std::pair<QString, QString> pairFrom(const std::string& option, const QString& text, const char* like) {
  const qsizetype at = text.lastIndexOf(u'=');
  if (at <= 0) {
    throw Error(Trouble::badInput, option + " " + text.toStdString() + ": " + like + " is expected");
  }
  return {text.left(at).trimmed(), text.sliced(at + 1).trimmed()};
}

exchange::Mapping mappingOf(const Given& given) {
  exchange::Mapping mapping;
  if (const auto line = given.option("--heading-line")) {
    bool good = false;
    mapping.headingLine = QString::fromStdString(*line).toInt(&good);
    if (!good || mapping.headingLine < 1) {
      throw Error(Trouble::badInput,
                  "--heading-line " + *line + ": the number of a line, from 1, is expected");
    }
  }
  for (const std::string& each : given.all("--column")) {
    const auto [from, to] = pairFrom("--column", QString::fromStdString(each),
                                     "a heading of the file and ours, such as \"Serial No.=serial\",");
    mapping.columns.push_back({from, to});
  }
  for (const std::string& each : given.all("--everywhere")) {
    const auto [heading, value] = pairFrom("--everywhere", QString::fromStdString(each),
                                           "a heading of ours and what stands in it, such as kind=hoist,");
    mapping.everywhere.push_back({heading, value});
  }
  return mapping;
}

/// As it was read the last time, where nothing else is said; told to people.
void recall(store::Store& store, exchange::Kind kind, const QByteArray& bytes, exchange::CsvForm& form,
            const Given& given, Context& context) {
  if (!form.mapping.empty() || given.has("--as-written")) {
    return;
  }
  if (const auto kept = actions::rememberedMapping(store, kind, bytes, form)) {
    form.mapping = kept->mapping;
    if (form.dateFormat.isEmpty()) {
      form.dateFormat = kept->dateFormat;
    }
    context.err << "columns as " << kept->by << " read them on " << kept->at.date().toString(Qt::ISODate)
                << " (--as-written reads them as they stand)\n";
  }
}

exchange::CsvForm formOf(const Given& given) {
  exchange::CsvForm form;
  form.separator = readSign(given, "--separator", ",;\t");
  form.decimalMark = readSign(given, "--decimal-mark", ",.");
  form.dateFormat = QString::fromStdString(given.option("--date-format").value_or(""));
  form.mapping = mappingOf(given);
  return form;
}

/// Takes the file in, on paper or in the store. A store that is not there yet is made only for a file without
/// faults that is really to be taken in.
exchange::Import takeIn(exchange::Kind kind, const QByteArray& bytes, const Given& given, Context& context) {
  exchange::CsvForm form = formOf(given);
  const bool dry = given.has("--dry-run");
  const QDateTime now = QDateTime::currentDateTimeUtc();
  if (!storeExists(context)) {
    exchange::Importer onPaper{QString::fromStdString(context.by.value_or("-")), now};
    exchange::Import import = exchange::readFile(kind, bytes, {}, onPaper, form);
    if (dry || !import.faults.empty()) {
      return import;
    }
  }
  const auto store = dry ? openStore(context) : openOrMakeStore(context);
  recall(*store, kind, bytes, form, given, context);
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
  QJsonArray differences;
  for (const exchange::Difference& each : import.differences) {
    differences.append(QJsonObject{{QStringLiteral("line"), each.line},
                                   {QStringLiteral("record"), each.sort},
                                   {QStringLiteral("key"), each.key},
                                   {QStringLiteral("column"), each.heading},
                                   {QStringLiteral("was"), each.was},
                                   {QStringLiteral("becomes"), each.becomes}});
  }
  return {{QStringLiteral("format"), QStringLiteral("hangbook.import/1")},
          {QStringLiteral("kind"), kind},
          {QStringLiteral("file"), QString::fromStdString(file)},
          {QStringLiteral("written"), !dry && import.faults.empty()},
          {QStringLiteral("form"), import.form},
          {QStringLiteral("counts"), counts},
          {QStringLiteral("differences"), differences},
          {QStringLiteral("faults"), faults}};
}

/// What would become another figure: so many that a screen or two shows them.
void printDifferences(const exchange::Import& import, Context& context) {
  constexpr std::size_t most = 60;
  const auto shown = [](const QString& text) { return text.isEmpty() ? QStringLiteral("not known") : text; };
  for (std::size_t i = 0; i < std::min(most, import.differences.size()); ++i) {
    const exchange::Difference& each = import.differences[i];
    context.out << "  line " << QString::number(each.line) << ", " << each.sort << ' ' << each.key << ": "
                << each.heading << ' ' << shown(each.was) << " -> " << shown(each.becomes) << '\n';
  }
  if (import.differences.size() > most) {
    context.out << "  and " << QString::number(import.differences.size() - most)
                << " more (--json has all)\n";
  }
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
  if (dry) {
    printDifferences(import, context);
  }
  context.out << file << ": read as " << import.form
              << (dry ? "; dry run, nothing was written\n" : "; written\n");
}

Ending run(const Given& given, Context& context) {
  const exchange::Kind kind = exchange::kindFrom(QString::fromStdString(*given.option("--kind")));
  const std::string file = *given.operand("FILE");
  const bool dry = given.has("--dry-run");
  const exchange::Import import = takeIn(kind, readAll(file, context.in), given, context);
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
  return {
      "import",
      "take a spreadsheet (CSV) into the store: all of it, or nothing where anything in it is wrong",
      {{"--kind", "KIND", "types, people, units, venues, shows or marks", true},
       {"--dry-run", "", "say what would be done, figure by figure, and write nothing"},
       {"--column", "THEIRS=OURS",
        "a heading of the file, or #3 for its third column, and ours; nothing behind the = leaves it out; "
        "kept for the next list with these headings",
        false, true},
       {"--everywhere", "OURS=TEXT", "a column that the file does not have, such as kind=hoist", false, true},
       {"--heading-line", "LINE", "where the headings stand, below a title"},
       {"--as-written", "", "do not read the columns as the last time"},
       {"--date-format", "FORM",
        "how dates are written, such as dd.MM.yyyy, several separated by \";\"; 2027-04-02 where left out"},
       {"--decimal-mark", "MARK", "\".\" or \",\"; found in the file where left out"},
       {"--separator", "MARK", "\",\", \";\" or tab; found in the file where left out"}},
      {{"FILE", "the file; - for standard input"}},
      "hangbook import --kind units fleet.csv --dry-run",
      run};
}

} // namespace hangbook::terminal
