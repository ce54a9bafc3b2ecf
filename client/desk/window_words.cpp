// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include <QStringList>

#include "desk/run.h"
#include "desk/words/language.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

constexpr std::array plainOptions{"--demo", "--dark", "--us"};
constexpr std::array textOptions{"--store", "--picture", "--place", "--show",
                                 "--hang",  "--size",    "--as-of", "--language"};

template <class List>
bool contains(const List& list, const std::string& word) {
  for (const char* each : list) {
    if (word == each) {
      return true;
    }
  }
  return false;
}

QSize readSize(const QString& text) {
  const QStringList parts = text.split(QLatin1Char('x'));
  const QSize size(parts.value(0).toInt(), parts.value(1).toInt());
  if (parts.size() != 2 || size.width() < 320 || size.height() < 240 || size.width() > 8000 ||
      size.height() > 8000) {
    throw Error(Trouble::badInput, "a size such as 1440x900 is expected, from 320x240 to 8000x8000",
                "--size");
  }
  return size;
}

void take(WindowWords& words, const std::string& word, const QString& text) {
  if (word == "--store") {
    words.store = text;
  } else if (word == "--picture") {
    words.picture = text;
  } else if (word == "--place") {
    words.place = text;
  } else if (word == "--show") {
    words.show = text;
  } else if (word == "--hang") {
    words.hang = text;
  } else if (word == "--as-of") {
    words.asOf = QDate::fromString(text, Qt::ISODate);
    if (!words.asOf.isValid()) {
      throw Error(Trouble::badInput, "a date such as 2027-04-02 is expected", word);
    }
  } else if (word == "--language") {
    if (!languages().contains(text)) {
      throw Error(Trouble::badInput,
                  "one of the window's languages is expected: " +
                      languages().join(QStringLiteral(", ")).toStdString(),
                  word);
    }
    words.language = text;
  } else {
    words.size = readSize(text);
    words.sized = true;
  }
}

} // namespace

bool wantsWindow(const std::vector<std::string>& words) {
  return words.empty() || contains(plainOptions, words.front()) || contains(textOptions, words.front());
}

WindowWords readWindowWords(const std::vector<std::string>& words) {
  WindowWords read;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string& word = words[i];
    if (contains(plainOptions, word)) {
      read.demo = read.demo || word == "--demo";
      read.dark = read.dark || word == "--dark";
      read.us = read.us || word == "--us";
      continue;
    }
    if (!contains(textOptions, word)) {
      throw Error(Trouble::badInput,
                  "the window takes --store, --demo, --dark, --us, --place, --show, --hang, --picture, "
                  "--size, --as-of and --language; "
                  "`hangbook help` lists the words of the terminal",
                  word);
    }
    if (i + 1 == words.size()) {
      throw Error(Trouble::badInput, "something must follow", word);
    }
    take(read, word, QString::fromStdString(words[++i]));
  }
  return read;
}

} // namespace hangbook::desk
