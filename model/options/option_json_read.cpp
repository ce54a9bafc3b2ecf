// SPDX-License-Identifier: GPL-3.0-or-later
#include <limits>

#include <QJsonArray>

#include "options/level_json.h"
#include "options/option_json.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

[[noreturn]] void refuse(const char* key, const char* expected) {
  throw Error(Trouble::badInput, std::string("expected ") + expected, key);
}

QString text(const QJsonObject& object, const char* key) {
  const QJsonValue value = object.value(QLatin1String(key));
  return value.isString() ? value.toString() : (refuse(key, "a text"), QString());
}

std::optional<double> figure(const QJsonObject& object, const char* key) {
  const QJsonValue value = object.value(QLatin1String(key));
  if (value.isNull()) {
    return std::nullopt;
  }
  return value.isDouble() ? std::optional(value.toDouble())
                          : (refuse(key, "a figure or null"), std::optional<double>());
}

/// Null is a figure that was not known or not finite.
double orNotKnown(const QJsonObject& object, const char* key) {
  return figure(object, key).value_or(std::numeric_limits<double>::quiet_NaN());
}

bool flag(const QJsonObject& object, const char* key) {
  const QJsonValue value = object.value(QLatin1String(key));
  return value.isBool() ? value.toBool() : (refuse(key, "true or false"), false);
}

std::optional<int> whole(const QJsonObject& object, const char* key) {
  const std::optional<double> value = figure(object, key);
  return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

QJsonArray list(const QJsonObject& object, const char* key) {
  const QJsonValue value = object.value(QLatin1String(key));
  return value.isArray() ? value.toArray() : (refuse(key, "a list"), QJsonArray());
}

QStringList texts(const QJsonObject& object, const char* key) {
  QStringList all;
  for (const auto value : list(object, key)) {
    all.append(value.toString());
  }
  return all;
}

template <class Type, class Read>
std::vector<Type> each(const QJsonObject& object, const char* key, Read read) {
  std::vector<Type> all;
  for (const auto value : list(object, key)) {
    all.push_back(read(value.toObject()));
  }
  return all;
}

Verdict verdictIn(const QJsonObject& object) {
  const QString word = text(object, "verdict");
  for (const Verdict verdict : {Verdict::holds, Verdict::tight, Verdict::unproven, Verdict::fails}) {
    if (word == wordFor(verdict)) {
      return verdict;
    }
  }
  refuse("verdict", "holds, tight, unproven or fails");
}

catalogue::Picks picksIn(const QJsonObject& object) {
  using catalogue::Picks;
  const QString word = text(object, "picks");
  for (const Picks picks : {Picks::sidePair, Picks::foreAftPair, Picks::single}) {
    if (word == wordFor(picks)) {
      return picks;
    }
  }
  refuse("picks", "side-pair, fore-aft-pair or single");
}

Setting settingIn(const QJsonObject& object) {
  Setting setting{orNotKnown(object, "tilt_deg"),
                  orNotKnown(object, "pan_deg"),
                  orNotKnown(object, "trim_m"),
                  whole(object, "mark"),
                  {}};
  for (const auto angle : list(object, "holes_deg")) {
    setting.holesDeg.push_back(angle.toDouble());
  }
  return setting;
}

PointResult pointIn(const QJsonObject& object) {
  return {text(object, "point"),
          orNotKnown(object, "static_kn"),
          orNotKnown(object, "dynamic_kn"),
          figure(object, "capacity_kn"),
          each<LoadPart>(object, "parts",
                         [](const QJsonObject& part) {
                           return LoadPart{text(part, "what"), orNotKnown(part, "kn")};
                         }),
          figure(object, "horizontal_kn").value_or(0.0), // older ones had none
          figure(object, "worst_static_kn"),
          figure(object, "worst_dynamic_kn")};
}

std::array<double, 3> placeIn(const QJsonObject& object, const char* key) {
  const QJsonArray at = list(object, key);
  if (at.size() != 3) {
    refuse(key, "x, y and z");
  }
  return {at[0].toDouble(), at[1].toDouble(), at[2].toDouble()};
}

BridleResult bridleIn(const QJsonObject& object) {
  BridleResult bridle;
  bridle.pick = text(object, "pick");
  bridle.bridle = text(object, "bridle");
  bridle.wantedM = placeIn(object, "wanted_m");
  bridle.apexM = placeIn(object, "apex_m");
  bridle.shiftM = figure(object, "shift_m");
  bridle.legs = each<BridleLegResult>(object, "legs", [](const QJsonObject& leg) {
    return BridleLegResult{
        text(leg, "point"),
        orNotKnown(leg, "wanted_m"),
        orNotKnown(leg, "length_m"),
        each<HardwareCount>(leg, "pieces",
                            [](const QJsonObject& piece) {
                              return HardwareCount{text(piece, "type"), whole(piece, "count").value_or(0)};
                            }),
        orNotKnown(leg, "tension_kn"),
        orNotKnown(leg, "horizontal_kn"),
        orNotKnown(leg, "angle_deg")};
  });
  return bridle;
}

Finding findingIn(const QJsonObject& object) {
  Finding finding;
  finding.rule = text(object, "rule");
  finding.verdict = verdictIn(object);
  finding.applies = flag(object, "applies");
  finding.value = figure(object, "value");
  finding.limit = figure(object, "limit");
  finding.unit = text(object, "unit");
  finding.usePercent = figure(object, "use_percent");
  finding.source = text(object, "source");
  finding.text = text(object, "text");
  finding.nominal = figure(object, "nominal");                                      // older ones had none
  finding.worstFollows = object.value(QLatin1String("worst_follows")).toBool(true); // said where it is not so
  return finding;
}

} // namespace

Option optionFromJson(const QJsonObject& object) {
  Option option;
  option.id = text(object, "id");
  option.key = {text(object, "hang"), texts(object, "stack"), text(object, "table"),     text(object, "bar"),
                picksIn(object),      text(object, "hoist"),  texts(object, "at_points")};
  option.downfill = flag(object, "downfill");
  option.verdict = verdictIn(object);
  if (object.value(QLatin1String("setting")).isObject()) {
    option.setting = settingIn(object.value(QLatin1String("setting")).toObject());
  }
  if (object.value(QLatin1String("trim_window_m")).isArray()) {
    const QJsonArray ends = list(object, "trim_window_m");
    const QStringList by = texts(object, "trim_window_set_by");
    if (ends.size() != 2 || by.size() != 2) {
      refuse("trim_window_m", "two ends and who set them");
    }
    option.trimWindow = TrimWindow{ends[0].toDouble(), ends[1].toDouble(), by[0], by[1]};
  }
  option.massKg = figure(object, "mass_kg").value_or(0.0);
  option.coveredPercent = figure(object, "covered_percent").value_or(0.0);
  option.datumHeightM = figure(object, "datum_height_m");
  option.pickLoads = each<PickLoad>(object, "pick_loads", [](const QJsonObject& pick) {
    return PickLoad{text(pick, "name"), orNotKnown(pick, "load_kn"), texts(pick, "points")};
  });
  option.points = each<PointResult>(object, "points", pointIn);
  if (object.contains(QLatin1String("bridles"))) { // older ones had none
    option.bridles = each<BridleResult>(object, "bridles", bridleIn);
    option.loadPath = each<PathLink>(object, "load_path", [](const QJsonObject& link) {
      return PathLink{text(link, "kind"),       text(link, "link"),
                      text(link, "at"),         orNotKnown(link, "load_kn"),
                      figure(link, "limit_kn"), figure(link, "use_percent"),
                      verdictIn(link),          text(link, "source")};
    });
  }
  option.aims = each<Aim>(object, "aims", [](const QJsonObject& aim) {
    return Aim{whole(aim, "element").value_or(0), orNotKnown(aim, "aim_deg")};
  });
  option.marks = each<MarkAngle>(object, "marks", [](const QJsonObject& mark) {
    return MarkAngle{whole(mark, "mark").value_or(0), figure(mark, "angle_deg")};
  });
  option.build = stepLoadsFromJson(object.value(QLatin1String("build_loads")).toArray());
  option.wind = windFromJson(object.value(QLatin1String("wind")));
  option.stops = stopsFromJson(object.value(QLatin1String("one_hoist_stops")).toArray());
  if (object.contains(QLatin1String("doubts"))) { // older ones had none
    option.doubts = each<DoubtFigure>(object, "doubts", [](const QJsonObject& doubt) {
      return DoubtFigure{text(doubt, "what"), text(doubt, "figure"), text(doubt, "source")};
    });
    option.weighed = texts(object, "weighed");
  }
  option.findings = each<Finding>(object, "findings", findingIn);
  if (object.value(QLatin1String("level")).isObject()) {
    option.level = levelFromJson(object.value(QLatin1String("level")).toObject());
  }
  return option;
}

} // namespace hangbook::options
