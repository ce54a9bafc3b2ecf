// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/words.h"

#include <algorithm>

#include "quantity/error.h"
#include "terminal/commands.h"

namespace hangbook::terminal {
namespace {

[[noreturn]] void refuse(const std::string& text) {
  throw Error(Trouble::badInput, text);
}

const Option* optionNamed(const std::vector<Option>& options, const std::string& word) {
  const auto found =
      std::find_if(options.begin(), options.end(), [&](const Option& option) { return option.word == word; });
  return found == options.end() ? nullptr : &*found;
}

std::string joined(const std::vector<std::string>& parts) {
  std::string all;
  for (const std::string& part : parts) {
    all += (all.empty() ? "" : ", ") + part;
  }
  return all;
}

std::string optionWords(const Command& command) {
  std::vector<std::string> words;
  for (const std::vector<Option>* options : {&command.options, &sharedOptions()}) {
    for (const Option& option : *options) {
      words.push_back(option.word);
    }
  }
  return joined(words);
}

void share(const std::string& word, const std::string& text, Context& context) {
  if (word == "--json") {
    context.json = true;
  } else if (word == "--store") {
    context.store = text;
  } else if (word == "--by") {
    context.by = text;
  } else if (word == "--units") {
    if (text != "metric" && text != "us") {
      refuse("--units " + text + ": metric or us is expected");
    }
    context.units = text == "us" ? UnitSystem::usCustomary : UnitSystem::metric;
  } else {
    const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
    if (!day.isValid()) {
      refuse("--as-of " + text + ": a date is expected, such as 2027-04-02");
    }
    context.asOf = day;
  }
}

void refuseWhatIsMissing(const Command& command, const Given& given) {
  for (const Option& option : command.options) {
    if (option.needed && !given.has(option.word)) {
      refuse(command.word + " needs " + option.word + " " + option.argument + " (" + option.meaning + ")");
    }
  }
  for (const Operand& operand : command.operands) {
    if (operand.needed && !given.operands.contains(operand.name)) {
      refuse(command.word + " needs " + operand.name + " (" + operand.meaning + ")");
    }
  }
}

} // namespace

std::optional<std::string> Given::option(const std::string& word) const {
  const auto found = options.find(word);
  return found == options.end() ? std::nullopt : std::optional(found->second);
}

std::vector<std::string> Given::all(const std::string& word) const {
  const auto found = repeated.find(word);
  return found == repeated.end() ? std::vector<std::string>() : found->second;
}

std::optional<std::string> Given::operand(const std::string& name) const {
  const auto found = operands.find(name);
  return found == operands.end() ? std::nullopt : std::optional(found->second);
}

const std::vector<Option>& sharedOptions() {
  static const std::vector<Option> options{
      {"--store", "PLACE", "where the data lie: a file, or a postgresql:// address"},
      {"--json", "", "answer in JSON"},
      {"--by", "NAME", "who does it or signs it"},
      {"--as-of", "DATE", "the day that counts as today, such as 2027-04-02"},
      {"--units", "SYSTEM",
       "metric, or us: the same in US customary units in brackets beside it; never in JSON"},
  };
  return options;
}

const Command& commandFor(const std::vector<std::string>& words, std::size_t& used) {
  for (const std::size_t count : {std::size_t{2}, std::size_t{1}}) {
    if (words.size() < count) {
      continue;
    }
    const std::string wanted = count == 2 ? words[0] + " " + words[1] : words[0];
    for (const Command& command : commands()) {
      if (command.word == wanted) {
        used = count;
        return command;
      }
    }
  }
  std::vector<std::string> known;
  for (const Command& command : commands()) {
    known.push_back(command.word);
  }
  refuse("\"" + (words.empty() ? std::string() : words[0]) + "\" is not a word of hangbook; it knows " +
         joined(known));
}

Given read(const Command& command, const std::vector<std::string>& words, Context& context) {
  Given given;
  std::vector<std::string> shared;
  bool optionsEnded = false;
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::string& word = words[at];
    if (optionsEnded || word.size() < 2 || word[0] != '-') {
      if (given.operands.size() == command.operands.size()) {
        refuse("\"" + word + "\" is one word too many for " + command.word);
      }
      given.operands[command.operands[given.operands.size()].name] = word;
      continue;
    }
    if (word == "--") {
      optionsEnded = true;
      continue;
    }
    const std::size_t equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const Option* own = optionNamed(command.options, name);
    const Option* option = own != nullptr ? own : optionNamed(sharedOptions(), name);
    if (option == nullptr) {
      refuse("\"" + name + "\" is not an option of " + command.word + "; it takes " + optionWords(command));
    }
    std::string text;
    if (option->argument.empty()) {
      if (equals != std::string::npos) {
        refuse(name + " takes nothing behind it");
      }
    } else if (equals != std::string::npos) {
      text = word.substr(equals + 1);
    } else if (at + 1 < words.size()) {
      text = words[++at];
    } else {
      refuse(name + " needs " + option->argument + " behind it (" + option->meaning + ")");
    }
    const bool again = own != nullptr && own->repeats && given.has(name);
    if (!again && (given.has(name) || std::find(shared.begin(), shared.end(), name) != shared.end())) {
      refuse(name + " stands here for the second time");
    }
    if (own != nullptr) {
      given.repeated[name].push_back(text);
      given.options[name] = again ? given.options[name] + "; " + text : text;
    } else {
      shared.push_back(name);
      share(name, text, context);
    }
  }
  refuseWhatIsMissing(command, given);
  return given;
}

} // namespace hangbook::terminal
