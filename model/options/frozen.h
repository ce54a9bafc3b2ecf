// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QString>
#include <QUuid>

#include "options/option.h"

namespace hangbook::options {

/// A chosen option, frozen: canonical JSON of all that it was computed from and of its results, named by its
/// SHA-256. It is never migrated; what follows it up is a new choice with a higher revision.
struct Choice {
  QUuid id;
  int revision{};
  QString tour;
  QString show;
  QString hang;
  QString option; ///< its id
  OptionKey key;
  Verdict verdict = Verdict::unproven;
  QString reason; ///< why, where a rule is unproven
  QString by;
  QDateTime at;   ///< UTC
  QDate awayFrom; ///< of its show, so that stock can be counted without loading the show
  QDate awayTo;
  std::vector<PointResult> points; ///< loads as frozen
  Setting setting;
  QByteArray frozen; ///< canonical JSON, UTF-8
  QString sha256;    ///< of `frozen`, hex
  QString program;   ///< version that froze it
  /// Revision of the signed setting that this one moved the hang from, in the air; 0: built as chosen.
  int movedFrom{};
  QDateTime builtAt; ///< UTC: when what the hang was built to was chosen; `at` unless it was moved since
};

} // namespace hangbook::options
