// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/records.h"
#include "store/words.h"

/// Columns and checks that the parts of the fleet's repository share.
namespace hangbook::store {

inline constexpr auto unitColumns = [](auto& io, auto& unit) {
  recordColumns(io, unit);
  io("serial", unit.serial);
  io.word("kind", unit.kind, unitKindWords);
  io("type", unit.type);
  io("owner", unit.owner);
  io("hired_until", unit.hiredUntil);
  io("weighed_kg", unit.weighed);
  io("weighed_on", unit.weighedOn);
  io("weighed_by", unit.weighedBy);
  io("pieces", unit.pieces);
  io("at_place", unit.place);
  io.word("state", unit.state, unitStateWords);
  io.reference("cart", unit.cart);
  io("cart_position", unit.cartPosition);
};

inline constexpr auto ruleColumns = [](auto& io, auto& rule) {
  recordColumns(io, rule);
  io("name", rule.name);
  io.word("kind", rule.kind, unitKindWords);
  io("type", rule.type);
  io("jurisdiction", rule.jurisdiction);
  io("months", rule.months);
  io("uses", rule.uses);
  io("hours", rule.hours);
  io("idle_months", rule.idleMonths);
  io("after_exceptional", rule.afterExceptional);
  io("at_new_site", rule.atNewSite);
};

inline constexpr auto examinationColumns = [](auto& io, auto& fact) {
  io("id", fact.id);
  io("examined_on", fact.date);
  io.word("result", fact.result, resultWords);
  io("examiner", fact.examiner);
  io("certificate", fact.certificate);
  io("remark", fact.remark);
  io("corrects", fact.corrects);
  io("by_name", fact.by);
  io("recorded_at", fact.recordedAt);
};

inline constexpr auto movementColumns = [](auto& io, auto& fact) {
  io("id", fact.id);
  io("to_place", fact.toPlace);
  io.word("to_state", fact.toState, unitStateWords);
  io("to_cart", fact.toCart);
  io("cart_position", fact.cartPosition);
  io("reason", fact.reason);
  io.word("act", fact.act, actWords);
  io("tour", fact.tour);
  io("show", fact.show);
  io("scan_id", fact.scan);
  io("corrects", fact.corrects);
  io("by_name", fact.by);
  io("happened_at", fact.happenedAt);
  io("recorded_at", fact.recordedAt);
};

/// Throws Error (badInput) where there is no such record.
QUuid idOf(Store& store, const char* table, const char* column, const QString& name, const char* what);

bool sameWhereabouts(const fleet::Unit& a, const fleet::Unit& b);

/// Gives a fact its identifier and time of recording. Throws Error where nobody recorded it.
template <class Fact>
void complete(Fact& fact) {
  if (fact.by.isEmpty()) {
    throw Error(Trouble::badInput, "nobody is named who recorded this; say who is at the desk");
  }
  if (fact.id.isNull()) {
    fact.id = QUuid::createUuid();
  }
  if (!fact.recordedAt.isValid()) {
    fact.recordedAt = QDateTime::currentDateTimeUtc();
  }
}

/// A correction must name a fact of the same unit that nothing else corrects yet.
void checkCorrected(Store& store, const char* table, const QUuid& corrects, const QUuid& unit);

template <class Fact, class Columns>
std::vector<Fact> readFacts(Store& store, const QString& sql, const Bindings& bindings, Columns columns) {
  std::vector<Fact> facts;
  store.each(sql, bindings, [&](const Row& row) {
    Fact& fact = facts.emplace_back();
    fact.serial = row.text("serial");
    ColumnReader io(row);
    columns(io, fact);
    if constexpr (std::is_same_v<Fact, fleet::Examination>) {
      fact.rule = row.text("rule_name");
    }
  });
  return facts;
}

} // namespace hangbook::store
