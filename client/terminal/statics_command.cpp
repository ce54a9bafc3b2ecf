// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hang_json.h"
#include "hang/solve.h"
#include "terminal/commands.h"
#include "terminal/hang_answers.h"

namespace hangbook::terminal {
namespace {

QJsonObject answer(const QJsonValue& value) {
  return exchange::toJson(hang::solve(exchange::hangFromJson(value)));
}

} // namespace

Command staticsCommand() {
  return {"statics",
          "one hang in (JSON on standard input, or a list of them), its statics out",
          {},
          {},
          "hangbook statics < hang.json",
          [](const Given&, Context& context) { return answerHangs(context, answer); }};
}

} // namespace hangbook::terminal
