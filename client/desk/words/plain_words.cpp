// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/plain_words.h"

#include <array>
#include <utility>

#include <QDate>

#include "desk/style/figures.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

/// The n-th of the words; the enums count from 0 without gaps.
template <class Enum, std::size_t size>
QString nth(Enum value, const std::array<const char*, size>& list) {
  return Words::tr(list.at(static_cast<std::size_t>(value)));
}

constexpr std::array<std::pair<const char*, const char*>, 24> rules{{
    {"point-load", QT_TRANSLATE_NOOP("Words", "load on each point")},
    {"zone-load", QT_TRANSLATE_NOOP("Words", "load on truss or bay")},
    {"hoist", QT_TRANSLATE_NOOP("Words", "hoists")},
    {"bar", QT_TRANSLATE_NOOP("Words", "bar")},
    {"count", QT_TRANSLATE_NOOP("Words", "number of cabinets")},
    {"joint", QT_TRANSLATE_NOOP("Words", "joints and pins")},
    {"contact", QT_TRANSLATE_NOOP("Words", "seated joints shut")},
    {"chain", QT_TRANSLATE_NOOP("Words", "chain")},
    {"lean", QT_TRANSLATE_NOOP("Words", "lean of the hoists' chains")},
    {"bridle", QT_TRANSLATE_NOOP("Words", "bridles")},
    {"uneven", QT_TRANSLATE_NOOP("Words", "one hoist higher")},
    {"pick-share", QT_TRANSLATE_NOOP("Words", "share of each pick")},
    {"hardware", QT_TRANSLATE_NOOP("Words", "shackles and steel")},
    {"wind", QT_TRANSLATE_NOOP("Words", "wind")},
    {"lowest-edge", QT_TRANSLATE_NOOP("Words", "lowest edge")},
    {"headroom", QT_TRANSLATE_NOOP("Words", "headroom")},
    {"lift-height", QT_TRANSLATE_NOOP("Words", "hoist chain reaches")},
    {"travel", QT_TRANSLATE_NOOP("Words", "travel of bar and joint")},
    {"cover", QT_TRANSLATE_NOOP("Words", "audience covered")},
    {"level-drop", QT_TRANSLATE_NOOP("Words", "level front to back")},
    {"stock", QT_TRANSLATE_NOOP("Words", "units free")},
    {"examined", QT_TRANSLATE_NOOP("Words", "examinations stand")},
    {"carts", QT_TRANSLATE_NOOP("Words", "whole carts")},
    {"same-chain", QT_TRANSLATE_NOOP("Words", "chain of that pitch")},
}};

} // namespace

QString wordOf(fleet::UnitKind kind) {
  return nth(kind, std::array{QT_TRANSLATE_NOOP("Words", "cabinet"), QT_TRANSLATE_NOOP("Words", "bar"),
                              QT_TRANSLATE_NOOP("Words", "hoist"), QT_TRANSLATE_NOOP("Words", "chain"),
                              QT_TRANSLATE_NOOP("Words", "cart"), QT_TRANSLATE_NOOP("Words", "hardware"),
                              QT_TRANSLATE_NOOP("Words", "loom")});
}

QString wordOf(fleet::UnitState state) {
  return nth(state,
             std::array{QT_TRANSLATE_NOOP("Words", "ready"), QT_TRANSLATE_NOOP("Words", "away"),
                        QT_TRANSLATE_NOOP("Words", "quarantined"), QT_TRANSLATE_NOOP("Words", "in repair"),
                        QT_TRANSLATE_NOOP("Words", "written off")});
}

QString wordOf(fleet::ExaminationResult result) {
  return nth(result,
             std::array{QT_TRANSLATE_NOOP("Words", "pass"), QT_TRANSLATE_NOOP("Words", "pass with remark"),
                        QT_TRANSLATE_NOOP("Words", "fail")});
}

QString wordOf(fleet::OccurrenceKind kind) {
  return nth(kind,
             std::array{QT_TRANSLATE_NOOP("Words", "used"), QT_TRANSLATE_NOOP("Words", "harmed perhaps"),
                        QT_TRANSLATE_NOOP("Words", "assembled"), QT_TRANSLATE_NOOP("Words", "fault found")});
}

QString wordOf(catalogue::Picks picks) {
  return nth(picks, std::array{QT_TRANSLATE_NOOP("Words", "side pair"),
                               QT_TRANSLATE_NOOP("Words", "fore-aft"), QT_TRANSLATE_NOOP("Words", "single")});
}

QString wordOf(catalogue::Basis basis) {
  return nth(basis,
             std::array{QT_TRANSLATE_NOOP("Words", "basis not known"), QT_TRANSLATE_NOOP("Words", "at rest"),
                        QT_TRANSLATE_NOOP("Words", "with dynamic factor")});
}

QString wordOf(catalogue::Carries carries) {
  return nth(carries,
             std::array{QT_TRANSLATE_NOOP("Words", "loudspeaker"), QT_TRANSLATE_NOOP("Words", "signal"),
                        QT_TRANSLATE_NOOP("Words", "power"), QT_TRANSLATE_NOOP("Words", "signal and power")});
}

QString wordOf(catalogue::JointKind kind) {
  return nth(kind, std::array{QT_TRANSLATE_NOOP("Words", "seated"), QT_TRANSLATE_NOOP("Words", "pinned"),
                              QT_TRANSLATE_NOOP("Words", "pivot")});
}

QString wordOf(catalogue::HardwareKind kind) {
  return nth(kind,
             std::array{QT_TRANSLATE_NOOP("Words", "shackle"), QT_TRANSLATE_NOOP("Words", "sling"),
                        QT_TRANSLATE_NOOP("Words", "clip"), QT_TRANSLATE_NOOP("Words", "pin"),
                        QT_TRANSLATE_NOOP("Words", "secondary steel"), QT_TRANSLATE_NOOP("Words", "loom")});
}

QString ruleWords(const QString& rule) {
  for (const auto& [id, text] : rules) {
    if (rule == QLatin1String(id)) {
      return Words::tr(text);
    }
  }
  return rule;
}

QString dateText(const QDate& date) {
  if (!date.isValid()) {
    return notKnownText();
  }
  int year = 0;
  int month = 0;
  int day = 0;
  date.getDate(&year, &month, &day);
  if (year < 0 || year > 9999) {
    return date.toString(Qt::ISODate);
  }
  // Digit by digit: lists of thousands of lines ask for their days whenever a letter is typed.
  QString text = QStringLiteral("0000-00-00");
  const auto put = [&text](qsizetype last, int figure) {
    for (; figure > 0; figure /= 10) {
      text[last--] = QChar(u'0' + figure % 10);
    }
  };
  put(3, year);
  put(6, month);
  put(9, day);
  return text;
}

} // namespace hangbook::desk
