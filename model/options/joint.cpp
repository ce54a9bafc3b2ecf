// SPDX-License-Identifier: GPL-3.0-or-later
// joint: the worst pin of each joint on its more loaded side, and the push or pull at the rear of each seated
// one, with factors, are within their usable limits, as set and at the worst step of the build and of aiming.
// Where balance leaves open what the chain carries, both ends of that count.
#include <algorithm>
#include <cmath>

#include "hang/sides.h"
#include "options/build_force.h"
#include "options/joint_sides.h"
#include "options/loads.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

/// `which` = element (counted from 0) × 16 + part, + 4 with the chain at the other end of what it may carry,
/// + 8 for the most on the way to the hang as set.
enum Part { firstPin, secondPin, contactPart, stopPart };
constexpr int parts = 16;
constexpr int otherEnd = 4;
constexpr int onTheWay = 8;

int partOf(const Use& use) {
  return use.which % otherEnd;
}
bool isOtherEnd(const Use& use) {
  return (use.which & otherEnd) != 0;
}
bool isOnTheWay(const Use& use) {
  return (use.which & onTheWay) != 0;
}

hang::SidePin pinOf(const Case& option, const Settled& settled, std::size_t element, std::size_t pin,
                    bool end) {
  const hang::JointStatics& joint = settled.statics.joints[element];
  const auto& loads = end ? joint.end->pinLoads : joint.pinLoads;
  return hang::onSide(joint, loads[pin], sideShare(option, *option.joins[element]),
                      sidesApart(option, element));
}

/// The same at the worst step on the way, whichever end of the chain that is.
hang::SidePin builtPinOf(const Case& option, const Settled& settled, std::size_t element, std::size_t pin) {
  const hang::JointMost& most = settled.build.carried.joints[element].most;
  hang::JointStatics joint;
  joint.pinCount = settled.statics.joints[element].pinCount;
  joint.sideways = most.sideways;
  joint.sidewaysMoment = {0.0, most.roll};
  return hang::onSide(joint, {0.0, -most.pins.at(pin)}, sideShare(option, *option.joins[element]),
                      sidesApart(option, element));
}

/// The worst of one joint, at one end.
struct Worst {
  const Case& option;
  const Settled& settled;
  WorstUse use{};

  void addJoint(std::size_t element, bool end) {
    const catalogue::Join& join = *option.joins[element];
    const hang::JointStatics& joint = settled.statics.joints[element];
    const double factors = factorsFor(*option.weight, join.limitIncludesFactors);
    const int first = static_cast<int>(element) * parts + (end ? otherEnd : 0);
    for (int pin = 0; pin < joint.pinCount; ++pin) {
      const double force = pinOf(option, settled, element, static_cast<std::size_t>(pin), end).force;
      use.add(loadUse(force * factors, usableOf(option, join.pinLimit), first + pin));
    }
    if (const auto& contact = end ? joint.end->contact : joint.contact) {
      use.add(loadUse(*contact * factors, usableOf(option, join.contactLimit), first + contactPart));
    }
    if (const auto& stop = end ? joint.end->stop : joint.stop) {
      use.add(loadUse(*stop * factors, usableOf(option, join.stopLimit), first + stopPart));
    }
  }

  /// What is more on the way than as set.
  void addBuilt(std::size_t element) {
    if (settled.build.carried.joints.empty()) {
      return;
    }
    constexpr double more = 1.0 + 1e-9;
    const catalogue::Join& join = *option.joins[element];
    const hang::JointStatics& joint = settled.statics.joints[element];
    const hang::JointMost& most = settled.build.carried.joints[element].most;
    const double factors = factorsFor(*option.weight, join.limitIncludesFactors);
    const int first = static_cast<int>(element) * parts + onTheWay;
    for (int pin = 0; pin < joint.pinCount; ++pin) {
      const auto number = static_cast<std::size_t>(pin);
      const double force = builtPinOf(option, settled, element, number).force;
      const double asSet = pinOf(option, settled, element, number, false).force;
      const double atEnd = joint.end ? pinOf(option, settled, element, number, true).force : asSet;
      if (!(force <= more * std::max(asSet, atEnd))) { // what is not known is told as set
        use.add(loadUse(force * factors, usableOf(option, join.pinLimit), first + pin));
      }
    }
    const auto greatest = [](const std::optional<double>& one, const std::optional<double>& other) {
      return more * std::max(one.value_or(0.0), other.value_or(0.0));
    };
    if (most.contact > greatest(joint.contact, joint.end ? joint.end->contact : std::nullopt)) {
      use.add(loadUse(most.contact * factors, usableOf(option, join.contactLimit), first + contactPart));
    }
    if (most.stop > greatest(joint.stop, joint.end ? joint.end->stop : std::nullopt)) {
      use.add(loadUse(most.stop * factors, usableOf(option, join.stopLimit), first + stopPart));
    }
  }
};

Use evaluate(const Case& option, const Settled* settled, double) {
  Worst worst{option, *settled, {}};
  for (std::size_t i = 0; i < option.joins.size(); ++i) {
    worst.addJoint(i, false);
    if (settled->statics.joints[i].end) {
      worst.addJoint(i, true);
    }
    worst.addBuilt(i);
  }
  return carriedOver(*settled, boundedOver(*settled, worst.use.get().value()));
}

/// "front pin", "rear pin (hole at -3.0°)"
QString pinName(const Case& option, const Settled& settled, std::size_t element, int pin) {
  const catalogue::Join& join = *option.joins[element];
  const hang::JointStatics& joint = settled.statics.joints[element];
  QString name = QStringLiteral("front pin");
  if (joint.pinCount == 2) {
    const auto& pins = *option.cabinets[element]->pins;
    const auto self = static_cast<std::size_t>(pin);
    const double ahead = inMetres(pins[self].x) - inMetres(pins[1 - self].x);
    const double higher = inMetres(pins[self].z) - inMetres(pins[1 - self].z);
    if (ahead != 0.0) {
      name = std::signbit(ahead) ? QStringLiteral("rear pin") : QStringLiteral("front pin");
    } else {
      name = std::signbit(higher) ? QStringLiteral("lower pin") : QStringLiteral("upper pin");
    }
  }
  if (join.kind != catalogue::JointKind::pivot && join.angles.size() > 1) {
    name += QStringLiteral(" (hole at %1)").arg(inDeg(joint.angleDeg - joint.openDeg));
  }
  return name;
}

QString sideName(hang::Side side) {
  switch (side) {
  case hang::Side::left:
    return QStringLiteral("the left side");
  case hang::Side::right:
    return QStringLiteral("the right side");
  case hang::Side::either:
    break;
  }
  return QStringLiteral("either side");
}

/// What one side's pin takes, and how it comes to that.
QString pinWords(const Case& option, const Settled& settled, const Use& use, const QString& where) {
  const auto element = static_cast<std::size_t>(use.which / parts);
  const int pin = partOf(use);
  const hang::JointStatics& joint = settled.statics.joints[element];
  const auto number = static_cast<std::size_t>(pin);
  const bool built = isOnTheWay(use);
  const hang::SidePin worst = built ? builtPinOf(option, settled, element, number)
                                    : pinOf(option, settled, element, number, isOtherEnd(use));
  const double both = built ? settled.build.carried.joints[element].most.pins.at(number)
                            : hang::length((isOtherEnd(use) ? joint.end->pinLoads : joint.pinLoads)[number]);
  QString text = QStringLiteral("On %1 of %2 the %3 takes %4: %5 of the %6 on both sides")
                     .arg(sideName(worst.side), where, pinName(option, settled, element, pin),
                          inKn(worst.force), inTimes(sideShare(option, *option.joins[element])), inKn(both));
  if (worst.side != hang::Side::either) {
    text += QStringLiteral(", and what the roll turns over to that side (sides %1 apart)")
                .arg(inM(sidesApart(option, element)));
  }
  return text;
}

/// The step at which a joint carries most on the way.
hang::BuildMoment builtAt(const Settled& settled, const Use& use) {
  const hang::JointWorst& worst = settled.build.carried.joints[static_cast<std::size_t>(use.which / parts)];
  const int part = partOf(use);
  return part == contactPart ? worst.contactAt
         : part == stopPart  ? worst.stopAt
                             : worst.pinAt.at(static_cast<std::size_t>(part));
}

/// The push or pull at a joint's rear.
double rearOf(const Settled& settled, const Use& use) {
  const auto element = static_cast<std::size_t>(use.which / parts);
  const hang::JointStatics& joint = settled.statics.joints[element];
  const bool contact = partOf(use) == contactPart;
  if (isOnTheWay(use)) {
    const hang::JointMost& most = settled.build.carried.joints[element].most;
    return contact ? most.contact : most.stop;
  }
  if (isOtherEnd(use)) {
    return (contact ? joint.end->contact : joint.end->stop).value_or(notKnown);
  }
  return (contact ? joint.contact : joint.stop).value_or(notKnown);
}

/// When on the way; else the same joint part at the other end of the envelope, where that is another figure:
/// with all that the chain may carry and with nothing of it, or, where no chain helps, as what is in doubt
/// has it.
QString envelopeWords(const Case& option, const Settled& settled, const Use& use) {
  const auto element = static_cast<std::size_t>(use.which / parts);
  const int part = partOf(use);
  const bool end = isOtherEnd(use);
  const hang::JointStatics& joint = settled.statics.joints[element];
  if (isOnTheWay(use)) {
    return QStringLiteral(", %1").arg(momentWords(builtAt(settled, use), option));
  }
  if (!joint.end) {
    return {};
  }
  const bool rear = part == contactPart || part == stopPart;
  const auto pinAt = [&](bool atEnd) {
    return pinOf(option, settled, element, static_cast<std::size_t>(part), atEnd).force;
  };
  const double here = rear ? rearOf(settled, use) : pinAt(end);
  const double other = !rear ? pinAt(!end)
                             : (part == contactPart ? (end ? joint.contact : joint.end->contact)
                                                    : (end ? joint.stop : joint.end->stop))
                                   .value_or(0.0);
  if (here == other || std::isnan(here)) {
    return {};
  }
  if (!settled.statics.chain || static_cast<int>(element) >= option.held) {
    return QStringLiteral(" (between %1 and that, by what is in doubt)").arg(inKn(other));
  }
  return end ? QStringLiteral(" (with the chain at the most that it may carry, %1; else %2)")
                   .arg(inKn(settled.statics.chain->most), inKn(other))
             : QStringLiteral(" (with no more help from the chain than is sure; with %1 from it, %2)")
                   .arg(inKn(settled.statics.chain->most), inKn(other));
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  const WeightLimits& limits = *option.weight;
  const auto element = static_cast<std::size_t>(use.which / parts);
  const int part = partOf(use);
  const catalogue::Join& join = *option.joins[element];
  Finding finding = loadFinding("joint", use);
  finding.source = QStringLiteral("stacking table %1: %2").arg(option.table->name, option.table->source.text);
  const QString where =
      QStringLiteral("element %1 (%2)").arg(element + 1).arg(option.cabinets[element]->name);
  QString text;
  const std::optional<Force>* limit = &join.pinLimit;
  if (part == contactPart) {
    text = QStringLiteral("The rear contact of %1 pushes %2").arg(where, inKn(rearOf(*settled, use)));
    limit = &join.contactLimit;
  } else if (part == stopPart) {
    text = QStringLiteral("The rear stop of %1 carries %2").arg(where, inKn(rearOf(*settled, use)));
    limit = &join.stopLimit;
  } else {
    text = pinWords(option, *settled, use, where);
  }
  text += envelopeWords(option, *settled, use) +
          QStringLiteral("; with %1: %2")
              .arg(factorWords(limits, join.limitIncludesFactors), inKn(use.value * 1000.0));
  text += *limit ? QStringLiteral("; it may take %1").arg(inKn(use.limit * 1000.0))
                 : QStringLiteral("; the maker states no limit for it");
  finding.text = text + peopleWords(option, limits.accessory) + carriedUnknownWords(option, *settled) +
                 QStringLiteral(".");
  return finding;
}

} // namespace

const Rule jointRule{"joint", true, evaluate, nullptr, explain};

} // namespace hangbook::options
