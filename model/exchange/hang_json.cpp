// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hang_json.h"

#include <string>

#include <QJsonArray>

#include "exchange/json_object.h"
#include "hang/check.h"
#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

[[noreturn]] void refuse(const std::string& text, const std::string& place) {
  throw Error(Trouble::badInput, text, place);
}

std::string indexed(const std::string& place, qsizetype index) {
  return place + "[" + std::to_string(index) + "]";
}

std::string picksOf(const QJsonValue& bar) {
  const QJsonValue picks = bar.toObject().value(QLatin1String("picks"));
  if (!bar.isObject()) {
    refuse("must be an object", "bar");
  }
  if (picks.isUndefined()) {
    refuse("is missing", "bar.picks");
  }
  const std::string text = picks.toString().toStdString();
  if (text != "side-pair" && text != "fore-aft-pair" && text != "single") {
    refuse("must be side-pair, fore-aft-pair or single", "bar.picks");
  }
  return text;
}

/// What every bar has.
hang::Bar barFrom(const JsonObject& object) {
  hang::Bar bar;
  bar.frameMass = object.number("frame_mass_kg");
  bar.frameCg = object.point("frame_cg_m");
  bar.stackPin = object.point("stack_pin_m");
  bar.chainAnchor = object.pointIfGiven("chain_anchor_m");
  return bar;
}

hang::Bar barFrom(const QJsonValue& value) {
  const std::string picks = picksOf(value);
  if (picks == "side-pair") {
    const JsonObject object(value, "bar",
                            {"picks", "pick_spacing_m", "head_mass_kg", "head_cg_m", "tilt_axis_m",
                             "tilt_travel_deg", "pan_travel_deg", "frame_mass_kg", "frame_cg_m",
                             "stack_pin_m", "chain_anchor_m"});
    hang::Bar bar = barFrom(object);
    bar.picks = hang::SidePair{object.number("pick_spacing_m"), object.number("head_mass_kg"),
                               object.point("head_cg_m"),       object.point("tilt_axis_m"),
                               object.range("tilt_travel_deg"), object.range("pan_travel_deg")};
    return bar;
  }
  if (picks == "fore-aft-pair") {
    const JsonObject object(value, "bar",
                            {"picks", "front_pick_m", "rear_pick_m", "frame_mass_kg", "frame_cg_m",
                             "stack_pin_m", "chain_anchor_m"});
    hang::Bar bar = barFrom(object);
    bar.picks = hang::ForeAftPair{object.point("front_pick_m"), object.point("rear_pick_m")};
    return bar;
  }
  const JsonObject object(
      value, "bar", {"picks", "pick_m", "frame_mass_kg", "frame_cg_m", "stack_pin_m", "chain_anchor_m"});
  hang::Bar bar = barFrom(object);
  bar.picks = hang::SinglePick{object.point("pick_m")};
  return bar;
}

hang::Joint jointFrom(const QJsonValue& value, const std::string& place) {
  const std::string kind = value.toObject().value(QLatin1String("kind")).toString().toStdString();
  if (kind == "seated") {
    const JsonObject object(value, place, {"kind", "angle_deg", "contact_m", "open_to_deg"});
    return hang::Seated{object.numberIfGiven("angle_deg").value_or(0.0), object.point("contact_m"),
                        object.numberIfGiven("open_to_deg").value_or(0.0)};
  }
  if (kind == "pinned") {
    const JsonObject object(value, place, {"kind", "angle_deg", "pins_m"});
    const QJsonArray pins = object.list("pins_m");
    const std::string pinsPlace = object.placeOf("pins_m");
    if (pins.size() != 2) {
      refuse("must be a list of two points", pinsPlace);
    }
    return hang::Pinned{
        object.numberIfGiven("angle_deg").value_or(0.0),
        {pointFrom(pins.at(0), indexed(pinsPlace, 0)), pointFrom(pins.at(1), indexed(pinsPlace, 1))}};
  }
  if (kind == "pivot") {
    const JsonObject object(value, place, {"kind", "travel_deg"});
    return hang::Pivot{object.range("travel_deg")};
  }
  const JsonObject object(value, place,
                          {"kind", "angle_deg", "contact_m", "open_to_deg", "pins_m", "travel_deg"});
  object.value("kind");
  refuse("must be seated, pinned or pivot", object.placeOf("kind"));
}

hang::Vec2 cornerFrom(const QJsonValue& value, const std::string& place) {
  const QJsonArray pair = value.toArray();
  if (!value.isArray() || pair.size() != 2) {
    refuse("must be a list of two numbers, x and z", place);
  }
  return {numberFrom(pair.at(0), indexed(place, 0)), numberFrom(pair.at(1), indexed(place, 1))};
}

hang::Element elementFrom(const QJsonValue& value, const std::string& place) {
  const JsonObject object(value, place,
                          {"name", "mass_kg", "cg_m", "next_pin_m", "outline_m", "chain_eye_m", "joint"});
  hang::Element element;
  if (object.has("name")) {
    element.name = object.text("name");
  }
  element.mass = object.number("mass_kg");
  element.cg = object.point("cg_m");
  element.nextPin = object.pointIfGiven("next_pin_m");
  element.chainEye = object.pointIfGiven("chain_eye_m");
  const QJsonArray corners = object.list("outline_m");
  for (qsizetype i = 0; i < corners.size(); ++i) {
    element.outline.push_back(cornerFrom(corners.at(i), indexed(object.placeOf("outline_m"), i)));
  }
  element.joint = jointFrom(object.value("joint"), object.placeOf("joint"));
  return element;
}

hang::Chain chainFrom(const QJsonValue& value) {
  const JsonObject object(value, "chain", {"pitch_m", "fixed_m", "mark", "held"});
  return {object.number("pitch_m"), object.number("fixed_m"), object.whole("mark"), object.whole("held")};
}

hang::Setting settingFrom(const QJsonValue& value) {
  const JsonObject object(value, "set", {"tilt_deg", "actuator_deg", "pan_deg"});
  return {object.numberIfGiven("tilt_deg"), object.numberIfGiven("actuator_deg"),
          object.numberIfGiven("pan_deg").value_or(0.0)};
}

hang::PullBack pullBackFrom(const QJsonValue& value) {
  const JsonObject object(value, "pull_back", {"element", "at_m", "line_deg", "force_kn", "tilt_deg"});
  hang::PullBack pull;
  pull.element = object.whole("element");
  pull.at = object.point("at_m");
  pull.lineDeg = object.numberIfGiven("line_deg").value_or(pull.lineDeg);
  if (const std::optional<double> force = object.numberIfGiven("force_kn")) {
    pull.force = *force * 1000.0;
  }
  pull.tiltDeg = object.numberIfGiven("tilt_deg");
  return pull;
}

} // namespace

int hangFormat(const QJsonValue& value) {
  return value.toObject().value(QLatin1String("format")) == QLatin1String("hangbook.hang/2") ? 2 : 1;
}

hang::Hang hangFromJson(const QJsonValue& value, int newest) {
  const bool second = hangFormat(value) == 2;
  if (second && newest < 2) {
    refuse("must be hangbook.hang/1", "format");
  }
  const JsonObject object =
      second ? JsonObject(value, "", {"format", "bar", "stack", "chain", "set", "pull_back"})
             : JsonObject(value, "", {"format", "bar", "stack", "chain", "set"});
  if (!second && object.text("format") != "hangbook.hang/1") {
    refuse(newest < 2 ? "must be hangbook.hang/1" : "must be hangbook.hang/1 or hangbook.hang/2", "format");
  }
  hang::Hang hang;
  hang.bar = barFrom(object.value("bar"));
  const QJsonArray stack = object.list("stack");
  if (static_cast<std::size_t>(stack.size()) > hang::mostElements) {
    refuse("must have at most " + std::to_string(hang::mostElements) + " elements", "stack");
  }
  for (qsizetype i = 0; i < stack.size(); ++i) {
    hang.stack.push_back(elementFrom(stack.at(i), indexed("stack", i)));
  }
  if (object.has("chain")) {
    hang.chain = chainFrom(object.value("chain"));
  }
  if (object.has("set")) {
    hang.set = settingFrom(object.value("set"));
  } else if (!std::holds_alternative<hang::SinglePick>(hang.bar.picks)) {
    refuse("is missing", "set");
  }
  if (second && object.has("pull_back")) {
    hang.pullBack = pullBackFrom(object.value("pull_back"));
  }
  hang::check(hang.bar, hang.stack, hang.chain);
  hang::check(hang.bar, hang.set);
  if (hang.pullBack) {
    hang::check(hang.bar, hang.stack, *hang.pullBack);
  }
  return hang;
}

} // namespace hangbook::exchange
