// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/stack_text.h"

namespace hangbook::desk {

QString shortTypeName(const QString& type, const catalogue::Catalogue& catalogue) {
  const catalogue::CabinetType* cabinet = catalogue::find(catalogue.cabinets, type);
  if (cabinet == nullptr || cabinet->family.isEmpty() ||
      !type.startsWith(cabinet->family + QLatin1Char(' '))) {
    return type;
  }
  return type.mid(cabinet->family.size() + 1);
}

QString stackText(const QStringList& stack, const catalogue::Catalogue& catalogue) {
  QStringList parts;
  for (qsizetype from = 0; from < stack.size();) {
    qsizetype to = from + 1;
    while (to < stack.size() && stack[to] == stack[from]) {
      ++to;
    }
    const catalogue::CabinetType* cabinet = catalogue::find(catalogue.cabinets, stack[from]);
    const QString name = shortTypeName(stack[from], catalogue);
    const bool single = to - from == 1 && cabinet != nullptr && cabinet->downfill;
    parts << (single ? name : QString::number(to - from) + QLatin1Char(' ') + name);
    from = to;
  }
  return parts.join(QStringLiteral(" · "));
}

} // namespace hangbook::desk
