// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QDateTime>

#include "catalogue/source.h"
#include "quantity/quantity.h"

namespace hangbook::fleet {

/// A loom's type is a type of hardware of the kind loom: the same list, but other rules for examination.
enum class UnitKind { cabinet, bar, hoist, chain, cart, hardware, loom };
enum class UnitState { ready, away, quarantined, inRepair, writtenOff };

/// One serial-numbered thing, or a counted batch of things that nobody serialises.
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
  std::optional<Mass> weighed; ///< as weighed by the crew, of one piece; overrides the maker's figure
  QDate weighedOn;             ///< null: nobody wrote down when
  QString weighedBy;
  std::optional<int> pieces; ///< of a counted batch, which moves as one; nullopt = one thing with a serial
  bool operator==(const Unit&) const = default;
};

/// How many things a unit stands for.
inline int piecesOf(const Unit& unit) {
  return unit.pieces.value_or(1);
}

/// When a kind of thing must be examined: after so many months, uses or hours, after lying idle, after what
/// happened to it. Whatever is stated counts; at least one is.
struct ExaminationRule : catalogue::Record {
  QString name; ///< unique
  UnitKind kind = UnitKind::hoist;
  QString type;                  ///< one type only; empty = the whole kind
  QString jurisdiction;          ///< law or standard that asks for it: "LOLER", "DGUV V54"; empty = own rule
  std::optional<int> months;     ///< calendar months since the last one, clamped to the month's end
  std::optional<int> uses;       ///< outings since the last one
  std::optional<double> hours;   ///< hours of use since the last one
  std::optional<int> idleMonths; ///< before it goes out again after so long without use
  bool afterExceptional = false; ///< after what may have harmed it: overload, a drop, lightning
  bool atNewSite = false;        ///< on site, each time after it is assembled there
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

/// What a movement was; `unsaid` for those recorded before it was asked.
enum class Act { unsaid, entered, out, in, transfer, ontoCart, ontoTruck, state, undone };

/// A fact: the unit went somewhere, or its state changed.
struct Movement {
  QUuid id;
  QString serial;
  QString toPlace;
  UnitState toState = UnitState::ready;
  QString toCart; ///< empty = on no cart
  std::optional<int> cartPosition;
  QString reason;
  Act act = Act::unsaid;
  QString tour; ///< out: for which show; empty = not said
  QString show;
  QUuid scan; ///< the scan that wrote it; a cart's scan writes one for each thing on it; null = no scan
  QUuid corrects;
  QString by;
  QDateTime happenedAt; ///< UTC
  QDateTime recordedAt; ///< UTC
  bool operator==(const Movement&) const = default;
};

} // namespace hangbook::fleet
