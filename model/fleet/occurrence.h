// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QDateTime>
#include <QString>
#include <QUuid>

namespace hangbook::fleet {

enum class OccurrenceKind {
  use,         ///< it was used: hours, or a number of uses
  exceptional, ///< what may have harmed it: overload, a drop, lightning
  assembly,    ///< it was assembled at a site
  fault        ///< somebody found something wrong
};

/// A fact: something happened to a unit. A later fact may name the one that it corrects.
struct Occurrence {
  QUuid id;
  QString serial;
  OccurrenceKind kind = OccurrenceKind::use;
  QDate date;
  std::optional<int> uses;
  std::optional<double> hours;
  QString place;
  QString remark;
  QUuid corrects;
  QString by;
  QDateTime recordedAt; ///< UTC
  bool operator==(const Occurrence&) const = default;
};

enum class DocumentKind { certificate, photograph, other };

/// A fact: a file that belongs to a unit. Its bytes are kept once under their SHA-256.
struct UnitDocument {
  QUuid id;
  QString serial;
  QUuid examination; ///< the examination that it certifies; null = none
  QString sha256;    ///< hex
  QString fileName;
  DocumentKind kind = DocumentKind::other;
  QString by;
  QDateTime recordedAt; ///< UTC
  bool operator==(const UnitDocument&) const = default;
};

} // namespace hangbook::fleet
