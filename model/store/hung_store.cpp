// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/hung_store.h"

#include "store/records.h"

namespace hangbook::store {
namespace {

using calendar::Hung;

constexpr auto hungColumns = [](auto& io, auto& hung) {
  recordColumns(io, hung);
  io("tour", hung.tour);
  io("show", hung.show);
  io("hang", hung.hang);
  io("element", hung.element);
  io.reference("serial", hung.serial);
};

} // namespace

std::vector<Hung> loadHung(Store& store, const QString& tour, const QString& show) {
  const QString order = QStringLiteral(" ORDER BY tour, show, hang, element");
  return show.isEmpty() ? readRecords<Hung>(store, "hang_unit", hungColumns, order)
                        : readRecords<Hung>(store, "hang_unit", hungColumns,
                                            QStringLiteral("WHERE tour = :tour AND show = :show") + order,
                                            {{"tour", tour}, {"show", show}});
}

Hung save(Store& store, const Hung& hung) {
  const RecordName name{"hang_unit", QStringLiteral("place %1 of hang \"%2\" of %3")
                                         .arg(QString::number(hung.element), hung.hang, hung.show)};
  return store.transact([&] {
    Hung written = hung;
    inTermsOf(name, [&] { writeByColumns(store, name, written, hungColumns); });
    return written;
  });
}

} // namespace hangbook::store
