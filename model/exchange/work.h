// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <vector>

#include <QHash>

#include "exchange/data.h"
#include "exchange/fault.h"
#include "quantity/text.h"

namespace hangbook::exchange {

using Typed = std::map<QString, QString>;

/// Who imports and when: for facts that do not say it themselves.
struct Importer {
  QString by;
  QDateTime now; ///< UTC
};

/// How many lines of one sort did what.
struct Count {
  QString sort; ///< the word in the record column
  int added = 0;
  int changed = 0;
  int same = 0;
  bool operator==(const Count&) const = default;
};

/// One figure of a known record that a line changes, both as they are written.
struct Difference {
  int line = 0;
  QString sort;
  QString key; ///< what names the record, its parts separated by ", "
  QString heading;
  QString was;     ///< empty = not known
  QString becomes; ///< empty = not known
  bool operator==(const Difference&) const = default;
};

/// A list of records with an index by key, so that fifty thousand units take no longer than they must.
template <class Record>
class Register {
public:
  Register(std::vector<Record>& list, QString (*keyOf)(const Record&)) : list_(&list), keyOf_(keyOf) {
    for (std::size_t at = 0; at < list.size(); ++at) {
      index_.insert(keyOf(list[at]), at);
    }
  }
  Record* find(const QString& key) {
    const auto found = index_.constFind(key);
    return found == index_.constEnd() ? nullptr : &(*list_)[*found];
  }
  void put(const Record& record) {
    const QString key = keyOf_(record);
    if (Record* old = find(key)) {
      *old = record;
      return;
    }
    index_.insert(key, list_->size());
    list_->push_back(record);
  }

private:
  std::vector<Record>* list_;
  QString (*keyOf_)(const Record&);
  QHash<QString, std::size_t> index_;
};

/// Facts, found by their identifier or, where a line has none, by what they say.
template <class Fact>
class Facts {
public:
  Facts(std::vector<Fact>& list, QString (*words)(const Fact&)) : list_(&list), words_(words) {
    for (std::size_t at = 0; at < list.size(); ++at) {
      enter(at);
    }
  }
  const Fact* find(const Fact& wanted) const {
    const auto& index = wanted.id.isNull() ? byWords_ : byEntry_;
    const auto found = index.constFind(wanted.id.isNull() ? words_(wanted) : wanted.id.toString());
    return found == index.constEnd() ? nullptr : &(*list_)[*found];
  }
  bool hasEntry(const QUuid& entry) const { return byEntry_.contains(entry.toString()); }
  bool sameWords(const Fact& one, const Fact& other) const { return words_(one) == words_(other); }
  void add(const Fact& fact) {
    list_->push_back(fact);
    enter(list_->size() - 1);
  }

private:
  void enter(std::size_t at) {
    const Fact& fact = (*list_)[at];
    byWords_.insert(words_(fact), at);
    if (!fact.id.isNull()) {
      byEntry_.insert(fact.id.toString(), at);
    }
  }

  std::vector<Fact>* list_;
  QString (*words_)(const Fact&);
  QHash<QString, std::size_t> byWords_;
  QHash<QString, std::size_t> byEntry_;
};

/// Joins the parts of a key with a sign that no cell holds.
QString joined(const QStringList& parts);

/// The state of one import: the data as it becomes, line by line, and what was wrong.
class Work {
public:
  Work(const Data& before, const Importer& importer);
  Work(const Work&) = delete;
  Work& operator=(const Work&) = delete;

  Data after;
  Importer importer;
  std::vector<Fault> faults;
  std::vector<Count> counts;
  std::vector<Difference> differences; ///< in the order of lines
  /// Looked at when every line has been read: what a line names may stand further down.
  std::vector<std::function<void()>> later;
  /// Sort and key of each line so far, with its number.
  QHash<QString, int> seen;
  std::map<QString, int> linesOfChosen; ///< by tour, show and hang

  Register<catalogue::CabinetType> cabinets;
  Register<catalogue::BarType> bars;
  Register<catalogue::HoistType> hoists;
  Register<catalogue::ChainType> chains;
  Register<catalogue::HardwareType> hardware;
  Register<catalogue::CartType> carts;
  Register<catalogue::StackingTable> tables;
  Register<catalogue::ConnectorType> connectors;
  Register<catalogue::Socket> sockets;
  Register<catalogue::LoomEnd> loomEnds;
  Register<calendar::Plug> plugs;
  Register<people::Person> people;
  Register<fleet::ExaminationRule> rules;
  Register<fleet::NamedPlace> places;
  Register<fleet::Unit> units;
  Facts<fleet::Examination> examinations;
  Register<venue::Venue> venues;
  Register<calendar::Tour> tours;
  Register<calendar::Show> shows;
  Register<calendar::Hung> hung;
  Register<Chosen> chosen;
  Facts<marks::MarkUsed> marks;

  Count& count(const QString& sort);
};

} // namespace hangbook::exchange
