// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QStringList>

/// The built program as people run it: words, streams, exit status.
namespace hangbook::testing {

struct Said {
  int status = -1; ///< -1: it did not end by itself
  QByteArray out;
  QByteArray err;

  QJsonObject json() const;
  bool oneLineOfTrouble() const { return err.count('\n') == 1; }
};

/// The program that is tried: as built, or as HANGBOOK_TRIED_PROGRAM names it.
QString programPath();

Said program(const QStringList& words, const QByteArray& input = {});

} // namespace hangbook::testing
