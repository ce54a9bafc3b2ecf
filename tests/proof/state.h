// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <random>
#include <vector>

#include "columns.h"
#include "options/search.h"

/// The demo tour as data that a test may change cell by cell, and what the rules then say of some of its
/// hangs.
namespace hangbook::testing {

/// The demo's show with what it needs, without the other shows; what was typed in other units is forgotten,
/// so that every cell is a bare number.
exchange::Data demoShow(const QString& show);

/// The same with something under the headings that the demo leaves empty, and what it states put the other
/// way.
exchange::Data filled(exchange::Data data);

/// The snapshot of the one show that is in `data`.
options::Snapshot snapshotOf(const exchange::Data& data);

/// All lines of that sort as a file would hold them.
std::vector<Row> rowsOf(exchange::Kind kind, const QString& record, const exchange::Data& data);

/// The data with this one line read in again; nullopt where the importer refuses it.
std::optional<exchange::Data> with(const exchange::Data& data, exchange::Kind kind, const QString& record,
                                   const Row& row);

/// An option and a setting at which it is judged whatever the figures are.
struct Subject {
  options::OptionKey key;
  options::Setting setting;
};

/// Of each way of picking up and of each table an option with as many cabinets as can be, with a chain where
/// there is one.
std::vector<Subject> subjectsOf(const exchange::Data& data, const QString& hang);

/// The same subjects at settings somewhat beside their own.
std::vector<Subject> beside(std::vector<Subject> subjects, std::mt19937& chance);

/// Every rule's verdict on each of the subjects, and the whole one under "option"; none where an option can
/// no longer be named or its setting is refused.
using Verdicts = std::vector<std::map<QString, options::Verdict>>;
Verdicts verdictsOn(const options::Snapshot& snapshot, const std::vector<Subject>& subjects);
Verdicts verdictsOn(const exchange::Data& data, const std::vector<Subject>& subjects);

/// Some figures worse, some better, some not known: by chance.
exchange::Data shaken(const exchange::Data& data, std::mt19937& chance, int changes);

/// How many random states a test looks at; HANGBOOK_PROOF_STATES says more for a long run.
int states(int usual);

} // namespace hangbook::testing
