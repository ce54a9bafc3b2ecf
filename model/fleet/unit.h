// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QDateTime>

#include "catalogue/source.h"
#include "quantity/quantity.h"

namespace hangbook::fleet {

enum class UnitKind { cabinet, bar, hoist, chain, cart, hardware };
enum class UnitState { ready, away, quarantined, inRepair, writtenOff };

/// One serial-numbered thing.
struct Unit : catalogue::Record {
  QString serial; ///< unique
  UnitKind kind = UnitKind::cabinet;
  QString type;     ///< name of its type
  QString owner;    ///< empty = our own
  QDate hiredUntil; ///< last day that a hired unit may be kept; null = no end
  QString place;    ///< where it is now: "warehouse bay 3", "truck 1", a venue
  UnitState state = UnitState::ready;
  QString cart; ///< serial of the cart it rides on; empty = none
  std::optional<int> cartPosition;
  std::optional<Mass> weighed; ///< as weighed by the crew; overrides the maker's figure
  bool operator==(const Unit&) const = default;
};

/// How often a kind of thing must be examined.
struct ExaminationRule : catalogue::Record {
  QString name; ///< unique
  UnitKind kind = UnitKind::hoist;
  QString type; ///< one type only; empty = the whole kind
  int months = 0;
  bool operator==(const ExaminationRule&) const = default;
};

enum class ExaminationResult { pass, passWithRemark, fail };

/// A fact: appended, never changed. A later fact may name the one that it corrects.
struct Examination {
  QUuid id;
  QString serial;
  QString rule; ///< name of the rule that it satisfies
  QDate date;
  ExaminationResult result = ExaminationResult::pass;
  QString examiner;
  QString certificate;
  QString remark;
  QUuid corrects;
  QString by;           ///< who recorded it
  QDateTime recordedAt; ///< UTC
  bool operator==(const Examination&) const = default;
};

/// A fact: the unit went somewhere, or its state changed.
struct Movement {
  QUuid id;
  QString serial;
  QString toPlace;
  UnitState toState = UnitState::ready;
  QString toCart; ///< empty = on no cart
  std::optional<int> cartPosition;
  QString reason;
  QUuid corrects;
  QString by;
  QDateTime happenedAt; ///< UTC
  QDateTime recordedAt; ///< UTC
  bool operator==(const Movement&) const = default;
};

} // namespace hangbook::fleet
