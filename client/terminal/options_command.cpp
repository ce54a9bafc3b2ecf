// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "exchange/options_json.h"
#include "quantity/error.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/options_table.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using options::Verdict;

options::Order readOrder(const std::string& word) {
  static constexpr std::array<std::pair<const char*, options::Order>, 3> orders{{
      {"cover", options::Order::coverFirst},
      {"lightest", options::Order::lightestFirst},
      {"gear", options::Order::leastGear},
  }};
  for (const auto& [name, order] : orders) {
    if (word == name) {
      return order;
    }
  }
  throw Error(Trouble::badInput, "--order " + word + ": one of cover, lightest, gear is expected");
}

bool stands(const options::Option& option) {
  return option.verdict == Verdict::holds || option.verdict == Verdict::tight;
}

/// Leaves nothing but the one option in the list that holds it.
options::ShowOptions only(options::ShowOptions all, const QString& id) {
  for (options::HangOptions& hang : all.hangs) {
    std::erase_if(hang.options, [&](const options::Option& option) { return option.id != id; });
  }
  std::erase_if(all.hangs, [](const options::HangOptions& hang) { return hang.options.empty(); });
  return all;
}

Ending endingOf(const options::ShowOptions& all) {
  const bool allStand = std::all_of(all.hangs.begin(), all.hangs.end(), [](const options::HangOptions& hang) {
    return std::any_of(hang.options.begin(), hang.options.end(), stands);
  });
  return allStand ? Ending::done : Ending::failing;
}

Ending run(const Given& given, Context& context) {
  const options::Order order = readOrder(given.option("--order").value_or("cover"));
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  std::optional<QString> hang;
  if (const auto name = given.option("--hang")) {
    hang = findHang(show, QString::fromStdString(*name)).name;
  }
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const auto explained = given.option("--explain");
  options::ShowOptions all = explained ? optionsBeginning(snapshot, QString::fromStdString(*explained), hang)
                                       : options::decide(snapshot, hang);
  for (options::HangOptions& each : all.hangs) {
    options::rank(each, order);
  }
  if (explained) {
    all = only(all, findOption(all, QString::fromStdString(*explained)).id);
  }
  if (context.json) {
    printJson(context, exchange::toJson(all));
  } else {
    context.out << all.show << " (" << all.tour << "), " << all.venue << ", "
                << show.from.toString(Qt::ISODate) << " to " << show.to.toString(Qt::ISODate) << '\n';
    for (const options::HangOptions& each : all.hangs) {
      if (given.has("--explain")) {
        printRuleSheet(each.options.front(), context.out);
      } else {
        context.out << '\n';
        printHang(each, context.out);
      }
    }
  }
  return endingOf(all);
}

} // namespace

Command optionsCommand() {
  return {"options",
          "every stack that could hang at a show, each with its verdict, loads, trim and mark",
          {showOption,
           {"--hang", "NAME", "one hang of it only"},
           tourOption,
           {"--explain", "ID", "the whole rule sheet of one option, by the beginning of its identifier"},
           {"--order", "WORD",
            "inside a verdict: cover (first what covers most), lightest or gear (least of it)"}},
          {},
          "hangbook options --show \"Pollan Cross\" --hang left",
          run};
}

} // namespace hangbook::terminal
