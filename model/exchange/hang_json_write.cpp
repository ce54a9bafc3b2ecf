// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hang_json.h"

#include <QJsonArray>
#include <QString>

namespace hangbook::exchange {
namespace {

QLatin1String key(const char* text) {
  return QLatin1String(text);
}

QJsonObject point(hang::Vec2 where) {
  return {{key("x"), where.x}, {key("z"), where.z}};
}

QJsonArray range(hang::Range travel) {
  return {travel.low, travel.high};
}

/// Newtons to the kN of the contract.
double kilo(double newtons) {
  return newtons / 1000.0;
}

struct PicksWriter {
  QJsonObject& bar;

  void operator()(const hang::SidePair& pair) const {
    bar[key("picks")] = key("side-pair");
    bar[key("pick_spacing_m")] = pair.pickSpacing;
    bar[key("head_mass_kg")] = pair.headMass;
    bar[key("head_cg_m")] = point(pair.headCg);
    bar[key("tilt_axis_m")] = point(pair.tiltAxis);
    bar[key("tilt_travel_deg")] = range(pair.tiltTravelDeg);
    bar[key("pan_travel_deg")] = range(pair.panTravelDeg);
  }
  void operator()(const hang::ForeAftPair& pair) const {
    bar[key("picks")] = key("fore-aft-pair");
    bar[key("front_pick_m")] = point(pair.frontPick);
    bar[key("rear_pick_m")] = point(pair.rearPick);
  }
  void operator()(const hang::SinglePick& single) const {
    bar[key("picks")] = key("single");
    bar[key("pick_m")] = point(single.pick);
  }
};

struct JointWriter {
  QJsonObject operator()(const hang::Seated& joint) const {
    QJsonObject out{{key("kind"), key("seated")},
                    {key("angle_deg"), joint.angleDeg},
                    {key("contact_m"), point(joint.contact)}};
    if (joint.openToDeg != 0.0) {
      out[key("open_to_deg")] = joint.openToDeg;
    }
    return out;
  }
  QJsonObject operator()(const hang::Pinned& joint) const {
    return {{key("kind"), key("pinned")},
            {key("angle_deg"), joint.angleDeg},
            {key("pins_m"), QJsonArray{point(joint.pins[0]), point(joint.pins[1])}}};
  }
  QJsonObject operator()(const hang::Pivot& joint) const {
    return {{key("kind"), key("pivot")}, {key("travel_deg"), range(joint.travelDeg)}};
  }
};

QJsonObject barToJson(const hang::Bar& bar) {
  QJsonObject out{{key("frame_mass_kg"), bar.frameMass},
                  {key("frame_cg_m"), point(bar.frameCg)},
                  {key("stack_pin_m"), point(bar.stackPin)}};
  std::visit(PicksWriter{out}, bar.picks);
  if (bar.chainAnchor) {
    out[key("chain_anchor_m")] = point(*bar.chainAnchor);
  }
  return out;
}

QJsonObject elementToJson(const hang::Element& element) {
  QJsonArray outline;
  for (const hang::Vec2 corner : element.outline) {
    outline.append(QJsonArray{corner.x, corner.z});
  }
  QJsonObject out{{key("name"), QString::fromStdString(element.name)},
                  {key("mass_kg"), element.mass},
                  {key("cg_m"), point(element.cg)},
                  {key("outline_m"), outline},
                  {key("joint"), std::visit(JointWriter{}, element.joint)}};
  if (element.nextPin) {
    out[key("next_pin_m")] = point(*element.nextPin);
  }
  if (element.chainEye) {
    out[key("chain_eye_m")] = point(*element.chainEye);
  }
  return out;
}

QJsonObject settingToJson(const hang::Setting& set) {
  QJsonObject out{{key("pan_deg"), set.panDeg}};
  if (set.tiltDeg) {
    out[key("tilt_deg")] = *set.tiltDeg;
  }
  if (set.actuatorDeg) {
    out[key("actuator_deg")] = *set.actuatorDeg;
  }
  return out;
}

QJsonObject jointToJson(const hang::JointStatics& joint) {
  QJsonArray pins;
  for (int i = 0; i < joint.pinCount; ++i) {
    pins.append(kilo(joint.pinForces[static_cast<std::size_t>(i)]));
  }
  QJsonObject out{{key("angle_deg"), joint.angleDeg},
                  {key("gravity_moment_knm"), kilo(joint.gravityMoment)},
                  {key("pin_kn"), pins}};
  if (joint.contact) {
    out[key("contact_kn")] = kilo(*joint.contact);
  }
  return out;
}

QJsonObject settledJointToJson(const hang::SettledJoint& joint) {
  QJsonArray pins;
  for (int i = 0; i < joint.pinCount; ++i) {
    pins.append(kilo(joint.pinForces[static_cast<std::size_t>(i)]));
  }
  QJsonObject out{{key("angle_deg"), joint.angleDeg},
                  {key("open_deg"), joint.openDeg},
                  {key("aim_deg"), joint.aimDeg},
                  {key("pin_kn"), pins}};
  if (joint.seated) {
    out[key("contact_kn")] = joint.contact ? QJsonValue(kilo(*joint.contact)) : QJsonValue();
  }
  if (joint.stop) {
    out[key("stop_kn")] = kilo(*joint.stop);
  }
  return out;
}

/// What statics and settled shape have alike: mass, centre, attitude, bottom, picks.
template <class Solved>
QJsonObject wholeToJson(const Solved& solved) {
  QJsonArray picks;
  for (std::size_t i = 0; i < solved.pickCount; ++i) {
    const hang::PickLoad& pick = solved.pickLoads[i];
    const std::string_view name = nameOf(pick.name);
    picks.append(QJsonObject{{key("name"), QLatin1String(name.data(), static_cast<qsizetype>(name.size()))},
                             {key("load_kn"), kilo(pick.load)}});
  }
  QJsonObject out{{key("mass_kg"), solved.mass},
                  {key("cg_m"), QJsonArray{solved.cg.x, solved.cg.y, solved.cg.z}},
                  {key("tilt_deg"), solved.tiltDeg},
                  {key("bottom_m"), solved.bottom},
                  {key("picks"), picks}};
  if (solved.side) {
    out[key("azimuth_deg")] = solved.side->azimuthDeg;
    out[key("roll_deg")] = solved.side->rollDeg;
    out[key("actuator_deg")] = solved.side->actuatorDeg;
    out[key("head_swing_deg")] = solved.side->headSwingDeg;
  }
  return out;
}

} // namespace

QJsonObject toJson(const hang::Hang& hang) {
  QJsonArray stack;
  for (const hang::Element& element : hang.stack) {
    stack.append(elementToJson(element));
  }
  QJsonObject out{{key("format"), key("hangbook.hang/1")},
                  {key("bar"), barToJson(hang.bar)},
                  {key("stack"), stack},
                  {key("set"), settingToJson(hang.set)}};
  if (hang.chain) {
    out[key("chain")] = QJsonObject{{key("pitch_m"), hang.chain->pitch},
                                    {key("fixed_m"), hang.chain->fixed},
                                    {key("mark"), hang.chain->mark},
                                    {key("held"), hang.chain->held}};
  }
  if (hang.pullBack) {
    const hang::PullBack& pull = *hang.pullBack;
    QJsonObject line{
        {key("element"), pull.element}, {key("at_m"), point(pull.at)}, {key("line_deg"), pull.lineDeg}};
    if (pull.force) {
      line[key("force_kn")] = kilo(*pull.force);
    }
    if (pull.tiltDeg) {
      line[key("tilt_deg")] = *pull.tiltDeg;
    }
    out[key("format")] = key("hangbook.hang/2");
    out[key("pull_back")] = line;
  }
  return out;
}

QJsonObject toJson(const hang::Statics& statics) {
  QJsonObject out = wholeToJson(statics);
  out[key("format")] = key("hangbook.statics/1");
  QJsonArray joints;
  for (const hang::JointStatics& joint : statics.joints) {
    joints.append(jointToJson(joint));
  }
  out[key("joints")] = joints;
  if (statics.chain) {
    out[key("chain")] = QJsonObject{{key("length_m"), statics.chain->length},
                                    {key("straight_m"), statics.chain->straight},
                                    {key("slack_m"), statics.chain->slack},
                                    {key("tension_kn"), kilo(statics.chain->tension)}};
  }
  return out;
}

QJsonObject toSecondJson(const hang::Statics& statics) {
  QJsonObject out = toJson(statics);
  out[key("format")] = key("hangbook.statics/2");
  QJsonArray joints = out[key("joints")].toArray();
  for (qsizetype i = 0; i < joints.size(); ++i) {
    const hang::JointStatics& joint = statics.joints[static_cast<std::size_t>(i)];
    QJsonObject each = joints[i].toObject();
    each[key("aim_deg")] = joint.aimDeg;
    each[key("sideways_kn")] = kilo(joint.sideways);
    each[key("sideways_moment_knm")] = QJsonArray{kilo(joint.sidewaysMoment.x), kilo(joint.sidewaysMoment.z)};
    if (joint.end) {
      QJsonArray pins;
      for (int pin = 0; pin < joint.pinCount; ++pin) {
        pins.append(kilo(joint.end->pinForces[static_cast<std::size_t>(pin)]));
      }
      QJsonObject end{{key("pin_kn"), pins}};
      if (joint.end->contact) {
        end[key("contact_kn")] = kilo(*joint.end->contact);
      }
      each[key("end")] = end;
    }
    joints[i] = each;
  }
  out[key("joints")] = joints;
  if (statics.chain) {
    QJsonObject chain = out[key("chain")].toObject();
    chain[key("tension_most_kn")] = kilo(statics.chain->most);
    out[key("chain")] = chain;
  }
  if (statics.pullBack) {
    out[key("pull_back")] = QJsonObject{{key("force_kn"), kilo(statics.pullBack->force)},
                                        {key("hoist_lean_deg"), statics.pullBack->hoistLeanDeg}};
  }
  return out;
}

QJsonObject toJson(const hang::Settled& settled) {
  QJsonObject out = wholeToJson(settled);
  out[key("format")] = key("hangbook.settled/1");
  QJsonArray joints;
  for (const hang::SettledJoint& joint : settled.joints) {
    joints.append(settledJointToJson(joint));
  }
  out[key("joints")] = joints;
  if (settled.chain) {
    const std::optional<double>& tension = settled.chain->tension;
    out[key("chain")] = QJsonObject{{key("length_m"), settled.chain->length},
                                    {key("straight_m"), settled.chain->straight},
                                    {key("taut"), settled.chain->taut},
                                    {key("tension_kn"), tension ? QJsonValue(kilo(*tension)) : QJsonValue()}};
  }
  return out;
}

} // namespace hangbook::exchange
