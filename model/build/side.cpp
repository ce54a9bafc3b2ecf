// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/side.h"

#include <algorithm>
#include <cmath>

#include "build/rides.h"
#include "build/shape.h"
#include "build/words.h"

namespace hangbook::build {
namespace {

/// Beyond this a height is beyond a limit: what a tape cannot tell is not refused.
constexpr double hair = 1e-6;

std::optional<double> knownOf(double value) {
  return std::isnan(value) ? std::nullopt : std::optional(value);
}

bool isPivot(const hang::Element& element) {
  return std::holds_alternative<hang::Pivot>(element.joint);
}

int pinsASideOf(const hang::Element& element) {
  return std::holds_alternative<hang::Pinned>(element.joint) ? 2 : 1;
}

} // namespace

Side::Side(Yard& yard, int hang)
    : yard_(yard), hanging_(yard.job.hangs[static_cast<std::size_t>(hang)]), index_(hang),
      hooks_(hanging_.hookMet) {}

QString Side::inWords(double metres) const {
  return lengthText(metres, yard_.job.units);
}

Step& Side::add(StepKind kind, const QString& what) {
  Step step;
  step.hang = hanging_.hang;
  step.kind = kind;
  step.what = what;
  yard_.plan.steps.push_back(step);
  return yard_.plan.steps.back();
}

std::optional<Side::On> Side::whereIs(int number) const {
  for (std::size_t r = 0; r < yard_.plan.carts.size(); ++r) {
    const CartRide& ride = yard_.plan.carts[r];
    for (std::size_t c = 0; c < ride.columns.size(); ++c) {
      for (std::size_t i = 0; i < ride.columns[c].size(); ++i) {
        if (ride.columns[c][i].hang == index_ && ride.columns[c][i].element == number) {
          return On{r, c, static_cast<int>(i)};
        }
      }
    }
  }
  return std::nullopt;
}

std::optional<std::size_t> Side::nextRide() const {
  if (done_ >= static_cast<int>(hanging_.rig.stack.size())) {
    return std::nullopt;
  }
  const auto on = whereIs(done_);
  return on ? std::optional(on->ride) : std::nullopt;
}

bool Side::isOnTop(const On& on) const {
  return yard_.taken[on.ride][on.column] == on.place;
}

std::optional<double> Side::nextTop() const {
  const auto ride = nextRide();
  if (!ride) {
    return std::nullopt;
  }
  // As it will be when it comes in here: what other hangs take from a shared cart before is gone by then.
  std::vector<int> taken = yard_.taken[*ride];
  const auto& columns = yard_.plan.carts[*ride].columns;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    while (taken[c] < static_cast<int>(columns[c].size()) &&
           columns[c][static_cast<std::size_t>(taken[c])].hang < index_) {
      ++taken[c];
    }
  }
  return standsOn(yard_.job, yard_.plan.carts[*ride], taken).top;
}

void Side::judgeReach(Step& step) {
  if (std::isnan(hanging_.highestHook)) {
    step.missing << QStringLiteral("how high the hooks of hang %1 can go (point, rigging, hoist closed)")
                        .arg(hanging_.hang);
  }
  if (std::isnan(hanging_.ceiling)) {
    step.missing << QStringLiteral("what is above hang %1 (low steel)").arg(hanging_.hang);
  }
  const Extent extent = worstOf(hanging_, done_);
  const double highestHook = hooks_ + extent.highestHook;
  if (highestHook > hanging_.highestHook + hair) {
    yard_.plan.impossible << QStringLiteral(
                                 "Hang %1: “%2” takes the hooks to %3, but the hoists are run in at %4.")
                                 .arg(hanging_.hang, step.what, inWords(highestHook),
                                      inWords(hanging_.highestHook));
  }
  if (hooks_ + extent.highest > hanging_.ceiling + hair) {
    yard_.plan.impossible << QStringLiteral(
                                 "Hang %1: “%2” takes its top to %3; what is above it leaves room up to %4.")
                                 .arg(hanging_.hang, step.what, inWords(hooks_ + extent.highest),
                                      inWords(hanging_.ceiling));
  }
  if (extent.hooksApart > hanging_.hoistDifference + hair) {
    const QString text =
        QStringLiteral("Hang %1: to join its cabinets its two hooks must stand %2 apart in height; its bar "
                       "lets them differ by %3.")
            .arg(hanging_.hang, inWords(extent.hooksApart), inWords(hanging_.hoistDifference));
    if (!yard_.plan.impossible.contains(text)) {
      yard_.plan.impossible << text;
    }
  }
}

void Side::moveHooks(Step& step, double hooks) {
  step.move = knownOf(hooks - hooks_);
  hooks_ = hooks;
  step.hooks = knownOf(hooks_);
  const Extent extent = worstOf(hanging_, done_);
  step.lowest = knownOf(hooks_ + extent.lowest);
  step.nobodyBeneath = true;
  if (extent.hooksApart > hair && std::isnan(hanging_.hoistDifference)) {
    step.missing << QStringLiteral("how much the two hoists of %1 may differ").arg(hanging_.bar);
  }
  if (std::isnan(extent.lowest)) {
    step.missing << QStringLiteral("outlines of bar and cabinets of hang %1").arg(hanging_.hang);
  }
}

void Side::raiseOver(double passes, double clearance, const QString& why) {
  const double lowest = worstOf(hanging_, done_).lowest;
  const double wanted = passes + clearance - lowest;
  if (wanted <= hooks_) {
    return;
  }
  Step& step = add(StepKind::raise, why);
  step.clears = knownOf(passes);
  moveHooks(step, wanted);
  judgeReach(step);
  if (std::isnan(clearance)) {
    step.missing << QStringLiteral("the house's clearance above carts or below a downfill");
  }
  if (std::isnan(passes)) {
    step.missing << QStringLiteral("how high the cart of hang %1 stands loaded (its deck, how its cabinets "
                                   "stand on it, their outlines and engagement)")
                        .arg(hanging_.hang);
  }
}

void Side::barUp() {
  Step& bar =
      add(StepKind::barInPlace,
          QStringLiteral("Set %1 on its case under %2; hoists %3 on its picks, chains upright and untwisted")
              .arg(hanging_.bar, hanging_.points.join(QStringLiteral(" and ")), hanging_.hoist));
  if (const auto* pair = std::get_if<hang::SidePair>(&hanging_.rig.bar.picks)) {
    bar.what += QStringLiteral(", hooks %1 apart").arg(inWords(pair->pickSpacing));
  } else if (const auto* fore = std::get_if<hang::ForeAftPair>(&hanging_.rig.bar.picks)) {
    bar.what += QStringLiteral(", hooks %1 apart").arg(inWords(fore->frontPick.x - fore->rearPick.x));
  }
  bar.people = 2;
  bar.hooks = knownOf(hooks_);
  if (std::isnan(hooks_)) {
    bar.missing << QStringLiteral("height at which the bar is met on its case (bar-met-height)");
  }
  if (const auto top = nextTop()) {
    raiseOver(*top, yard_.job.cartClearance, QStringLiteral("Bar up, for the first cart"));
  }
}

void Side::visit(std::size_t ride) {
  const CartRide& cart = yard_.plan.carts[ride];
  const std::vector<int>& taken = yard_.taken[ride];
  const double top = standsOn(yard_.job, cart, taken).top;
  raiseOver(top, yard_.job.cartClearance, QStringLiteral("Raise, for %1").arg(cart.name));
  Step& in = add(
      StepKind::cartIn,
      QStringLiteral("%1 in under the hang, %2 facing the audience; brakes on").arg(cart.name, cart.cabinet));
  in.cart = cart.name;
  in.people = 2;
  in.clears = knownOf(top);
  if (cart.type.isEmpty()) {
    in.missing << QStringLiteral("a type of cart for %1").arg(cart.cabinet);
  }
  bool pivoting = false;
  QStringList joined;
  for (auto on = whereIs(done_); on && on->ride == ride && isOnTop(*on); on = whereIs(done_)) {
    join(*on);
    pivoting = isPivot(element(done_ - 1));
    joined << QString::number(done_);
    if (done_ >= static_cast<int>(hanging_.rig.stack.size())) {
      break;
    }
  }
  Step& release = add(StepKind::releaseCart, QStringLiteral("Release what holds cabinet %1 to %2")
                                                 .arg(joined.join(QStringLiteral(" and ")), cart.name));
  release.cart = cart.name;
  const OnCart left = standsOn(yard_.job, cart, taken);
  const double clearance = pivoting ? yard_.job.swingClearance : yard_.job.cartClearance;
  const auto next = nextTop();
  const bool goesOn = left.empty && next && !pivoting && nextRide() != ride;
  QString why = QStringLiteral("Raise, to free %1").arg(cart.name);
  if (goesOn) {
    why += QStringLiteral(" and so that %1 fits under").arg(yard_.plan.carts[*nextRide()].name);
    raiseOver(std::isnan(*next) ? notStated : std::max(*next, left.top), clearance, why);
  } else {
    raiseOver(left.top, clearance, why);
  }
  int other = -1;
  for (std::size_t c = 0; c < cart.columns.size() && other < 0; ++c) {
    if (taken[c] < static_cast<int>(cart.columns[c].size())) {
      other = cart.columns[c][static_cast<std::size_t>(taken[c])].hang;
    }
  }
  const bool across = other >= 0 && other != index_;
  const QString to = across ? yard_.job.hangs[static_cast<std::size_t>(other)].hang : QString();
  Step& away =
      add(across ? StepKind::cartAcross : StepKind::cartAway,
          across ? QStringLiteral("%1 across to hang %2, with what is left on it").arg(cart.name, to)
          : other == index_
              ? QStringLiteral("%1 out from under; it comes again with what is left on it").arg(cart.name)
              : QStringLiteral("%1 away, empty").arg(cart.name));
  away.cart = cart.name;
  away.across = to;
  away.people = 2;
  away.clears = knownOf(left.top);
  const auto& chain = hanging_.rig.chain;
  if (chain && !chainDone_ && done_ >= chain->held) {
    chainOn();
  }
}

void Side::join(const On& on) {
  const CartRide& cart = yard_.plan.carts[on.ride];
  const hang::Element& next = element(done_);
  const double pin = undersideOn(yard_.job, cart, on.column, on.place) - standingOf(next).underside;
  const double tilt = joiningTilt(hanging_, done_);
  const Extent at = extentOf(hanging_, done_, {tilt, 0.0});
  const QString number = QString::number(done_ + 1);
  const bool sameColumn = on.place > 0 && done_ > 0 &&
                          cart.columns[on.column][static_cast<std::size_t>(on.place) - 1].hang == index_ &&
                          yard_.plan.steps.back().kind == StepKind::plug &&
                          yard_.plan.steps.back().hang == hanging_.hang;
  Step& lower = add(
      StepKind::lowerOn,
      done_ == 0   ? QStringLiteral("Lower the bar onto cabinet 1 until the pin holes line up")
      : sameColumn ? QStringLiteral("Cabinet %2 stands below cabinet %1 on the same cart: bring the "
                                    "pin holes into line")
                         .arg(done_)
                         .arg(number)
                   : QStringLiteral("Lower cabinet %1 onto cabinet %2: feet in, until the pin holes line up")
                         .arg(done_)
                         .arg(number));
  lower.cart = cart.name;
  lower.element = done_ + 1;
  lower.cabinet = hanging_.types[done_];
  lower.people = 2;
  const double hooks = pin - at.nextPin.z;
  moveHooks(lower, hooks);
  judgeReach(lower);
  for (int i = 0; i < done_; ++i) {
    if (isPivot(element(i))) {
      lower.missing << QStringLiteral("how cabinet %1 of hang %2 is joined below one that pivots")
                           .arg(number, hanging_.hang);
    }
  }
  // What it rests on is what it is lowered onto.
  lower.lowest = knownOf(hooks_ + at.lowest);
  if (std::isnan(pin)) {
    lower.missing << QStringLiteral(
                         "where the pins of cabinet %1 of hang %2 stand on its cart (deck, how many on one "
                         "another, outlines)")
                         .arg(number, hanging_.hang);
  }
  ++done_;
  ++yard_.taken[on.ride][on.column];
  const bool pivot = isPivot(next);
  Step& pins =
      add(StepKind::pin,
          pivot ? QStringLiteral(
                      "Slide the arm of cabinet %1 up; one pin on its left and one on its right, secured")
                      .arg(number)
                : QStringLiteral("Arms of cabinet %1 out; pins in on its left and on its right, secured: %2")
                      .arg(number, hanging_.holes[done_ - 1]));
  pins.cart = cart.name;
  pins.element = done_;
  pins.cabinet = hanging_.types[done_ - 1];
  pins.hole = hanging_.holes[done_ - 1];
  pins.pinsASide = pinsASideOf(next);
  pins.people = 2;
  pins.gate = QStringLiteral("pins %1").arg(done_);
  const auto place = static_cast<std::size_t>(done_ - 1);
  const Plugs plugs = place < hanging_.plugs.size() ? hanging_.plugs[place] : Plugs();
  Step& plug = add(StepKind::plug, plugWords(done_, hanging_.types[done_ - 1], plugs, yard_.job.units));
  plug.plugs = plugs.all;
  plug.element = done_;
  plug.cabinet = hanging_.types[done_ - 1];
}

void Side::chainOn() {
  const hang::Chain& chain = *hanging_.rig.chain;
  const bool pivot = isPivot(element(chain.held - 1));
  Step& on = add(
      StepKind::chainOn,
      pivot ? QStringLiteral("One swings cabinet %1 up and back, the other clips the chain (%2) at mark %3")
                  .arg(chain.held)
                  .arg(hanging_.chain)
                  .arg(chain.mark)
            : QStringLiteral("Clip the chain (%2) from the bar to cabinet %1 at mark %3")
                  .arg(chain.held)
                  .arg(hanging_.chain)
                  .arg(chain.mark));
  on.what += QStringLiteral("; count the links twice");
  on.element = chain.held;
  on.cabinet = hanging_.types[chain.held - 1];
  on.mark = chain.mark;
  on.people = 2;
  on.nobodyBeneath = true;
  on.gate = QStringLiteral("chain");
  chainDone_ = true;
}

void Side::finish() {
  if (done_ < static_cast<int>(hanging_.rig.stack.size())) {
    return;
  }
  Step& clear = add(StepKind::clearBelow, QStringLiteral("Clear below: nobody and nothing under the hang"));
  clear.nobodyBeneath = true;
  Step& up = add(StepKind::raise, hanging_.hooksAtTrim >= hooks_ || std::isnan(hanging_.hooksAtTrim)
                                      ? QStringLiteral("Final raise, to trim, both hoists level")
                                      : QStringLiteral("Lower to trim, both hoists level"));
  moveHooks(up, hanging_.hooksAtTrim);
  up.lowest = knownOf(hanging_.lowestAtTrim);
  if (std::isnan(hanging_.hooksAtTrim)) {
    up.missing << QStringLiteral("where the hooks of hang %1 stand at trim").arg(hanging_.hang);
  }
  if (!std::isnan(hanging_.datumAtTrim)) {
    up.what += QStringLiteral("; bar datum at %1 by tape").arg(inWords(hanging_.datumAtTrim));
  }
  const hang::Setting& set = hanging_.rig.set;
  QString aim = QStringLiteral("Aim");
  if (set.tiltDeg) {
    aim += QStringLiteral(": bar at %1° tilt").arg(*set.tiltDeg, 0, 'f', 1);
  }
  if (set.panDeg != 0.0) {
    aim += QStringLiteral(", pan %1° (to the left is +, seen from above)").arg(set.panDeg, 0, 'f', 1);
  }
  aim += QStringLiteral("; check each cabinet by inclinometer");
  const auto lowest = up.lowest; // a further step moves those before it
  Step& aimed = add(StepKind::aim, aim);
  aimed.nobodyBeneath = true;
  aimed.lowest = lowest;
  Step& steel =
      add(StepKind::secondarySteel,
          QStringLiteral(
              "Secondary steel on the bar's own safety points, at trim, to structure that can take it"));
  if (!hanging_.secondary.isEmpty()) {
    steel.what += QStringLiteral(": %1 at each pick").arg(hanging_.secondary.join(QStringLiteral(", ")));
  } else {
    steel.missing << QStringLiteral("what hang %1 is secured with").arg(hanging_.hang);
  }
  steel.what +=
      std::isnan(hanging_.secondarySlack)
          ? QStringLiteral("; no drop, measure and write down the slack")
          : QStringLiteral("; slack no more than %1, measured").arg(inWords(hanging_.secondarySlack));
  steel.gate = QStringLiteral("secondary steel");
  steel.people = 2;
  Step& check =
      add(StepKind::finalCheck,
          QStringLiteral("Final check: pins, chain, cable, hooks, steel, heights; hoists isolated"));
  check.gate = QStringLiteral("final check");
}

} // namespace hangbook::build
