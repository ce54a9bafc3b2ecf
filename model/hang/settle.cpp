// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/settle.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "hang/chain.h"
#include "hang/check.h"
#include "hang/descent.h"
#include "hang/joints.h"
#include "hang/solve.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

/// Radians: nearer to an end than this is at the end.
constexpr double endSlack = 1e-10;

/// Which joints can move, from where, and how far.
struct Freedom {
  std::vector<std::size_t> joints;
  Eigen::VectorXd start;
  Eigen::VectorXd low;
  Eigen::VectorXd high;
};

Freedom freedomOf(const std::vector<Element>& stack, const Assembly& closed) {
  Freedom freedom;
  std::vector<std::array<double, 3>> ways;
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const double closedDeg = closed.pieces[i].jointDeg;
    if (const auto* seated = std::get_if<Seated>(&stack[i].joint);
        seated != nullptr && seated->openToDeg > 0.0) {
      ways.push_back({closedDeg, closedDeg, closedDeg + seated->openToDeg});
    } else if (const auto* pivot = std::get_if<Pivot>(&stack[i].joint)) {
      const Range travel = pivot->travelDeg;
      ways.push_back({std::clamp(closedDeg, travel.low, travel.high), travel.low, travel.high});
    } else {
      continue;
    }
    freedom.joints.push_back(i);
  }
  const auto count = static_cast<Eigen::Index>(ways.size());
  freedom.start.resize(count);
  freedom.low.resize(count);
  freedom.high.resize(count);
  for (Eigen::Index i = 0; i < count; ++i) {
    const auto& way = ways[static_cast<std::size_t>(i)];
    freedom.start(i) = toRadians(way[0]);
    freedom.low(i) = toRadians(way[1]);
    freedom.high(i) = toRadians(way[2]);
  }
  return freedom;
}

enum class Place { fixed, closed, open, stop };

/// Where each joint has come to rest.
std::vector<Place> placesOf(const std::vector<Element>& stack, const Freedom& freedom, const Rest& rest) {
  std::vector<Place> places(stack.size(), Place::fixed);
  for (std::size_t k = 0; k < freedom.joints.size(); ++k) {
    const auto i = static_cast<Eigen::Index>(k);
    Place& place = places[freedom.joints[k]];
    place = Place::open;
    if (rest.angles(i) <= freedom.low(i) + endSlack) {
      place = Place::closed;
    } else if (rest.angles(i) >= freedom.high(i) - endSlack) {
      place = Place::stop;
    }
  }
  return places;
}

/// The least tension that the joints at their ends allow: a closed one must not be pulled open.
double leastAllowed(const Assembly& assembly, const std::vector<Element>& stack,
                    const std::vector<Place>& places, int held, Vec2 up) {
  double least = 0.0;
  for (std::size_t i = 0; i < static_cast<std::size_t>(held); ++i) {
    if (places[i] != Place::closed || !std::holds_alternative<Seated>(stack[i].joint)) {
      continue;
    }
    const Piece& piece = assembly.pieces[i];
    const double closing = -moment(assembly.line->eye - piece.pin, assembly.line->towardsAnchor);
    if (closing > lengthSlack) {
      least = std::max(least, gravityMoment(piece, up) / closing);
    }
  }
  return least;
}

SettledChain chainAtRest(const Hang& hang, const ShapeEnergy& energy, const std::vector<Place>& places,
                         double pull) {
  const Assembly& assembly = energy.assembly();
  SettledChain chain;
  chain.length = chainLength(*hang.chain);
  chain.straight = assembly.line->straight;
  chain.taut = chain.straight >= chain.length - lengthSlack;
  chain.tension = 0.0;
  if (!chain.taut) {
    return chain;
  }
  for (std::size_t i = 0; i < static_cast<std::size_t>(hang.chain->held); ++i) {
    if (places[i] == Place::open) {
      chain.tension = std::max(0.0, pull * energy.balance().mass * standardGravity);
      chain.least = *chain.tension;
      return chain;
    }
  }
  chain.tension.reset();
  chain.least =
      leastAllowed(assembly, hang.stack, places, hang.chain->held, energy.balance().attitude.upInPlane());
  return chain;
}

SettledJoint jointAtRest(const Element& element, const Piece& piece, const Load& load, Place place) {
  const JointStatics carried = jointUnder(element.joint, piece, load);
  SettledJoint joint;
  joint.angleDeg = piece.jointDeg;
  joint.pinForces = carried.pinForces;
  joint.pinCount = carried.pinCount;
  const auto* seated = std::get_if<Seated>(&element.joint);
  if (seated == nullptr) {
    return joint;
  }
  joint.seated = true;
  // At an end the given figures, not what they are after radians and back.
  joint.openDeg = place == Place::stop   ? seated->openToDeg
                  : place == Place::open ? std::max(0.0, piece.jointDeg - seated->angleDeg)
                                         : 0.0;
  joint.angleDeg = seated->angleDeg + joint.openDeg;
  const double push = carried.contact.value_or(0.0);
  if (place == Place::stop || (place == Place::fixed && push < 0.0)) {
    joint.stop = std::max(0.0, -push);
  } else if (place == Place::open) {
    joint.contact = 0.0;
  } else {
    joint.contact = std::max(0.0, push); // below 0 by rounding alone: the descent has freed every other
  }
  return joint;
}

/// The setting that stays while the hang settles: on a side-pair, the actuator's angle.
Setting heldSetting(const Hang& hang, const Assembly& closed) {
  Setting held = hang.set;
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks); pair != nullptr && held.tiltDeg) {
    held.actuatorDeg = actuatorFor(*pair, closed, *held.tiltDeg, held.panDeg);
    held.tiltDeg.reset();
  }
  return held;
}

bool finite(const Settled& settled) {
  double sum = settled.cg.x + settled.cg.y + settled.cg.z + settled.tiltDeg + settled.bottom +
               settled.pickLoads[0].load + settled.pickLoads[1].load;
  if (settled.chain) {
    sum += settled.chain->straight + settled.chain->least;
  }
  for (const SettledJoint& joint : settled.joints) {
    sum += joint.angleDeg + joint.aimDeg + joint.contact.value_or(0.0) + joint.stop.value_or(0.0) +
           joint.pinForces[0] + joint.pinForces[1];
  }
  return std::isfinite(sum);
}

} // namespace

Settled settle(const Hang& hang) {
  check(hang.bar, hang.set);
  const Solver assembled(hang.bar, hang.stack, hang.chain);
  const Assembly& closed = assembled.assembly();
  const Setting held = heldSetting(hang, closed);
  balance(hang.bar, closed, held); // refuses what no shape can mend

  const Freedom freedom = freedomOf(hang.stack, closed);
  std::vector<double> closedDeg;
  for (const Piece& piece : closed.pieces) {
    closedDeg.push_back(piece.jointDeg);
  }
  ShapeEnergy energy(hang, held, closedDeg, freedom.joints);
  const double limit = hang.chain ? chainLength(*hang.chain) : std::numeric_limits<double>::infinity();
  const Rest rest = runDown(energy, freedom.start, freedom.low, freedom.high, limit);
  const std::vector<Place> places = placesOf(hang.stack, freedom, rest);

  const Balance& settledBalance = energy.balance();
  const Attitude& attitude = settledBalance.attitude;
  const Assembly& assembly = energy.assembly();
  Settled settled;
  settled.mass = settledBalance.mass;
  settled.cg = settledBalance.cg;
  settled.tiltDeg = settledBalance.tiltDeg;
  settled.side = settledBalance.side;
  settled.pickLoads = settledBalance.pickLoads;
  settled.pickCount = settledBalance.pickCount;
  settled.bottom = attitude.height(assembly.corners.front());
  for (const Vec2 corner : assembly.corners) {
    settled.bottom = std::min(settled.bottom, attitude.height(corner));
  }
  Vec2 pull;
  if (hang.chain) {
    settled.chain = chainAtRest(hang, energy, places, rest.pull);
    pull = settled.chain->least * assembly.line->towardsAnchor;
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    const Piece& piece = assembly.pieces[i];
    const bool pulled = hang.chain && static_cast<int>(i) < hang.chain->held;
    const Load load{attitude.upInPlane(), pulled ? pull : Vec2{}, pulled ? assembly.line->eye : piece.pin,
                    pulled && settled.chain->tension.has_value()};
    settled.joints.push_back(jointAtRest(hang.stack[i], piece, load, places[i]));
    settled.joints.back().aimDeg = aimOf(piece, attitude);
  }
  if (!finite(settled)) {
    throw Error(Trouble::notPossible, "the figures of this hang run beyond what can be computed");
  }
  return settled;
}

} // namespace hangbook::hang
