// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <set>
#include <vector>

#include "calendar/cabling.h"
#include "calendar/show.h"
#include "catalogue/catalogue.h"
#include "fleet/unit.h"
#include "options/frozen.h"

/// What chosen options take out of the fleet.
namespace hangbook::options {

/// Number of each type of unit.
using Numbers = std::map<std::pair<fleet::UnitKind, QString>, int>;

/// Cabinets, bar, hoists and chain of one option.
void addKey(const OptionKey& key, const QString& chain, Numbers& into);

/// The type of chain that a frozen choice uses; empty = none.
QString chainOf(const catalogue::Catalogue& catalogue, const Choice& choice);

/// Hardware of a hang, one set for each pick.
void addHardware(const calendar::Hang& hang, int picks, Numbers& into);

/// Looms that end in cabinets of one option, each once: of one type they are told apart by their label. A
/// plug that is meant for another type of cabinet than the option has at its place takes none.
void addLooms(const OptionKey& key, const std::vector<calendar::Plug>& plugsOfHang,
              std::set<std::pair<QString, QString>>& looms);

/// The newest revision of each hang's choice; what was superseded does not count twice.
std::vector<const Choice*> newestOf(const std::vector<Choice>& choices);

/// What a show takes by its chosen options, over its days away. Hangs without a choice take nothing yet:
/// `open` names them.
struct Demand {
  QString tour;
  QString show;
  QDate from; ///< days away; null: not stated
  QDate to;
  Numbers numbers;
  QStringList open;
};
/// `plugs`: what is stated of cabling; those of other shows count for nothing. Where none is stated for the
/// show no loom is taken, since nobody said which.
Demand demandOf(const catalogue::Catalogue& catalogue, const calendar::Show& show,
                const std::vector<Choice>& choices, const std::vector<calendar::Plug>& plugs);

} // namespace hangbook::options
