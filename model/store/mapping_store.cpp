// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/mapping_store.h"

#include "store/columns.h"

namespace hangbook::store {

std::optional<KeptMapping> loadMapping(Store& store, const QString& kind, const QString& headings) {
  const auto row =
      store.one(QStringLiteral("SELECT * FROM import_mapping WHERE kind = :kind AND headings = :headings"),
                {{"kind", kind}, {"headings", headings}});
  if (!row) {
    return std::nullopt;
  }
  return KeptMapping{kind,
                     headings,
                     row->text("mapping").toUtf8(),
                     row->text("date_format"),
                     row->text("by_name"),
                     row->instant("recorded_at")};
}

void keepMapping(Store& store, const KeptMapping& kept) {
  store.run(QStringLiteral(
                "INSERT INTO import_mapping (kind, headings, mapping, date_format, by_name, recorded_at) "
                "VALUES (:kind, :headings, :mapping, :date_format, :by, :at) "
                "ON CONFLICT (kind, headings) DO UPDATE SET mapping = excluded.mapping, "
                "date_format = excluded.date_format, by_name = excluded.by_name, "
                "recorded_at = excluded.recorded_at"),
            {{"kind", kept.kind},
             {"headings", kept.headings},
             {"mapping", QString::fromUtf8(kept.mapping)},
             {"date_format", kept.dateFormat},
             {"by", kept.by},
             {"at", kept.at.toUTC()}});
}

} // namespace hangbook::store
