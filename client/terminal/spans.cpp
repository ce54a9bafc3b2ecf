// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/spans.h"

#include <charconv>

#include "quantity/error.h"

namespace hangbook::terminal {

QDate endOfSpan(const std::string& option, const std::string& text, QDate from) {
  // A century is as far as anybody plans; more is a slip of the finger.
  constexpr int mostDays = 36525;
  int count = 0;
  const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), count);
  const std::string unit(end, static_cast<std::size_t>(text.data() + text.size() - end));
  if (trouble == std::errc() && count >= 0 && text[0] != '-' && count <= mostDays) {
    QDate last;
    if (unit == "d") {
      last = from.addDays(count);
    } else if (unit == "w") {
      last = from.addDays(7 * qint64{count});
    } else if (unit == "m") {
      last = from.addMonths(count);
    }
    if (last.isValid() && from.daysTo(last) <= mostDays) {
      return last;
    }
  }
  throw Error(Trouble::badInput, option + " " + text +
                                     ": days, weeks or months are expected, such as 90d, 12w or 6m, and no "
                                     "more than a hundred years");
}

QDate readDay(const std::string& option, const std::string& text) {
  const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
  if (!day.isValid() || day.toString(Qt::ISODate).toStdString() != text) {
    throw Error(Trouble::badInput, option + " " + text + ": a date is expected, such as 2027-04-02");
  }
  return day;
}

} // namespace hangbook::terminal
