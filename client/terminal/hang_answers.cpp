// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/hang_answers.h"

#include <iterator>
#include <string>

#include <QJsonArray>
#include <QJsonDocument>

#include "exchange/json_text.h"
#include "quantity/error.h"

namespace hangbook::terminal {
namespace {

struct Answer {
  QJsonObject json;
  Ending ending = Ending::done;
};

Answer refused(const std::string& text, Trouble trouble, Context& context) {
  context.err << "hangbook: " << text << '\n';
  return {{{QStringLiteral("error"), QString::fromStdString(text)}},
          trouble == Trouble::notPossible ? Ending::failing : Ending::badInput};
}

Answer answerOne(const QJsonValue& value, const std::string& entry, Context& context,
                 const std::function<QJsonObject(const QJsonValue&)>& answer) {
  try {
    return {answer(value)};
  } catch (const Error& error) {
    const std::string joint = entry.empty() ? "" : error.place().empty() ? ": " : ".";
    return refused(entry + joint + error.what(), error.trouble(), context);
  }
}

std::string entryName(qsizetype index) {
  std::string name = "[";
  name += std::to_string(index);
  name += ']';
  return name;
}

Ending worse(Ending a, Ending b) {
  return a > b ? a : b;
}

} // namespace

Ending answerHangs(Context& context, const std::function<QJsonObject(const QJsonValue&)>& answer) {
  const std::string text{std::istreambuf_iterator<char>(context.in), std::istreambuf_iterator<char>()};
  QJsonDocument document;
  Ending ending = Ending::done;
  try {
    const QJsonValue input = exchange::readJson(QByteArray::fromStdString(text));
    if (input.isArray()) {
      const QJsonArray hangs = input.toArray();
      QJsonArray answers;
      for (qsizetype i = 0; i < hangs.size(); ++i) {
        const Answer one = answerOne(hangs.at(i), entryName(i), context, answer);
        answers.append(one.json);
        ending = worse(ending, one.ending);
      }
      document.setArray(answers);
    } else {
      const Answer one = answerOne(input, "", context, answer);
      document.setObject(one.json);
      ending = one.ending;
    }
  } catch (const Error& error) {
    const Answer whole = refused(error.what(), error.trouble(), context);
    document.setObject(whole.json);
    ending = whole.ending;
  }
  context.out << document.toJson(QJsonDocument::Indented).toStdString();
  return ending;
}

} // namespace hangbook::terminal
