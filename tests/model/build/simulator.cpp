// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/build/simulator.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <map>
#include <numbers>
#include <optional>
#include <set>

#include "hang/layout.h"
#include "hang/solve.h"

namespace hangbook::testing {
namespace {

using Point = std::complex<double>; // x forward, y up
constexpr double touch = 1e-6;

Point at(hang::Vec2 place) {
  return {place.x, place.z};
}
Point turn(double degrees) {
  return std::polar(1.0, degrees * std::numbers::pi / 180.0);
}

/// One attitude of what hangs, heights from the hooks' origin.
struct Attitude {
  std::vector<std::vector<double>> corners; ///< heights: of the bar, then of each cabinet
  std::vector<double> picks;
  double pin = 0.0; ///< of the next cabinet
};

double lowestOf(const std::vector<double>& heights) {
  return *std::min_element(heights.begin(), heights.end());
}

struct Body {
  const build::Hanging& of;

  double actuator() const {
    const auto* side = std::get_if<hang::SidePair>(&of.rig.bar.picks);
    return side == nullptr ? 0.0 : std::min(std::max(0.0, side->tiltTravelDeg.low), side->tiltTravelDeg.high);
  }
  double angle(std::size_t element, double pivot) const {
    const hang::Joint& joint = of.rig.stack[element].joint;
    if (const auto* pinned = std::get_if<hang::Pinned>(&joint)) {
      return pinned->angleDeg;
    }
    const auto* seated = std::get_if<hang::Seated>(&joint);
    return seated != nullptr ? seated->angleDeg : pivot;
  }

  /// The frame steered to a tilt.
  Attitude steered(int cabinets, double tilt, double pivot) const {
    Point frame;
    Attitude made;
    made.picks = {0.0};
    const Point turned = turn(tilt);
    if (const auto* side = std::get_if<hang::SidePair>(&of.rig.bar.picks)) {
      frame = turn(tilt - actuator()) * at(side->tiltAxis);
    } else if (const auto* pair = std::get_if<hang::ForeAftPair>(&of.rig.bar.picks)) {
      frame = -turned * at(pair->frontPick);
      made.picks.push_back((turned * (at(pair->rearPick) - at(pair->frontPick))).imag());
    } else {
      frame = -turned * at(std::get<hang::SinglePick>(of.rig.bar.picks).pick);
    }
    made.corners.emplace_back();
    for (const hang::Vec2& corner : of.barOutline) {
      made.corners.back().push_back((frame + turned * at(corner)).imag());
    }
    Point pin = frame + turned * at(of.rig.bar.stackPin);
    Point way = turned;
    for (int i = 0; i < cabinets; ++i) {
      const auto index = static_cast<std::size_t>(i);
      way *= turn(angle(index, pivot));
      made.corners.emplace_back();
      for (const hang::Vec2& corner : of.rig.stack[index].outline) {
        made.corners.back().push_back((pin + way * at(corner)).imag());
      }
      if (of.rig.stack[index].nextPin) {
        pin += way * at(*of.rig.stack[index].nextPin);
      }
    }
    made.pin = pin.imag();
    return made;
  }

  /// The tilt that the statics give for what hangs.
  double rest(int cabinets, double pivot) const {
    if (std::holds_alternative<hang::ForeAftPair>(of.rig.bar.picks)) {
      return 0.0;
    }
    hang::Hang part = of.rig;
    part.chain.reset();
    part.set = {};
    if (std::holds_alternative<hang::SidePair>(part.bar.picks)) {
      part.set.actuatorDeg = actuator();
      auto& side = std::get<hang::SidePair>(part.bar.picks);
      side.panTravelDeg = {std::min(0.0, side.panTravelDeg.low), std::max(0.0, side.panTravelDeg.high)};
    }
    if (cabinets == 0) { // the statics want a stack: one of no mass to speak of
      hang::Element nothing = part.stack.front();
      nothing.mass = 1e-9;
      nothing.joint = hang::Pinned{0.0, {hang::Vec2{0, 0}, hang::Vec2{-0.1, 0}}};
      part.stack = {nothing};
    } else {
      part.stack.resize(static_cast<std::size_t>(cabinets));
      for (hang::Element& each : part.stack) {
        if (std::holds_alternative<hang::Pivot>(each.joint)) {
          each.joint = hang::Pinned{pivot, {hang::Vec2{0, 0}, hang::Vec2{-0.1, 0}}};
        }
      }
    }
    return hang::solve(part).tiltDeg;
  }

  /// How it may hang by itself: a pivot without chain anywhere in its travel.
  std::vector<Attitude> byItself(int cabinets) const {
    std::vector<double> pivots{0.0};
    for (int i = 0; i < cabinets; ++i) {
      if (const auto* pivot = std::get_if<hang::Pivot>(&of.rig.stack[static_cast<std::size_t>(i)].joint)) {
        pivots.clear();
        for (int part = 0; part <= 20; ++part) {
          pivots.push_back(pivot->travelDeg.low + part * (pivot->travelDeg.high - pivot->travelDeg.low) / 20);
        }
      }
    }
    std::vector<Attitude> all;
    for (const double pivot : pivots) {
      all.push_back(steered(cabinets, rest(cabinets, pivot), pivot));
    }
    return all;
  }

  /// As it is steered for the next cabinet, which stands level.
  Attitude joining(int cabinets) const {
    double sum = 0.0;
    for (int i = 0; i <= cabinets; ++i) {
      const auto index = static_cast<std::size_t>(i);
      const auto* pivot = std::get_if<hang::Pivot>(&of.rig.stack[index].joint);
      sum +=
          angle(index, pivot != nullptr ? std::min(std::max(0.0, pivot->travelDeg.low), pivot->travelDeg.high)
                                        : 0.0);
    }
    return steered(cabinets, -sum, 0.0);
  }
};

struct Floor {
  std::optional<std::size_t> cart; ///< under the hang
  double hooks = 0.0;
  int hung = 0;
  bool joining = false; ///< lowered on, pins not yet in
  bool held = false;    ///< what was joined is still fast to its cart
  std::set<std::string> gates;
  bool chain = false;
  bool cleared = false;
};

class Simulation {
public:
  Simulation(const build::Job& job, const build::Plan& plan)
      : job_(job), plan_(plan), floors_(job.hangs.size()) {
    for (const build::CartRide& ride : plan.carts) {
      gone_.emplace_back(ride.columns.size(), 0);
    }
  }

  std::vector<std::string> run() {
    for (const build::Step& step : plan_.steps) {
      step_ = &step;
      hang_ = 0;
      while (hang_ < job_.hangs.size() && job_.hangs[hang_].hang != step.hang) {
        ++hang_;
      }
      if (hang_ == job_.hangs.size()) {
        wrong("a hang that is not there");
        continue;
      }
      carryOut();
    }
    atTheEnd();
    return wrongs_;
  }

private:
  void wrong(const std::string& what) {
    wrongs_.push_back(step_ == nullptr
                          ? what
                          : "step " + std::to_string(step_->number) + ", " + step_->hang.toStdString() +
                                ": " + what + " (" + step_->what.toStdString() + ")");
  }
  Floor& floor() { return floors_[hang_]; }
  Body body() const { return {job_.hangs[hang_]}; }

  const build::Carts* cartsOf(std::size_t ride) const {
    for (const build::Carts& each : job_.carts) {
      if (each.cabinet == plan_.carts[ride].cabinet) {
        return &each;
      }
    }
    return nullptr;
  }
  const hang::Element& onCart(std::size_t ride, std::size_t column, std::size_t place) const {
    const auto& where = plan_.carts[ride].columns[column][place];
    return job_.hangs[static_cast<std::size_t>(where.hang)]
        .rig.stack[static_cast<std::size_t>(where.element)];
  }
  static double span(const hang::Element& element, double& underside) {
    double low = element.outline.front().z;
    double high = low;
    for (const hang::Vec2& corner : element.outline) {
      low = std::min(low, corner.z);
      high = std::max(high, corner.z);
    }
    underside = low;
    return high - low;
  }
  double heightUnder(std::size_t ride, std::size_t column, std::size_t place) const {
    double height = cartsOf(ride)->deck;
    double ignored = 0.0;
    for (std::size_t i = place + 1; i < plan_.carts[ride].columns[column].size(); ++i) {
      height += span(onCart(ride, column, i), ignored);
    }
    return height;
  }
  double topOf(std::size_t ride) const {
    double top = cartsOf(ride)->deck;
    double ignored = 0.0;
    for (std::size_t c = 0; c < plan_.carts[ride].columns.size(); ++c) {
      const auto& column = plan_.carts[ride].columns[c];
      const auto first = static_cast<std::size_t>(gone_[ride][c]);
      if (first < column.size()) {
        const auto& place = column[first];
        top = std::max(top, heightUnder(ride, c, first) + span(onCart(ride, c, first), ignored) +
                                job_.hangs[static_cast<std::size_t>(place.hang)]
                                    .engagement[static_cast<std::size_t>(place.element)]);
      }
    }
    return top;
  }
  std::size_t rideOf() {
    for (std::size_t i = 0; i < plan_.carts.size(); ++i) {
      if (plan_.carts[i].name == step_->cart) {
        return i;
      }
    }
    wrong("a cart that is not there");
    return 0;
  }

  double lowestByItself() {
    double low = std::numeric_limits<double>::infinity();
    for (const Attitude& each : body().byItself(floor().hung)) {
      for (const auto& part : each.corners) {
        low = std::min(low, lowestOf(part));
      }
    }
    return floor().hooks + low;
  }

  void reach(const std::vector<Attitude>& attitudes) {
    const build::Hanging& of = job_.hangs[hang_];
    for (const Attitude& each : attitudes) {
      for (const double pick : each.picks) {
        if (floor().hooks + pick > of.highestHook + touch) {
          wrong("hooks beyond the hoist's reach");
        }
      }
      for (const auto& part : each.corners) {
        if (floor().hooks + *std::max_element(part.begin(), part.end()) > of.ceiling + touch) {
          wrong("the hang touches what is above it");
        }
      }
    }
  }

  /// Wheeling a cart beneath what hangs.
  void wheel(std::size_t ride) {
    const double gap = lowestByItself() - topOf(ride);
    if (gap < job_.cartClearance - touch) {
      wrong("cart and hang come within " + std::to_string(gap) + " m");
    }
  }

  void carryOut() {
    using build::StepKind;
    switch (step_->kind) {
    case StepKind::barInPlace:
      floor().hooks = step_->hooks.value_or(-1.0);
      break;
    case StepKind::raise:
      raise();
      break;
    case StepKind::cartIn: {
      const std::size_t ride = rideOf();
      for (const Floor& other : floors_) {
        if (other.cart == ride) {
          wrong("the cart stands under a hang already");
        }
      }
      if (floor().cart) {
        wrong("another cart stands there");
      }
      wheel(ride);
      floor().cart = ride;
      break;
    }
    case StepKind::lowerOn:
      lowerOn();
      break;
    case StepKind::pin:
      pin();
      break;
    case StepKind::releaseCart:
      floor().held = false;
      break;
    case StepKind::cartAway:
    case StepKind::cartAcross: {
      const std::size_t ride = rideOf();
      if (floor().cart != ride) {
        wrong("that cart is not under it");
      }
      if (floor().held || floor().joining) {
        wrong("the cart is wheeled away with the hang on it");
      }
      wheel(ride);
      floor().cart.reset();
      break;
    }
    case StepKind::chainOn:
      if (floor().cart) {
        wrong("the chain goes on over a cart");
      }
      floor().chain = true;
      if (!job_.hangs[hang_].rig.chain || step_->mark != job_.hangs[hang_].rig.chain->mark ||
          step_->element > floor().hung) {
        wrong("not the mark or the cabinet of the hang");
      }
      break;
    case StepKind::clearBelow:
      floor().cleared = true;
      break;
    default:
      break;
    }
    if (!step_->gate.isEmpty()) {
      floor().gates.insert(step_->gate.toStdString());
    }
  }

  void raise() {
    if (floor().joining) {
      wrong("it is lifted without its pins");
    }
    if (floor().held) {
      wrong("the cart is still fast to it");
    }
    if (!step_->move || !step_->hooks) {
      wrong("no height");
      return;
    }
    floor().hooks += *step_->move;
    if (std::abs(floor().hooks - *step_->hooks) > touch) {
      wrong("move and height do not agree");
    }
    if (floor().cart && lowestByItself() < topOf(*floor().cart) - touch) {
      wrong("it swings into what stands on the cart");
    }
    if (floor().hooks < 0 || lowestByItself() < 0) {
      wrong("it touches the floor");
    }
    if (step_->hooks && !floor().cleared) {
      reach(body().byItself(floor().hung));
    }
  }

  void lowerOn() {
    const std::size_t ride = rideOf();
    if (floor().cart != ride) {
      wrong("that cart is not under it");
      return;
    }
    if (floor().joining) {
      wrong("the cabinet before is not pinned");
    }
    floor().hooks += step_->move.value_or(1e9);
    // The cabinet must stand on top of one of the columns, with nothing of another hang above it.
    for (std::size_t c = 0; c < plan_.carts[ride].columns.size(); ++c) {
      const auto& column = plan_.carts[ride].columns[c];
      const auto first = static_cast<std::size_t>(gone_[ride][c]);
      if (first >= column.size() || column[first].hang != static_cast<int>(hang_) ||
          column[first].element != floor().hung) {
        continue;
      }
      double underside = 0.0;
      const double height = span(onCart(ride, c, first), underside);
      const double pinAt = heightUnder(ride, c, first) - underside;
      const Attitude steered = body().joining(floor().hung);
      if (std::abs(floor().hooks + steered.pin - pinAt) > 1e-4) {
        wrong("the pin holes do not line up");
      }
      // The lowest that hangs may rest on it; what hangs above that must not be down to it.
      for (std::size_t part = 0; part + 1 < steered.corners.size(); ++part) {
        if (floor().hooks + lowestOf(steered.corners[part]) <
            heightUnder(ride, c, first) + height - 0.2 * height - touch) {
          wrong("what hangs above strikes the cabinet on the cart");
        }
      }
      reach({steered});
      ++gone_[ride][c];
      ++floor().hung;
      floor().joining = true;
      floor().held = true;
      return;
    }
    wrong("the cabinet that comes next is not on top of this cart");
  }

  void pin() {
    if (!floor().joining || step_->element != floor().hung) {
      wrong("pins without a cabinet lowered on");
      return;
    }
    const hang::Joint& joint = job_.hangs[hang_].rig.stack[static_cast<std::size_t>(floor().hung) - 1].joint;
    const int needed = std::holds_alternative<hang::Pinned>(joint) ? 2 : 1;
    if (step_->pinsASide != needed) {
      wrong("a pin is missing");
    }
    if (!step_->what.contains(QStringLiteral("left")) || !step_->what.contains(QStringLiteral("right"))) {
      wrong("pins on one side only");
    }
    floor().joining = false;
  }

  void atTheEnd() {
    step_ = nullptr;
    for (std::size_t h = 0; h < job_.hangs.size(); ++h) {
      const build::Hanging& of = job_.hangs[h];
      const Floor& end = floors_[h];
      const std::string name = of.hang.toStdString();
      if (end.hung != static_cast<int>(of.rig.stack.size()) || end.joining || end.cart) {
        wrong(name + ": not all of it hangs");
      }
      if (of.rig.chain && !end.chain) {
        wrong(name + ": no chain");
      }
      if (std::abs(end.hooks - of.hooksAtTrim) > touch) {
        wrong(name + ": not at trim");
      }
      for (int i = 1; i <= end.hung; ++i) {
        if (!end.gates.contains("pins " + std::to_string(i))) {
          wrong(name + ": nobody signs for the pins of cabinet " + std::to_string(i));
        }
      }
      if (!end.gates.contains("secondary steel") || !end.gates.contains("final check") ||
          (of.rig.chain && !end.gates.contains("chain"))) {
        wrong(name + ": a hold point is missing");
      }
    }
    for (std::size_t r = 0; r < plan_.carts.size(); ++r) {
      for (std::size_t c = 0; c < plan_.carts[r].columns.size(); ++c) {
        if (gone_[r][c] != static_cast<int>(plan_.carts[r].columns[c].size())) {
          wrong("a cabinet is left on " + plan_.carts[r].name.toStdString());
        }
      }
    }
  }

  const build::Job& job_;
  const build::Plan& plan_;
  std::vector<Floor> floors_;
  std::vector<std::vector<int>> gone_; ///< of each ride, of each column
  const build::Step* step_ = nullptr;
  std::size_t hang_ = 0;
  std::vector<std::string> wrongs_;
};

} // namespace

std::vector<std::string> carryOut(const build::Job& job, const build::Plan& plan) {
  return Simulation(job, plan).run();
}

} // namespace hangbook::testing
