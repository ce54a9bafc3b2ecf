// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/split_batch.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

Ending run(const Given& given, Context& context) {
  const QString text = textOf(given, "--pieces");
  bool isNumber = false;
  const int pieces = text.toInt(&isNumber);
  if (!isNumber) {
    throw Error(Trouble::badInput, "--pieces " + text.toStdString() + ": a whole number is expected");
  }
  const auto store = openStore(context);
  const fleet::Unit whole = findUnit(*store, QString::fromStdString(*given.operand("SERIAL")).trimmed());
  const fleet::Unit part =
      actions::splitBatch(*store, whole.serial, pieces, textOf(given, "--as"), person(*store, context));
  const int left = fleet::piecesOf(whole) - pieces;
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.split/1")},
                        {QStringLiteral("unit"), whole.serial},
                        {QStringLiteral("pieces"), left},
                        {QStringLiteral("new_unit"), part.serial},
                        {QStringLiteral("new_pieces"), pieces}});
  } else {
    context.out << whole.serial << ": " << QString::number(left) << " pieces left; " << part.serial << ": "
                << QString::number(pieces) << " at " << part.place << ", with the same history\n";
  }
  return Ending::done;
}

} // namespace

Command splitCommand() {
  return {"split",
          "make a batch of its own of some pieces of a counted batch; its history goes with it",
          {{"--pieces", "NUMBER", "how many", true}, {"--as", "SERIAL", "the new batch's serial", true}},
          {{"SERIAL", "the batch"}},
          "hangbook split K16-B1 --pieces 8 --as K16-B2",
          run};
}

} // namespace hangbook::terminal
