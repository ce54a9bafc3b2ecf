// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hang_json.h"
#include "hang/settle.h"
#include "terminal/commands.h"
#include "terminal/hang_answers.h"

namespace hangbook::terminal {
namespace {

QJsonObject answer(const QJsonValue& value) {
  return exchange::toJson(hang::settle(exchange::hangFromJson(value)));
}

} // namespace

Command settledCommand() {
  return {"settled",
          "one hang in (JSON on standard input, or a list of them), the shape that it really takes out",
          {},
          {},
          "hangbook settled < hang.json",
          [](const Given&, Context& context) { return answerHangs(context, answer); }};
}

} // namespace hangbook::terminal
