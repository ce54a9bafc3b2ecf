// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "calendar/hung.h"
#include "options/snapshot.h"

/// The units of a chosen hang by serial, with what each weighs. Nothing is judged by them: an option is of
/// types, and its loads count the heaviest unit of a type that may come to hang.
namespace hangbook::options {

struct HungPlace {
  int element{};                  ///< 0: the bar, cabinets from 1
  QString type;                   ///< as chosen; empty: the hang as chosen has no such place
  QString serial;                 ///< empty: not recorded by serial
  std::optional<double> massKg{}; ///< as weighed, else the maker's; none: not known, or not recorded
  QString basis{};                ///< "weighed 2027-03-02 by Orla Tench", "maker's figure", …
  bool weighed{};                 ///< by the crew, and when and by whom: null and empty are not written down
  QDate weighedOn{};
  QString weighedBy{};
  QString trouble{}; ///< why the record does not stand; empty: it does
};

struct HungHang {
  std::vector<HungPlace> places{};   ///< from the bar down
  int recorded{};                    ///< how many of the places that the hang as chosen has
  std::optional<double> massKg{};    ///< of bar and cabinets, where all are recorded and known
  std::optional<double> countedKg{}; ///< the same as the loads count them, by type
};

/// "bar", "3"
QString placeOf(const HungPlace& place);

/// `elsewhere`: by serial, why a record does not stand for another show's sake (actions::hungElsewhere).
HungHang hungOf(const Snapshot& snapshot, const OptionKey& key, const calendar::HungSerials& serials,
                const std::map<QString, QString>& elsewhere = {});

} // namespace hangbook::options
