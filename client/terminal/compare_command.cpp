// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "options/side_by_side.h"
#include "quantity/error.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

constexpr qsizetype least = 2;
constexpr qsizetype most = 4;

void print(const std::vector<options::CompareRow>& rows, const std::vector<options::Option>& compared,
           std::ostream& out) {
  std::vector<Column> columns{{QString(), Column::Kind::text}};
  for (const options::Option& option : compared) {
    columns.push_back({option.id.left(8), Column::Kind::text});
  }
  for (const bool differs : {true, false}) {
    Table table(columns);
    for (const options::CompareRow& row : rows) {
      if (row.differs == differs) {
        table.add(QStringList(row.what) + row.cells);
      }
    }
    out << (differs ? "In what they differ\n" : "\nIn what they are alike\n");
    if (table.empty()) {
      out << (differs ? "  nothing\n" : "  nothing\n");
    } else {
      table.print(out, QStringLiteral("  "));
    }
  }
}

Ending run(const Given& given, Context& context) {
  const QStringList wanted =
      QString::fromStdString(*given.option("--option")).split(QStringLiteral("; "), Qt::SkipEmptyParts);
  if (wanted.size() < least || wanted.size() > most) {
    throw Error(Trouble::badInput, "two to four --option ID are expected");
  }
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  std::optional<QString> hang;
  if (const auto name = given.option("--hang")) {
    hang = findHang(show, QString::fromStdString(*name)).name;
  }
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  std::vector<options::Option> compared;
  for (const QString& each : wanted) {
    const options::ShowOptions found = optionsBeginning(snapshot, each, hang);
    compared.push_back(findOption(found, each));
  }
  std::vector<const options::Option*> pointers;
  for (const options::Option& each : compared) {
    pointers.push_back(&each);
  }
  const std::vector<options::CompareRow> rows = options::sideBySide(pointers);
  if (context.json) {
    QJsonArray list;
    for (const options::CompareRow& row : rows) {
      list.append(QJsonObject{{QStringLiteral("what"), row.what},
                              {QStringLiteral("differs"), row.differs},
                              {QStringLiteral("cells"), QJsonArray::fromStringList(row.cells)}});
    }
    QStringList ids;
    for (const options::Option& each : compared) {
      ids << each.id;
    }
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.compare/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("options"), QJsonArray::fromStringList(ids)},
                        {QStringLiteral("rows"), list}});
  } else {
    context.out << show.name << " (" << show.tour << "), " << show.venue << '\n';
    print(rows, compared, context.out);
  }
  return Ending::done;
}

} // namespace

Command compareCommand() {
  return {"compare",
          "two to four options of a show row by row, what they differ in first",
          {showOption,
           {"--option", "ID", "an option, by the beginning of its identifier; two to four times", true, true},
           {"--hang", "NAME", "the hang, where several have that option"},
           tourOption},
          {},
          "hangbook compare --show \"Pollan Cross\" --option 0e23bbcc --option 4696e866",
          run};
}

} // namespace hangbook::terminal
