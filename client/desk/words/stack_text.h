// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "catalogue/catalogue.h"

namespace hangbook::desk {

/// A stack as crew say it, from the bar down: “3 bass · 1 upper · downfill”. Like cabinets that follow each
/// other are counted; the family's name, the same for all, is left out.
QString stackText(const QStringList& stack, const catalogue::Catalogue& catalogue);

/// "Marram bass" of the family "Marram" is "bass".
QString shortTypeName(const QString& type, const catalogue::Catalogue& catalogue);

} // namespace hangbook::desk
