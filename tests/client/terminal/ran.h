// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <sstream>
#include <string>
#include <vector>

#include <QByteArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QString>

#include "terminal/run.h"

/// One run of the terminal in this process: words in, streams and ending out.
namespace hangbook::testing {

struct Ran {
  terminal::Ending ending;
  std::string out;
  std::string err;

  bool said(const std::string& part) const { return out.find(part) != std::string::npos; }
  bool warned(const std::string& part) const { return err.find(part) != std::string::npos; }
  bool oneLineOfTrouble() const { return std::count(err.begin(), err.end(), '\n') == 1; }
  QJsonObject json() const { return QJsonDocument::fromJson(QByteArray::fromStdString(out)).object(); }
};

inline Ran ranWith(const std::vector<std::string>& words, const std::string& input = {}) {
  std::istringstream in(input);
  std::ostringstream out;
  std::ostringstream err;
  const terminal::Ending ending = terminal::run(words, in, out, err);
  return {ending, out.str(), err.str()};
}

} // namespace hangbook::testing
