// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/level.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "options/air.h"
#include "options/cover.h"
#include "options/room_limits.h"

namespace hangbook::options {
namespace {

constexpr double standardPressure = 101.325; // kPa

class Ways {
public:
  Ways(const Case& option, const Settled& settled, double trimM)
      : option_(option), audience_(option.room->audience), view_(viewOf(option, audience_, settled)),
        placement_(placementOf(option, settled.layout)), bearing_(bearingOf(placement_, settled.layout)),
        trim_(trimM) {}

  /// The seat of a row that is nearest to the hang's line. `first`: of the row.
  std::size_t nearestSeat(std::size_t first, std::size_t seats) const {
    const auto row = std::span(audience_.positions).subspan(first, seats);
    const auto nearest = std::ranges::min_element(row, {}, [this](const AudiencePosition& at) {
      const double dx = at.x - placement_.origin.x;
      const double dy = at.yFrom - placement_.origin.y;
      return std::abs(bearing_.x * dy - bearing_.y * dx);
    });
    return first + static_cast<std::size_t>(nearest - row.begin());
  }

  LevelRow row(std::size_t section, bool last, const std::optional<LevelAir>& air) const {
    const AudienceBlock& block = audience_.blocks[section];
    const std::size_t first = last ? block.first + block.count - block.seats : block.first;
    const std::size_t position = nearestSeat(first, block.seats);
    LevelRow row;
    row.section = audience_.sections[static_cast<qsizetype>(section)];
    row.last = last;
    std::size_t serves = 0;
    row.distanceM = straight(0, position);
    for (std::size_t i = 0; i < view_.sources.size(); ++i) {
      const TrimRange range = trimsThatCover(audience_, view_, view_.sources[i], position);
      if (range.holds(trim_) && (!row.covered || straight(i, position) < row.distanceM)) {
        row.covered = true;
        row.distanceM = straight(i, position);
        serves = i;
      }
    }
    const CoverEdges& cabinet = audience_.cabinets[serves];
    row.element = static_cast<int>(cabinet.element) + 1;
    row.throwM = cabinet.throwM;
    row.levelAtOneMetreDb = option_.cabinets[cabinet.element]->levelAtOneMetre;
    row.spreadingDb = spreadingLoss(1.0, row.distanceM);
    if (air) {
      row.airDb = absorbed(*air, row.distanceM);
    }
    return row;
  }

private:
  double straight(std::size_t source, std::size_t position) const {
    const CoverView::Source& from = view_.sources[source];
    const AudiencePosition& at = audience_.positions[position];
    const double down = at.ear - trim_ - from.height;
    if (audience_.blocks[static_cast<std::size_t>(at.section)].swept) {
      return std::hypot(at.x - from.place.x, at.yFrom - from.place.y, down);
    }
    return std::hypot(view_.distance[position] - from.ahead, down);
  }

  const Case& option_;
  const Audience& audience_;
  CoverView view_;
  Placement placement_;
  Plan bearing_;
  double trim_;
};

} // namespace

double exactMidBand(std::size_t octave) {
  return 1000.0 * std::pow(10.0, 0.3 * (static_cast<double>(octave) - static_cast<double>(oneKilohertzBand)));
}

std::optional<LevelAir> airOf(const calendar::Show& show) {
  if (!show.temperature || !show.humidity) {
    return std::nullopt;
  }
  return LevelAir{*show.temperature, *show.humidity, show.pressure.value_or(standardPressure),
                  show.pressure.has_value()};
}

std::optional<double> airLoss(const calendar::Show& show, std::size_t octave) {
  const auto air = airOf(show);
  return air ? std::optional(
                   airAbsorption(exactMidBand(octave), air->temperature, air->humidity, air->pressure))
             : std::nullopt;
}

PerOctave absorbed(const LevelAir& air, double metres) {
  PerOctave loss{};
  for (std::size_t i = 0; i < loss.size(); ++i) {
    loss[i] = metres * airAbsorption(exactMidBand(i), air.temperature, air.humidity, air.pressure);
  }
  return loss;
}

std::optional<LevelTable> levelOf(const Case& option, const Settled& settled, double trimM) {
  const Audience& audience = option.room->audience;
  if (audience.cabinets.empty() || audience.blocks.empty() || !audience.missing.isEmpty() ||
      std::isnan(trimM)) {
    return std::nullopt;
  }
  LevelTable table;
  table.air = airOf(option.snapshot->show);
  const Ways ways(option, settled, trimM);
  for (std::size_t section = 0; section < audience.blocks.size(); ++section) {
    for (const bool last : {false, true}) {
      const LevelRow row = ways.row(section, last, table.air);
      if (!(row.distanceM > 0.0)) {
        return std::nullopt; // an ear at the cabinet itself
      }
      table.rows.push_back(row);
    }
  }
  if (table.air) {
    const auto [near, far] = std::ranges::minmax_element(table.rows, {}, &LevelRow::distanceM);
    table.frontToBackDb.emplace();
    for (std::size_t i = 0; i < octaveBands.size(); ++i) {
      (*table.frontToBackDb)[i] = far->lossDb(i) - near->lossDb(i);
    }
  }
  return table;
}

} // namespace hangbook::options
