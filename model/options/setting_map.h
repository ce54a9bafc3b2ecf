// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/option.h"
#include "options/search.h"
#include "options/snapshot.h"

/// Which tilts and trims an option stands at, as a map. Every place of it is a setting at which all rules
/// were run, on the bar's grid of tilts and the centimetres of trim; what lies outside the places that were
/// run is proved to fail by a rule that is linear in the trim. Nothing is said of what lies between two
/// places.
namespace hangbook::options {

inline constexpr double mapTrimStepM = 0.01;

/// Trims of one column that follow one another without a failing one between them.
struct SettingStretch {
  struct Part {
    double lowM{}; ///< the first and the last trim that was run
    double highM{};
    Verdict verdict = Verdict::holds; ///< of each of them: holds, tight or unproven
  };
  double lowM{};
  double highM{};
  QString lowRule; ///< that fails one step below; empty: no lower trim was looked at
  QString highRule;
  std::vector<Part> parts; ///< from the lowest up
};

/// One tilt at one mark.
struct SettingColumn {
  double tiltDeg{};
  std::vector<SettingStretch> stretches; ///< from the lowest up
  QStringList shutBy;                    ///< without a stretch: the rules that leave no trim
};

/// Tilts at which a link of the chain leaves a trim.
struct MarkLine {
  struct At {
    double tiltDeg{};
    Verdict best =
        Verdict::holds; ///< of the trims that were run until one stood: tight or better, or unproven
  };
  int mark{};
  std::vector<At> at; ///< in rising order
};

struct SettingMap {
  std::optional<int> mark; ///< of the columns; none: no chain
  double tiltStepDeg = 0.5;
  std::vector<SettingColumn> columns; ///< every tilt of the grid that is possible, in rising order
  std::vector<MarkLine> marks;        ///< every usable link, in rising order
  QString impossible;                 ///< no setting at all: why
  qint64 runs{};                      ///< settings at which all rules were run
};

/// For the option at its setting's mark, pan and holes. Without a setting: `impossible` says so. As `judge`,
/// where several tables, joints or pick spacings give the same types a place has the verdict of the one that
/// does better there. Pure; throws Cancelled.
SettingMap settingMap(const Snapshot& snapshot, const Option& option, const Progress& progress = {});

} // namespace hangbook::options
