// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/natural.h"

#include <QChar>

namespace hangbook::desk {
namespace {

bool isDigit(QChar c) {
  return c >= QLatin1Char('0') && c <= QLatin1Char('9');
}

/// Takes the run of digits at `from` without leading zeros, and moves `from` behind it.
QStringView takeNumber(QStringView text, qsizetype& from) {
  while (from < text.size() && text[from] == QLatin1Char('0')) {
    ++from;
  }
  const qsizetype begin = from;
  while (from < text.size() && isDigit(text[from])) {
    ++from;
  }
  return text.sliced(begin, from - begin);
}

} // namespace

int compareNatural(QStringView one, QStringView other) {
  qsizetype i = 0;
  qsizetype j = 0;
  while (i < one.size() && j < other.size()) {
    if (isDigit(one[i]) && isDigit(other[j])) {
      const QStringView a = takeNumber(one, i);
      const QStringView b = takeNumber(other, j);
      if (a.size() != b.size()) {
        return a.size() < b.size() ? -1 : 1; // no length limit: never turned into an integer
      }
      if (const int order = a.compare(b); order != 0) {
        return order;
      }
      continue;
    }
    const char32_t a = one[i++].toCaseFolded().unicode();
    const char32_t b = other[j++].toCaseFolded().unicode();
    if (a != b) {
      return a < b ? -1 : 1;
    }
  }
  if (i < one.size() || j < other.size()) {
    return i < one.size() ? 1 : -1;
  }
  return one.compare(other);
}

} // namespace hangbook::desk
