// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "actions/fleet_work.h"
#include "fleet/unit.h"
#include "terminal/command.h"

/// What the words about the fleet share.
namespace hangbook::terminal {

QString textOf(const Given& given,
               const std::string& option); ///< without spaces around it; empty where left out

/// The unit of that serial. Throws Error(badInput).
fleet::Unit findUnit(store::Store& store, const QString& serial);

/// --date, else today. Throws Error(badInput) for a day to come.
QDate pastDay(const Given& given, Context& context);

/// The file that --file names, as one that goes with a fact. Empty where none is named. Throws
/// Error(badInput).
std::vector<actions::File> filesFrom(const Given& given, fleet::DocumentKind kind);

QString wordOf(fleet::UnitState state);
QString wordOf(fleet::ExaminationResult result);
QString wordOf(fleet::Act act);
QString wordOf(fleet::OccurrenceKind kind);

/// The shows that counted on a unit: a list for machines, sentences for people.
QJsonArray showsInJson(const std::vector<actions::CountedOn>& shows);
void printShows(const std::vector<actions::CountedOn>& shows, std::ostream& out);

} // namespace hangbook::terminal
