// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/answered.h"

#include <cmath>
#include <stdexcept>
#include <string>

#include <QJsonArray>
#include <QJsonDocument>

#include "exchange/hang_json.h"
#include "exchange/json_text.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "quantity/error.h"

namespace hangbook::testing {
namespace {

void mustBeFinite(const QJsonValue& value, const std::string& place) {
  if (value.isObject()) {
    const QJsonObject object = value.toObject();
    for (auto at = object.begin(); at != object.end(); ++at) {
      mustBeFinite(at.value(), place + "." + at.key().toStdString());
    }
  } else if (value.isArray()) {
    for (const QJsonValue each : value.toArray()) {
      mustBeFinite(each, place + "[]");
    }
  } else if (value.isDouble() && !std::isfinite(value.toDouble())) {
    throw std::logic_error(place + " is not finite, and no error says so");
  }
}

void mustSaySomething(const Error& error) {
  if (std::string(error.what()).empty()) {
    throw std::logic_error("an error without a word");
  }
}

/// True where `figures` gives an answer, false where it refuses.
template <class Figures>
bool answers(Figures figures) {
  try {
    mustBeFinite(figures(), "answer");
    return true;
  } catch (const Error& error) {
    mustSaySomething(error);
    return false;
  }
}

} // namespace

Answered answer(const hang::Hang& hang) {
  Answered answered;
  answered.read = true;
  answered.solved = answers([&] { return QJsonValue(exchange::toJson(hang::solve(hang))); });
  answered.settled = answers([&] { return QJsonValue(exchange::toJson(hang::settle(hang))); });
  return answered;
}

Answered answer(const QByteArray& bytes) {
  hang::Hang hang;
  try {
    hang = exchange::hangFromJson(exchange::readJson(bytes));
  } catch (const Error& error) {
    mustSaySomething(error);
    return {};
  }
  const QJsonObject written = exchange::toJson(hang);
  if (exchange::toJson(exchange::hangFromJson(written)) != written) {
    throw std::logic_error("what is written does not read back");
  }
  return answer(hang);
}

} // namespace hangbook::testing
