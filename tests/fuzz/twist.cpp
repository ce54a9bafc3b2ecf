// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/twist.h"

#include <array>
#include <limits>
#include <vector>

#include <QJsonArray>
#include <QJsonObject>

namespace hangbook::testing {
namespace {

std::size_t upTo(std::mt19937_64& chance, std::size_t count) {
  return static_cast<std::size_t>(chance() % count);
}

template <class List>
auto oneOf(const List& list, std::mt19937_64& chance) {
  return list[upTo(chance, list.size())];
}

QJsonValue oddValue(const QJsonValue& before, std::mt19937_64& chance) {
  if (before.isDouble() && upTo(chance, 8) != 0) {
    return oddFigure(before.toDouble(), chance, false);
  }
  static const std::vector<QJsonValue> others{QJsonValue(),
                                              QJsonValue(true),
                                              QJsonValue(QStringLiteral("left")),
                                              QJsonValue(QStringLiteral("pinned")),
                                              QJsonArray(),
                                              QJsonObject(),
                                              QJsonValue(-1),
                                              QJsonValue(1e300),
                                              QJsonValue(3),
                                              QJsonArray{0.0, 180.0},
                                              QJsonArray{QJsonArray{0, 0}},
                                              QJsonValue(QStringLiteral("seated"))};
  return oneOf(others, chance);
}

void places(hang::Hang& hang, std::vector<double*>& into) {
  const auto add = [&into](hang::Vec2& where) {
    into.push_back(&where.x);
    into.push_back(&where.z);
  };
  hang::Bar& bar = hang.bar;
  if (auto* pair = std::get_if<hang::SidePair>(&bar.picks)) {
    into.insert(into.end(), {&pair->pickSpacing, &pair->headMass, &pair->tiltTravelDeg.low,
                             &pair->tiltTravelDeg.high, &pair->panTravelDeg.low, &pair->panTravelDeg.high});
    add(pair->headCg);
    add(pair->tiltAxis);
  } else if (auto* foreAft = std::get_if<hang::ForeAftPair>(&bar.picks)) {
    add(foreAft->frontPick);
    add(foreAft->rearPick);
  } else {
    add(std::get<hang::SinglePick>(bar.picks).pick);
  }
  into.push_back(&bar.frameMass);
  add(bar.frameCg);
  add(bar.stackPin);
  if (bar.chainAnchor) {
    add(*bar.chainAnchor);
  }
  for (hang::Element& element : hang.stack) {
    into.push_back(&element.mass);
    add(element.cg);
    if (element.nextPin) {
      add(*element.nextPin);
    }
    if (element.chainEye) {
      add(*element.chainEye);
    }
    for (hang::Vec2& corner : element.outline) {
      add(corner);
    }
    if (auto* seated = std::get_if<hang::Seated>(&element.joint)) {
      into.insert(into.end(), {&seated->angleDeg, &seated->openToDeg});
      add(seated->contact);
    } else if (auto* pinned = std::get_if<hang::Pinned>(&element.joint)) {
      into.push_back(&pinned->angleDeg);
      add(pinned->pins[0]);
      add(pinned->pins[1]);
    } else {
      hang::Pivot& pivot = std::get<hang::Pivot>(element.joint);
      into.insert(into.end(), {&pivot.travelDeg.low, &pivot.travelDeg.high});
    }
  }
  if (hang.chain) {
    into.insert(into.end(), {&hang.chain->pitch, &hang.chain->fixed});
  }
  for (std::optional<double>* each : {&hang.set.tiltDeg, &hang.set.actuatorDeg}) {
    if (*each) {
      into.push_back(&**each);
    }
  }
  into.push_back(&hang.set.panDeg);
}

} // namespace

double oddFigure(double before, std::mt19937_64& chance, bool anything) {
  using Limits = std::numeric_limits<double>;
  const std::array odd{0.0,
                       -0.0,
                       -before,
                       before * 1e-9,
                       before + 1e-9,
                       before * 10.0,
                       1.0,
                       -1.0,
                       90.0,
                       -180.0,
                       180.0,
                       1e-300,
                       1e300,
                       -1e300,
                       100.0,
                       100000.0,
                       Limits::denorm_min(),
                       Limits::max(),
                       Limits::quiet_NaN(),
                       Limits::infinity(),
                       -Limits::infinity()};
  return odd[upTo(chance, odd.size() - (anything ? 0 : 3))];
}

QJsonValue twisted(const QJsonValue& value, std::mt19937_64& chance) {
  if (value.isObject() && !value.toObject().isEmpty() && upTo(chance, 12) != 0) {
    QJsonObject object = value.toObject();
    const QString key = oneOf(object.keys(), chance);
    switch (upTo(chance, 14)) {
    case 0:
      object.remove(key);
      break;
    case 1:
      object.insert(key + QLatin1Char('x'), object.value(key));
      break;
    default:
      object.insert(key, twisted(object.value(key), chance));
    }
    return object;
  }
  if (value.isArray() && !value.toArray().isEmpty() && upTo(chance, 12) != 0) {
    QJsonArray array = value.toArray();
    const auto at = static_cast<qsizetype>(upTo(chance, static_cast<std::size_t>(array.size())));
    switch (upTo(chance, 10)) {
    case 0:
      array.removeAt(at);
      break;
    case 1:
      array.append(array.at(at));
      break;
    default:
      array[at] = twisted(array.at(at), chance);
    }
    return array;
  }
  return oddValue(value, chance);
}

void twist(hang::Hang& hang, std::mt19937_64& chance) {
  std::vector<double*> figures;
  places(hang, figures);
  double& figure = *oneOf(figures, chance);
  figure = oddFigure(figure, chance, true);
  if (hang.chain && upTo(chance, 10) == 0) {
    static constexpr std::array odd{
        -1, 0, 1, 7, 100000, std::numeric_limits<int>::max(), std::numeric_limits<int>::min()};
    (upTo(chance, 2) == 0 ? hang.chain->mark : hang.chain->held) = oneOf(odd, chance);
  }
}

} // namespace hangbook::testing
