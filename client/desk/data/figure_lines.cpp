// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/figure_lines.h"

#include <QCoreApplication>

namespace hangbook::desk {
namespace {

template <class Quantity>
std::optional<double> plainValue(std::optional<Quantity> value, double (*in)(Quantity)) {
  return value ? std::optional(in(*value)) : std::nullopt;
}

} // namespace

FigureLines& FigureLines::add(const QString& what, const QString& text, std::optional<double> value,
                              Measure measure) {
  lines_.push_back(
      {.what = what, .text = text, .value = value, .measure = measure, .source = record_.source});
  return *this;
}

FigureLines& FigureLines::words(const QString& what, const QString& text) {
  return add(what, text, std::nullopt, Measure::text);
}

FigureLines& FigureLines::count(const QString& what, std::optional<int> value) {
  return add(what, {}, value ? std::optional<double>(*value) : std::nullopt, Measure::count);
}

FigureLines& FigureLines::mass(const QString& what, std::optional<Mass> value) {
  return add(what, {}, plainValue(value, &inKilograms), Measure::mass);
}

FigureLines& FigureLines::length(const QString& what, std::optional<Length> value) {
  return add(what, {}, plainValue(value, &inMetres), Measure::length);
}

FigureLines& FigureLines::force(const QString& what, std::optional<Force> value) {
  return add(what, {}, plainValue(value, &inKilonewtons), Measure::force);
}

FigureLines& FigureLines::angle(const QString& what, std::optional<Angle> value) {
  return add(what, {}, plainValue(value, &inDegrees), Measure::angle);
}

FigureLines& FigureLines::travel(const QString& what, const std::optional<std::array<Angle, 2>>& value) {
  angle(QCoreApplication::translate("Record", "%1, from").arg(what),
        value ? std::optional((*value)[0]) : std::nullopt);
  return angle(QCoreApplication::translate("Record", "%1, to").arg(what),
               value ? std::optional((*value)[1]) : std::nullopt);
}

FigureLines& FigureLines::position(const QString& what, const std::optional<catalogue::Position>& value,
                                   bool mayBeLeftOut) {
  length(QCoreApplication::translate("Record", "%1, forward").arg(what),
         value ? std::optional(value->x) : std::nullopt);
  lines_.back().optional = mayBeLeftOut;
  length(QCoreApplication::translate("Record", "%1, up").arg(what),
         value ? std::optional(value->z) : std::nullopt);
  lines_.back().optional = mayBeLeftOut;
  return *this;
}

FigureLines& FigureLines::number(const QString& what, std::optional<double> value, Measure measure) {
  return add(what, {}, value, measure);
}

FigureLines& FigureLines::yesNo(const QString& what, std::optional<bool> value) {
  const QString text = !value ? QString()
                              : (*value ? QCoreApplication::translate("Record", "yes")
                                        : QCoreApplication::translate("Record", "no"));
  return add(what, text, std::nullopt, Measure::text);
}

FigureLines& FigureLines::optional() {
  lines_.back().optional = true;
  return *this;
}

FigureLines& FigureLines::from(const catalogue::Source& source) {
  lines_.back().source = source;
  return *this;
}

} // namespace hangbook::desk
