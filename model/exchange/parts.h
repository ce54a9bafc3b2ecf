// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <memory>

#include "exchange/sort.h"

/// Lines that are a record of their own, and lines that are a part of one (a point of a venue).
namespace hangbook::exchange {

/// The place of a field in a line, for the columns.
#define HANGBOOK_FIELD(path)                                                                                 \
  [](auto& line) -> auto& {                                                                                  \
    return line.path;                                                                                        \
  }

/// What was typed for one part of a record stands in the record's map, under "word name: heading".
inline Typed typedOfPart(const Typed& all, const QString& prefix) {
  Typed part;
  for (auto at = all.lower_bound(prefix); at != all.end() && at->first.startsWith(prefix); ++at) {
    part[at->first.mid(prefix.size())] = at->second;
  }
  return part;
}

inline void putTypedOfPart(Typed& all, const QString& prefix, const Typed& part) {
  std::erase_if(all, [&](const auto& each) { return each.first.startsWith(prefix); });
  for (const auto& [heading, text] : part) {
    all[prefix + heading] = text;
  }
}

/// A record's own line. Its struct is a catalogue::Record.
template <class Record>
Handling<Record> recordHandling(Register<Record> Work::*registered, QString (*keyOf)(const Record&),
                                const std::vector<Record>& (*listOf)(const Data&)) {
  Handling<Record> handling;
  handling.fetch = [=](Work& work, const Record& keys) -> std::optional<Record> {
    const Record* found = (work.*registered).find(keyOf(keys));
    return found ? std::optional(*found) : std::nullopt;
  };
  handling.put = [=](Work& work, Record& record, const At&) { (work.*registered).put(record); };
  handling.all = [=](const Data& data) { return listOf(data); };
  return handling;
}

/// A line that is part of a record: `parent` names the record.
template <class Value>
struct Part {
  QString parent;
  Value value;
  Typed typed;
  bool operator==(const Part&) const = default;
};

/// `labelOf` tells a record's parts apart: two with the same label are the same part.
template <class Parent, class Value>
Handling<Part<Value>> partHandling(const char* word, const char* parentHeading,
                                   Register<Parent> Work::*registered,
                                   const std::vector<Parent>& (*parentsOf)(const Data&),
                                   std::vector<Value> Parent::*list, QString (*labelOf)(const Value&)) {
  using Line = Part<Value>;
  const QString heading = QString::fromLatin1(parentHeading);
  const auto prefixOf = [word = QString::fromLatin1(word), labelOf](const Value& value) {
    return word + QLatin1Char(' ') + labelOf(value) + QStringLiteral(": ");
  };
  const auto find = [labelOf](auto& values, const Value& wanted) {
    return std::ranges::find_if(values, [&](const Value& each) { return labelOf(each) == labelOf(wanted); });
  };
  Handling<Line> handling;
  handling.fetch = [=](Work& work, const Line& keys) -> std::optional<Line> {
    const Parent* parent = (work.*registered).find(keys.parent);
    if (!parent) {
      return std::nullopt;
    }
    const auto found = find(parent->*list, keys.value);
    return found == (parent->*list).end()
               ? std::nullopt
               : std::optional(Line{keys.parent, *found, typedOfPart(parent->typed, prefixOf(*found))});
  };
  handling.put = [=](Work& work, Line& line, const At& at) {
    Parent* parent = (work.*registered).find(line.parent);
    if (!parent) {
      at.fault(heading, line.parent,
               QStringLiteral("a %1 that is in this file or in the store").arg(heading));
      return;
    }
    const auto found = find(parent->*list, line.value);
    if (found == (parent->*list).end()) {
      (parent->*list).push_back(line.value);
    } else {
      *found = line.value;
    }
    putTypedOfPart(parent->typed, prefixOf(line.value), line.typed);
  };
  handling.all = [=](const Data& data) {
    std::vector<Line> lines;
    for (const Parent& parent : parentsOf(data)) {
      for (const Value& value : parent.*list) {
        lines.push_back({parent.name, value, typedOfPart(parent.typed, prefixOf(value))});
      }
    }
    return lines;
  };
  return handling;
}

/// Puts down a fault where `name` (not empty) is none of the register's.
template <class Record>
void mustBeKnown(const At& at, const QString& heading, const QString& name, Register<Record>& known,
                 const char* what) {
  if (!name.isEmpty() && !known.find(name)) {
    at.fault(heading, name,
             QStringLiteral("a %1 that is in this file or in the store").arg(QString::fromLatin1(what)));
  }
}

/// The columns of a record that says where it is from.
template <class Line>
Columns<Line> withSource(Columns<Line> columns) {
  columns.push_back(text<Line>("source", HANGBOOK_FIELD(source.text)));
  columns.push_back(date<Line>("source date", HANGBOOK_FIELD(source.date)));
  return columns;
}

/// Puts down a fault where a line (with tour, show and hang) names no hang of a known show.
template <class Line>
void mustBeHang(Work& work, const Line& line, const At& at) {
  const calendar::Show* show = work.shows.find(joined({line.tour, line.show}));
  if (show == nullptr) {
    at.fault("show", line.show, "a show of that tour that is in this file or in the store");
  } else if (std::ranges::count(show->hangs, line.hang, &calendar::Hang::name) == 0) {
    at.fault("hang", line.hang, "a hang of that show that is in this file or in the store");
  }
}

} // namespace hangbook::exchange
