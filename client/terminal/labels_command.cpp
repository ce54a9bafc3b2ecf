// SPDX-License-Identifier: GPL-3.0-or-later
#include <charconv>

#include "quantity/error.h"
#include "reports/labels.h"
#include "store/fleet_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

int skipFrom(const Given& given) {
  const std::string text = given.option("--skip").value_or("0");
  int skip = -1;
  const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), skip);
  if (trouble != std::errc() || end != text.data() + text.size() || skip < 0) {
    throw Error(Trouble::badInput, "--skip " + text + ": a number of places is expected");
  }
  return skip;
}

/// Those whose serials stand on standard input, one a line, in that order; or those of --type, or all at
/// --place.
std::vector<reports::Label> labelsFrom(store::Store& store, const Given& given, std::istream& in) {
  std::vector<reports::Label> labels;
  if (given.has("--type") || given.has("--place")) {
    for (const fleet::Unit& unit : store::loadUnits(store)) {
      const bool typed = !given.has("--type") || unit.type == textOf(given, "--type");
      const bool placed = !given.has("--place") || unit.place == textOf(given, "--place");
      if (typed && placed && unit.state != fleet::UnitState::writtenOff) {
        labels.push_back(reports::labelOf(unit));
      }
    }
    return labels;
  }
  for (std::string line; std::getline(in, line);) {
    if (const QString serial = QString::fromStdString(line).trimmed(); !serial.isEmpty()) {
      labels.push_back(reports::labelOf(findUnit(store, serial)));
    }
  }
  return labels;
}

Ending run(const Given& given, Context& context) {
  const reports::LabelSheet& sheet =
      reports::labelSheet(given.has("--sheet") ? textOf(given, "--sheet") : QStringLiteral("a4"));
  const int skip = skipFrom(given);
  const auto store = openStore(context);
  const std::vector<reports::Label> labels = labelsFrom(*store, given, context.in);
  const QString file = QString::fromStdString(*given.operand("FILE"));
  reports::writeLabels(file, labels, sheet, skip);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.labels/1")},
                        {QStringLiteral("file"), file},
                        {QStringLiteral("sheet"), sheet.name},
                        {QStringLiteral("labels"), static_cast<int>(labels.size())}});
  } else {
    context.out << QString::number(labels.size()) << " labels in " << file << '\n';
  }
  return Ending::done;
}

} // namespace

Command labelsCommand() {
  return {"labels",
          "print labels with a QR code and plain text as PDF: of the serials on standard input, of a type, "
          "of a place",
          {{"--sheet", "NAME", "a4 (3 × 8), letter (3 × 10) or roll (one a page); a4 where left out"},
           {"--type", "NAME", "all units of this type"},
           {"--place", "NAME", "all units at this place"},
           {"--skip", "N", "places of the first sheet that are used already"}},
          {{"FILE", "the PDF to write"}},
          "hangbook labels --type \"Marram bass\" --sheet a4 labels.pdf",
          run};
}

} // namespace hangbook::terminal
