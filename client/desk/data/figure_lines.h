// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "desk/data/record.h"

namespace hangbook::desk {

/// Collects a record's figures, one a line, all with the record's own source unless told otherwise.
class FigureLines {
public:
  explicit FigureLines(const catalogue::Record& record) : record_(record) {}

  FigureLines& words(const QString& what, const QString& text);
  FigureLines& count(const QString& what, std::optional<int> value);
  FigureLines& mass(const QString& what, std::optional<Mass> value);
  FigureLines& length(const QString& what, std::optional<Length> value);
  FigureLines& force(const QString& what, std::optional<Force> value);
  FigureLines& angle(const QString& what, std::optional<Angle> value);
  FigureLines& travel(const QString& what, const std::optional<std::array<Angle, 2>>& value);
  /// `optional`: both lines may be left out without any rule going unproven.
  FigureLines& position(const QString& what, const std::optional<catalogue::Position>& value,
                        bool optional = false);
  FigureLines& number(const QString& what, std::optional<double> value, Measure measure = Measure::plain);
  FigureLines& yesNo(const QString& what, std::optional<bool> value);
  /// The last line may be left out without any rule going unproven.
  FigureLines& optional();
  /// The last line has a source of its own.
  FigureLines& from(const catalogue::Source& source);

  std::vector<FigureLine> take() { return std::move(lines_); }

private:
  FigureLines& add(const QString& what, const QString& text, std::optional<double> value, Measure measure);

  const catalogue::Record& record_;
  std::vector<FigureLine> lines_;
};

} // namespace hangbook::desk
