// SPDX-License-Identifier: GPL-3.0-or-later
#include "kept/option_lines.h"

#include <QJsonArray>
#include <QJsonObject>

#include "options/option_json.h"

namespace hangbook::testing {

void add(Line& line, const QJsonValue& value) {
  if (value.isObject()) {
    const QJsonObject object = value.toObject();
    for (auto at = object.begin(); at != object.end(); ++at) {
      line.word(at.key().toStdString());
      add(line, at.value());
    }
  } else if (value.isArray()) {
    for (const QJsonValue each : value.toArray()) {
      add(line, each);
    }
    line.word("end");
  } else if (value.isDouble()) {
    line.number(value.toDouble());
  } else if (value.isString()) {
    line.word(value.toString().toStdString());
  } else {
    line.word(value.isBool() ? (value.toBool() ? "yes" : "no") : "null");
  }
}

std::string letters(const options::Option& option) {
  std::string all;
  for (const options::Finding& each : option.findings) {
    all += each.applies ? wordFor(each.verdict).front().toLatin1() : '.';
  }
  return all;
}

void addOption(std::vector<Line>& lines, const std::string& name, const options::Option& option) {
  QJsonObject object = toJson(option);
  Line findings(name + " rules");
  findings.plain(letters(option));
  add(findings, object.take(QStringLiteral("findings")));
  lines.push_back(findings);
  Line rest(name + " rest");
  add(rest, object);
  lines.push_back(rest);
}

} // namespace hangbook::testing
