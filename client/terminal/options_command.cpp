// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include <QJsonArray>
#include <QSet>

#include "actions/likings.h"
#include "exchange/options_json.h"
#include "options/easing_json.h"
#include "options/ranking.h"
#include "quantity/error.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/easing_sheet.h"
#include "terminal/facts.h"
#include "terminal/options_table.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using options::Verdict;

/// What was asked for, which is remembered; else what was asked for the last time at this machine.
options::RankBy readOrder(store::Store& store, const Given& given) {
  const auto word = given.option("--order");
  if (!word) {
    return actions::likedRanking(store);
  }
  const auto by = options::rankBy(QString::fromStdString(*word));
  if (!by) {
    throw Error(Trouble::badInput,
                "--order " + *word + ": one of cover, lightest, gear, changes, build is expected");
  }
  actions::likeRanking(store, *by);
  return *by;
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

/// What is said beside the findings of one option.
struct Beside {
  options::Easings easings;
  std::vector<options::Reserve> reserves;
};
using BesideAll = std::map<std::pair<QString, QString>, Beside>; ///< by hang and option

Beside besideOf(const options::Snapshot& snapshot, const options::Option& option) {
  return {options::easingsOf(snapshot, option), options::reservesOf(snapshot, option)};
}

/// For every failing option: slow, so it tells how far it is, one line for each tenth.
BesideAll besideAll(const options::Snapshot& snapshot, const options::ShowOptions& all, Context& context) {
  std::vector<const options::Option*> failing;
  for (const options::HangOptions& hang : all.hangs) {
    for (const options::Option& option : hang.options) {
      if (option.verdict == Verdict::fails) {
        failing.push_back(&option);
      }
    }
  }
  BesideAll found;
  std::size_t told = 0;
  for (std::size_t i = 0; i < failing.size(); ++i) {
    if (const std::size_t tenth = 10 * i / failing.size(); tenth > told) {
      told = tenth;
      context.err << "what would do: " << i << " of " << failing.size() << " failing options\n" << std::flush;
    }
    found[{failing[i]->key.hang, failing[i]->id}] = {options::easingsOf(snapshot, *failing[i]), {}};
  }
  return found;
}

/// Adds `would_do` and `reserve` to the options that have them, and to each what beats it.
QJsonObject withBeside(QJsonObject show, const options::ShowOptions& all, const BesideAll& beside,
                       bool whole) {
  QJsonArray hangs = show[QStringLiteral("hangs")].toArray();
  std::size_t number = 0;
  for (auto&& hangValue : hangs) {
    QJsonObject hang = hangValue.toObject();
    QJsonArray list = hang[QStringLiteral("options")].toArray();
    const QStringList beaten = whole ? options::beatenBy(all.hangs[number]) : QStringList();
    ++number;
    qsizetype place = 0;
    for (auto&& value : list) {
      QJsonObject option = value.toObject();
      if (whole) {
        const QString& by = beaten[place++];
        option[QStringLiteral("beaten_by")] = by.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(by);
        value = option;
      }
      const auto found =
          beside.find({hang[QStringLiteral("hang")].toString(), option[QStringLiteral("id")].toString()});
      if (found != beside.end()) {
        option[QStringLiteral("would_do")] = options::toJson(found->second.easings);
        option[QStringLiteral("reserve")] = options::toJson(found->second.reserves);
        value = option;
      }
    }
    hang[QStringLiteral("options")] = list;
    hangValue = hang;
  }
  show[QStringLiteral("hangs")] = hangs;
  return show;
}

void printFailing(const options::HangOptions& hang, const BesideAll& beside, std::ostream& out) {
  out << "What would do for hang " << hang.hang << ", one line for each failing option:\n";
  for (const options::Option& option : hang.options) {
    if (const auto found = beside.find({hang.hang, option.id}); found != beside.end()) {
      printEasingLine(option.id.left(8), found->second.easings, out);
    }
  }
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const options::RankBy order = readOrder(*store, given);
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
    const auto before = order == options::RankBy::changes
                            ? actions::chosenYesterday(*store, show.tour, show.name, each.hang)
                            : std::nullopt;
    options::rank(each, {order, before ? std::optional(before->key) : std::nullopt});
  }
  if (explained) {
    all = only(all, findOption(all, QString::fromStdString(*explained)).id);
  }
  BesideAll beside;
  if (explained) {
    const options::Option& option = all.hangs.front().options.front();
    beside[{option.key.hang, option.id}] = besideOf(snapshot, option);
  } else if (given.has("--easing")) {
    beside = besideAll(snapshot, all, context);
  }
  if (context.json) {
    printJson(context, withBeside(exchange::toJson(all), all, beside, !explained));
  } else {
    context.out << all.show << " (" << all.tour << "), " << all.venue << ", "
                << show.from.toString(Qt::ISODate) << " to " << show.to.toString(Qt::ISODate) << '\n';
    for (const options::HangOptions& each : all.hangs) {
      if (given.has("--explain")) {
        printRuleSheet(each.options.front(), context.out);
        printEasings(beside.begin()->second.easings, context.out);
        printReserves(beside.begin()->second.reserves, context.out);
      } else {
        context.out << '\n';
        printHang(each, context.out);
        if (given.has("--easing")) {
          printFailing(each, beside, context.out);
        }
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
           {"--easing", "", "also what would do for each failing option, one line each (takes minutes)"},
           {"--order", "WORD",
            "inside a verdict: cover (what covers most first), lightest, gear (least of it), changes (fewest "
            "since the show before) or build (fewest steps); remembered at this machine"}},
          {},
          "hangbook options --show \"Pollan Cross\" --hang left",
          run};
}

} // namespace hangbook::terminal
