// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>
#include <type_traits>
#include <utility>
#include <vector>

#include "exchange/cell.h"

/// Columns as data: each says its heading, how its cell is read into a line's struct and how it is written.
/// A line's struct has a map `typed` beside its figures: what was typed with a unit of its own.
namespace hangbook::exchange {

enum class Need {
  optional,
  key,        ///< names the line: needed, and read before the rest
  keyOrEmpty, ///< names the line as well, but may be empty
  needed,     ///< must have a figure
};

template <class Line>
struct Column {
  QString name;
  const char* unit = ""; ///< of bare numbers, where the heading says nothing else
  Need need = Need::optional;
  std::function<void(Line&, const Cell&)> read;  ///< never called for an empty cell
  std::function<void(Line&)> clear;              ///< what an empty cell means
  std::function<QString(const Line&)> write;     ///< empty = not known
  std::function<void(const Cell&)> checkHeading; ///< throws Unreadable where the heading's unit is none
};

template <class Line>
using Columns = std::vector<Column<Line>>;

namespace detail {

template <class T>
struct Inner {
  using Type = T;
};
template <class T>
struct Inner<std::optional<T>> {
  using Type = T;
};

/// The type of what `get` finds in a line, without the optional around it.
template <class Line, class Get>
using Found = typename Inner<std::remove_cvref_t<decltype(std::declval<Get>()(std::declval<Line&>()))>>::Type;

template <class T>
bool known(const T&) {
  return true;
}
template <class T>
bool known(const std::optional<T>& field) {
  return field.has_value();
}
template <class T>
const T& value(const T& field) {
  return field;
}
template <class T>
const T& value(const std::optional<T>& field) {
  return *field;
}

/// Refuses any unit in the heading but `unit` itself.
inline std::function<void(const Cell&)> onlyUnit(const char* unit) {
  return [unit](const Cell& heading) {
    if (!heading.unit.isEmpty() && heading.unit != QString::fromUtf8(unit)) {
      throw Unreadable{heading.unit, *unit == '\0' ? QStringLiteral("no unit in this heading")
                                                   : QStringLiteral("the unit ") + QString::fromUtf8(unit)};
    }
  };
}

/// Builds a column from a reader and a writer of the bare value.
template <class Line, class Get, class Read, class Write>
Column<Line> column(const char* name, const char* unit, Get get, Read read, Write write, Need need) {
  using Field = std::remove_cvref_t<decltype(get(std::declval<Line&>()))>;
  Column<Line> made;
  made.name = QString::fromUtf8(name);
  made.unit = unit;
  made.need = need;
  made.read = [get, read](Line& line, const Cell& cell) { get(line) = read(cell); };
  made.clear = [get](Line& line) { get(line) = Field{}; };
  made.write = [get, write](const Line& line) -> QString {
    const auto& field = get(line);
    return known(field) ? write(value(field)) : QString();
  };
  made.checkHeading = onlyUnit(unit);
  return made;
}

} // namespace detail

/// A figure with a unit: Quantity or optional<Quantity>. What was typed with another unit is kept.
template <class Line, class Get>
Column<Line> figure(const char* name, const char* unit, Get get, Bound bound, Need need = Need::optional) {
  using Quantity = detail::Found<Line, Get>;
  const QString key = QString::fromUtf8(name);
  auto made = detail::column<Line>(
      name, unit, get, [unit, bound](const Cell& cell) { return readQuantity<Quantity>(cell, unit, bound); },
      [](Quantity quantity) { return writeQuantity(quantity); }, need);
  made.read = [get, unit, bound, key](Line& line, const Cell& cell) {
    get(line) = readQuantity<Quantity>(cell, unit, bound);
    const QString typed = typedText(cell, unit);
    if (typed.isEmpty()) {
      line.typed.erase(key);
    } else {
      line.typed[key] = typed;
    }
  };
  made.clear = [clear = made.clear, key](Line& line) {
    clear(line);
    line.typed.erase(key);
  };
  made.write = [get, unit, bound, key](const Line& line) -> QString {
    const auto& field = get(line);
    if (!detail::known(field)) {
      return {};
    }
    const Quantity quantity = detail::value(field);
    if (const auto typed = line.typed.find(key); typed != line.typed.end()) {
      try { // only as long as it still says the same
        const Cell cell{typed->second, {}, {}};
        if (readQuantity<Quantity>(cell, unit, bound) == quantity && typedText(cell, unit) == cell.text) {
          return typed->second;
        }
      } catch (const Unreadable&) {
        return writeQuantity(quantity);
      }
    }
    return writeQuantity(quantity);
  };
  made.checkHeading = [unit](const Cell& heading) {
    if (!heading.unit.isEmpty()) {
      readQuantity<Quantity>({QStringLiteral("1"), heading.unit, {}}, unit, Bound::any);
    }
  };
  return made;
}

/// A bare number (double or optional<double>) whose unit, if any, is fixed.
template <class Line, class Get>
Column<Line> number(const char* name, const char* unit, Get get, Bound bound, Need need = Need::optional) {
  return detail::column<Line>(
      name, unit, get, [unit, bound](const Cell& cell) { return readNumber(cell, unit, bound); },
      [](double figure) { return writeNumber(figure); }, need);
}

template <class Line, class Get>
Column<Line> integer(const char* name, Get get, Bound bound, Need need = Need::optional) {
  return detail::column<Line>(
      name, "", get, [bound](const Cell& cell) { return readInteger(cell, bound); },
      [](int figure) { return QString::number(figure); }, need);
}

template <class Line, class Get>
Column<Line> text(const char* name, Get get, Need need = Need::optional) {
  return detail::column<Line>(
      name, "", get, readText, [](const QString& words) { return words; }, need);
}

/// What others refer to by name. A semicolon would break every list that names it.
template <class Line, class Get>
Column<Line> name(const char* heading, Get get, Need need = Need::key) {
  const auto read = [](const Cell& cell) {
    if (cell.text.contains(QLatin1Char(';'))) {
      throw Unreadable{cell.text, QStringLiteral("a name without a semicolon")};
    }
    return cell.text;
  };
  return detail::column<Line>(
      heading, "", get, read, [](const QString& words) { return words; }, need);
}

template <class Line, class Get>
Column<Line> yesNo(const char* name, Get get) {
  return detail::column<Line>(name, "", get, readYesNo, writeYesNo, Need::optional);
}

template <class Line, class Get>
Column<Line> date(const char* name, Get get, Need need = Need::optional) {
  return detail::column<Line>(name, "", get, readDate, writeDate, need);
}

/// An instant with its zone: UTC inside.
template <class Line, class Get>
Column<Line> instant(const char* name, Get get) {
  const auto read = [](const Cell& cell) {
    const QDateTime instant = readInstant(cell);
    if (!instant.isValid()) {
      throw Unreadable{cell.text, QStringLiteral("an instant such as 2027-04-02T08:00:00Z")};
    }
    return instant;
  };
  return detail::column<Line>(name, "", get, read, writeInstant, Need::optional);
}

template <class Line, class Get>
Column<Line> identifier(const char* name, Get get) {
  return detail::column<Line>(
      name, "", get, readIdentifier,
      [](const QUuid& id) { return id.isNull() ? QString() : id.toString(QUuid::WithoutBraces); },
      Need::optional);
}

/// A fixed set of words. `words` outlives the column.
template <class Line, class Get, class Set>
Column<Line> word(const char* name, Get get, const Set& words, Need need = Need::optional) {
  using Value = detail::Found<Line, Get>;
  const Words<Value> set = words;
  return detail::column<Line>(
      name, "", get, [set](const Cell& cell) { return readWord<Value>(cell, set); },
      [set](Value value) { return writeWord<Value>(value, set); }, need);
}

/// Names in a QStringList or a vector of QString.
template <class Line, class Get>
Column<Line> list(const char* name, Get get, Need need = Need::optional) {
  using Field = std::remove_cvref_t<decltype(get(std::declval<Line&>()))>;
  return detail::column<Line>(
      name, "", get,
      [](const Cell& cell) {
        const QStringList names = readList(cell);
        return Field(names.begin(), names.end());
      },
      [](const Field& names) { return writeList(QStringList(names.begin(), names.end())); }, need);
}

namespace detail {

inline std::function<void(const Cell&)> lengthUnit() {
  return [](const Cell& heading) {
    if (!heading.unit.isEmpty()) {
      readQuantity<Length>({QStringLiteral("1"), heading.unit, {}}, "m", Bound::any);
    }
  };
}

} // namespace detail

/// One place, `x z`.
template <class Line, class Get>
Column<Line> place(const char* name, Get get, Need need = Need::optional) {
  auto made = detail::column<Line>(
      name, "m", get,
      [](const Cell& cell) {
        const auto places = readPlaces(cell, Bound::place);
        if (places.size() != 1) {
          throw Unreadable{cell.text, QStringLiteral("one place, x z")};
        }
        return places.front();
      },
      [](const catalogue::Position& position) {
        return writePlaces({&position, 1});
      },
      need);
  made.checkHeading = detail::lengthUnit();
  return made;
}

/// Any number of places.
template <class Line, class Get>
Column<Line> places(const char* name, Get get) {
  auto made = detail::column<Line>(
      name, "m", get, [](const Cell& cell) { return readPlaces(cell, Bound::place); },
      [](const std::vector<catalogue::Position>& all) { return writePlaces(all); }, Need::optional);
  made.checkHeading = detail::lengthUnit();
  return made;
}

/// Two places.
template <class Line, class Get>
Column<Line> twoPlaces(const char* name, Get get) {
  auto made = detail::column<Line>(
      name, "m", get,
      [](const Cell& cell) {
        const auto all = readPlaces(cell, Bound::place);
        if (all.size() != 2) {
          throw Unreadable{cell.text, QStringLiteral("two places, x z; x z")};
        }
        return std::array{all[0], all[1]};
      },
      [](const std::array<catalogue::Position, 2>& pair) { return writePlaces(pair); }, Need::optional);
  made.checkHeading = detail::lengthUnit();
  return made;
}

/// A travel: two angles, the lower first.
template <class Line, class Get>
Column<Line> travel(const char* name, Get get) {
  return detail::column<Line>(
      name, "°", get,
      [](const Cell& cell) {
        const auto angles = readAngles(cell, Bound::angle);
        if (angles.size() != 2 || angles[0] > angles[1]) {
          throw Unreadable{cell.text, QStringLiteral("two angles, the lower first: -20; 20")};
        }
        return std::array{angles[0], angles[1]};
      },
      [](const std::array<Angle, 2>& pair) { return writeAngles(pair); }, Need::optional);
}

template <class Line, class Get>
Column<Line> angles(const char* name, Get get) {
  return detail::column<Line>(
      name, "°", get, [](const Cell& cell) { return readAngles(cell, Bound::angle); },
      [](const std::vector<Angle>& all) { return writeAngles(all); }, Need::optional);
}

} // namespace hangbook::exchange
