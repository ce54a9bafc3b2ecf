// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QJsonArray>
#include <QTemporaryDir>

#include "client/terminal/ran.h"

/// The demo tour in a store, and what its answers hold.
namespace hangbook::testing {

/// The demo, filled once; each test works on a copy of its own.
const QString& filledDemo();

struct Demo {
  QTemporaryDir folder;
  std::string place = folder.filePath(QStringLiteral("tour.sqlite")).toStdString();

  Demo();
  Ran run(std::vector<std::string> words, const std::string& input = {}) const;
};

QString textOf(const QJsonObject& object, const char* key);
QJsonArray listOf(const QJsonObject& object, const char* key);

/// The first option of a hang with this verdict.
std::string optionOf(const Demo& demo, const std::string& show, const std::string& hang, const char* verdict);

} // namespace hangbook::testing
