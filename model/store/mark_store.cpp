// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/mark_store.h"

#include "store/people_store.h"
#include "store/records.h"

namespace hangbook::store {

namespace {

using marks::MarkUsed;

constexpr auto markColumns = [](auto& io, auto& mark) {
  io("id", mark.id);
  io.list("stack", mark.stack);
  io("bar", mark.bar);
  io("chain", mark.chain);
  io("chain_serial", mark.chainSerial);
  io("tilt_deg", mark.tilt);
  io.list("holes_deg", mark.holes);
  io("mark", mark.mark);
  io("measured_deg", mark.measured);
  io("tour", mark.tour);
  io("show", mark.show);
  io("hang", mark.hang);
  io("at_place", mark.place);
  io("weather", mark.weather);
  io("used_on", mark.date);
  io("corrects", mark.corrects);
  io("by_name", mark.by);
  io("recorded_at", mark.recordedAt);
};

std::vector<MarkUsed> readMarks(Store& store, const QString& where, const Bindings& bindings) {
  std::vector<MarkUsed> marks;
  for (const Row& row : store.rows(QStringLiteral("SELECT * FROM mark_used ") + where +
                                       QStringLiteral(" ORDER BY used_on DESC, recorded_at DESC, id"),
                                   bindings)) {
    ColumnReader io(row);
    markColumns(io, marks.emplace_back());
  }
  return marks;
}

const QString standing =
    QStringLiteral("NOT EXISTS (SELECT 1 FROM mark_used c WHERE c.corrects = mark_used.id)");

} // namespace

std::vector<MarkUsed> loadMarks(Store& store) {
  return readMarks(store, {}, {});
}

std::vector<MarkUsed> recallMarks(Store& store, const QStringList& stack, const QString& bar,
                                  const QString& chain) {
  std::vector<MarkUsed> found =
      readMarks(store, QStringLiteral("WHERE bar = :bar AND chain = :chain AND ") + standing,
                {{"bar", bar}, {"chain", chain}});
  std::erase_if(found, [&](const MarkUsed& mark) { return mark.stack != stack; });
  return found;
}

std::vector<MarkUsed> recallMarksOf(Store& store, const QString& chain, const QString& serial) {
  return readMarks(store, QStringLiteral("WHERE chain = :chain AND chain_serial = :serial AND ") + standing,
                   {{"chain", chain}, {"serial", serial}});
}

std::vector<MarkUsed> loadMarksOf(Store& store, const QString& tour, const QString& show) {
  return readMarks(store, QStringLiteral("WHERE tour = :tour AND show = :show AND ") + standing,
                   {{"tour", tour}, {"show", show}});
}

MarkUsed append(Store& store, const MarkUsed& mark) {
  if (mark.by.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "nobody is named who used this mark; say who is at the desk");
  }
  return store.transact([&] {
    MarkUsed saved = mark;
    if (saved.id.isNull()) {
      saved.id = QUuid::createUuid();
    }
    if (!saved.recordedAt.isValid()) {
      saved.recordedAt = QDateTime::currentDateTimeUtc();
    }
    inTermsOf({"mark_used", QStringLiteral("mark %1").arg(saved.mark)}, [&] {
      ColumnWriter io;
      markColumns(io, std::as_const(saved));
      io("device", thisDevice());
      insertRow(store, "mark_used", io.bindings);
    });
    return saved;
  });
}

} // namespace hangbook::store
