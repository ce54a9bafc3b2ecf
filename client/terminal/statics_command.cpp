// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hang_json.h"
#include "hang/solve.h"
#include "terminal/commands.h"
#include "terminal/hang_answers.h"

namespace hangbook::terminal {
namespace {

QJsonObject answer(const QJsonValue& value) {
  const hang::Statics statics = hang::solve(exchange::hangFromJson(value, 2));
  return exchange::hangFormat(value) == 2 ? exchange::toSecondJson(statics) : exchange::toJson(statics);
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
