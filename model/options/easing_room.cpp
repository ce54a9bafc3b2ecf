// SPDX-License-Identifier: GPL-3.0-or-later
// What the room, the show and the house set: the lowest trim, steel, obstructions, where points stand, how
// much of the audience is asked for, the wind.
#include <algorithm>
#include <cmath>

#include "options/easing_lever.h"
#include "options/house_figures.h"

namespace hangbook::options {
namespace {

constexpr double cm = 0.01;
constexpr int mostUp = 300; // 3 m: nobody moves steel by more for one show
constexpr double windStep = 0.5;

QString inM(double metres) {
  return QString::number(metres, 'f', 2) + QStringLiteral(" m");
}

/// A lever of one figure.
Lever oneFigure(const char* kind, const char* unit, double step, int most, const QString& what, double from,
                int sign, std::function<void(Trial&, double)> set,
                std::function<QString(double to, double by)> words) {
  Lever lever;
  lever.kind = QString::fromLatin1(kind);
  lever.unit = QString::fromUtf8(unit);
  lever.step = step;
  lever.most = {most};
  lever.apply = [from, sign, step, set = std::move(set)](Trial& trial, const Steps& steps) {
    set(trial, movedBy(from, sign * steps[0], step));
  };
  lever.change = [=, unit = lever.unit, name = lever.kind, words = std::move(words)](const Steps& steps) {
    const double to = movedBy(from, sign * steps[0], step);
    return Change{name, words(to, movedBy(0.0, steps[0], step)), unit, step, {{what, from, to, steps[0]}}};
  };
  return lever;
}

/// Never below what the house asks for: that is no bound of the room's or the show's.
void addTrimBound(const Trial& trial, std::vector<Lever>& into) {
  const Snapshot& snapshot = trial.snapshot;
  const std::optional<Length> own = hangOf(trial).leastTrim;
  const std::optional<Length> venue = snapshot.venue.leastTrim;
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const std::optional<double> least = house.figure(QStringLiteral("least-trim")).value;
  const double now = std::max(own ? inMetres(*own) : 0.0, venue ? inMetres(*venue) : 0.0);
  if (!least || now <= *least) {
    return;
  }
  const bool both = own && venue && inMetres(*own) > *least && inMetres(*venue) > *least;
  const QString whose =
      both ? QStringLiteral("by the hang's and the venue's own bound")
           : (own && inMetres(*own) == now ? QStringLiteral("by sight lines and stage clearance")
                                           : QStringLiteral("by the venue's own bound"));
  into.push_back(oneFigure(
      "least-trim", "m", cm, static_cast<int>(std::floor((now - *least) / cm + 1e-9)),
      QStringLiteral("least trim"), now, -1,
      [](Trial& moved, double to) {
        const auto lower = [to](std::optional<Length>& bound) {
          if (bound) {
            bound = metres(std::min(inMetres(*bound), to));
          }
        };
        lower(hangOf(moved).leastTrim);
        lower(moved.snapshot.venue.leastTrim);
      },
      [now, whose](double to, double by) {
        return QStringLiteral("The lowest edge allowed %1 lower: at %2 instead of %3, which is set %4")
            .arg(inM(by), inM(to), inM(now), whose);
      }));
}

void addMostTrim(const Trial& trial, std::vector<Lever>& into) {
  if (!trial.snapshot.venue.mostTrim) {
    return;
  }
  const double now = inMetres(*trial.snapshot.venue.mostTrim);
  into.push_back(oneFigure(
      "most-trim", "m", cm, mostUp, QStringLiteral("most trim"), now, 1,
      [](Trial& moved, double to) { moved.snapshot.venue.mostTrim = metres(to); },
      [now](double to, double by) {
        return QStringLiteral("The lowest edge allowed %1 higher: at %2 instead of the venue's %3")
            .arg(inM(by), inM(to), inM(now));
      }));
}

void addSteel(const Trial& trial, std::vector<Lever>& into) {
  if (!trial.snapshot.venue.lowSteel) {
    return;
  }
  const double now = inMetres(*trial.snapshot.venue.lowSteel);
  into.push_back(oneFigure(
      "low-steel", "m", cm, mostUp, QStringLiteral("low steel"), now, 1,
      [](Trial& moved, double to) { moved.snapshot.venue.lowSteel = metres(to); },
      [now](double to, double by) {
        return QStringLiteral("Low steel %1 higher: at %2 instead of %3").arg(inM(by), inM(to), inM(now));
      }));
  into.push_back(oneFigure(
      "roof", "m", cm, mostUp, QStringLiteral("low steel and points"), now, 1,
      [now](Trial& moved, double to) {
        venue::Venue& venue = moved.snapshot.venue;
        venue.lowSteel = metres(to);
        const int steps = static_cast<int>(std::lround((to - now) / cm));
        for (venue::Point& point : venue.points) {
          point.z = metres(movedBy(inMetres(point.z), steps, cm));
        }
        for (venue::Bridle& bridle : venue.bridles) {
          bridle.z = metres(movedBy(inMetres(bridle.z), steps, cm));
        }
      },
      [now](double to, double by) {
        return QStringLiteral("Low steel and the points under it %1 higher: low steel at %2 instead of %3")
            .arg(inM(by), inM(to), inM(now));
      }));
}

void addObstructions(const Trial& trial, std::vector<Lever>& into) {
  const auto& all = trial.snapshot.venue.obstructions;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const double now = inMetres(all[i].underside);
    into.push_back(oneFigure(
        "obstruction", "m", cm, mostUp, all[i].name, now, 1,
        [i](Trial& moved, double to) { moved.snapshot.venue.obstructions[i].underside = metres(to); },
        [now, name = all[i].name](double to, double by) {
          return QStringLiteral("%1 %2 higher: its underside at %3 instead of %4")
              .arg(name, inM(by), inM(to), inM(now));
        }));
  }
}

/// How far apart the bar's two picks are; what can be had from its data.
std::optional<double> spacingOfPicks(const Trial& trial) {
  const auto* bar = catalogue::find(trial.snapshot.catalogue.bars, trial.key.bar);
  if (bar == nullptr) {
    return std::nullopt;
  }
  for (const catalogue::PickArrangement& each : bar->arrangements) {
    if (each.picks != trial.key.picks) {
      continue;
    }
    if (each.picks == catalogue::Picks::sidePair && each.spacing) {
      return inMetres(*each.spacing);
    }
    if (each.picks == catalogue::Picks::foreAftPair && each.front && each.rear) {
      return std::abs(inMetres(each.front->x) - inMetres(each.rear->x));
    }
  }
  return std::nullopt;
}

venue::Point* pointOf(Trial& trial, const QString& name) {
  for (venue::Point& each : trial.snapshot.venue.points) {
    if (each.name == name) {
      return &each;
    }
  }
  return nullptr;
}

/// Two points as far apart as the picks, at the most; each moves half of it along the line between them.
void addSpacing(const Trial& trial, std::vector<Lever>& into) {
  const std::optional<double> picks = spacingOfPicks(trial);
  if (trial.key.points.size() != 2 || !picks) {
    return;
  }
  const auto* one = catalogue::find(trial.snapshot.venue.points, trial.key.points[0]);
  const auto* other = catalogue::find(trial.snapshot.venue.points, trial.key.points[1]);
  if (one == nullptr || other == nullptr) {
    return;
  }
  const double dx = inMetres(other->x) - inMetres(one->x);
  const double dy = inMetres(other->y) - inMetres(one->y);
  const double apart = std::hypot(dx, dy);
  const int most = static_cast<int>(std::floor(std::abs(apart - *picks) / cm + 1e-9));
  if (apart <= 0.0 || most == 0) {
    return;
  }
  const int sign = std::signbit(apart - *picks) ? 1 : -1;
  into.push_back(oneFigure(
      "spacing", "m", cm, most, one->name + QStringLiteral(" and ") + other->name, apart, sign,
      [apart, dx, dy, one = one->name, other = other->name](Trial& moved, double to) {
        const double part = 0.5 * (to - apart) / apart;
        const auto move = [&](const QString& name, double by) {
          venue::Point& point = *pointOf(moved, name);
          point.x = metres(movedBy(inMetres(point.x), 1, by * dx));
          point.y = metres(movedBy(inMetres(point.y), 1, by * dy));
        };
        move(one, -part);
        move(other, part);
      },
      [apart, one = one->name, other = other->name](double to, double by) {
        return QStringLiteral("Points %1 and %2 at %3 from each other instead of %4: each moved by %5")
            .arg(one, other, inM(to), inM(apart), QString::number(0.5 * by, 'f', 3) + QStringLiteral(" m"));
      }));
}

void addCover(const Trial& trial, std::vector<Lever>& into) {
  const Snapshot& snapshot = trial.snapshot;
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const std::optional<double> share = house.figure(QStringLiteral("cover-share")).value;
  if (!share || *share < 1.0) {
    return;
  }
  into.push_back(oneFigure(
      "cover-share", "%", 1.0, static_cast<int>(*share), QStringLiteral("share of the audience"), *share, -1,
      [](Trial& moved, double to) {
        auto& figures = moved.snapshot.show.house;
        std::erase_if(figures, [](const auto& each) { return each.figure == QStringLiteral("cover-share"); });
        figures.push_back({QStringLiteral("cover-share"), to, QStringLiteral("%"),
                           QStringLiteral("taken to be so, to see what would do"),
                           QStringLiteral("nobody yet"), moved.snapshot.today});
      },
      [now = *share](double to, double) {
        return QStringLiteral("%1 % of the audience asked for instead of %2 %")
            .arg(QString::number(to, 'f', 0), QString::number(now, 'f', 0));
      }));
}

void addWind(const Trial& trial, std::vector<Lever>& into) {
  if (!trial.snapshot.show.wind || !trial.snapshot.venue.outdoors.value_or(false)) {
    return;
  }
  const double now = inMetresPerSecond(*trial.snapshot.show.wind);
  into.push_back(oneFigure(
      "wind", "m/s", windStep, static_cast<int>(std::floor(now / windStep)), QStringLiteral("wind"), now, -1,
      [](Trial& moved, double to) { moved.snapshot.show.wind = metresPerSecond(to); },
      [now](double to, double) {
        return QStringLiteral("Down before the wind reaches %1 m/s instead of %2 m/s")
            .arg(QString::number(to, 'f', 1), QString::number(now, 'f', 1));
      }));
}

} // namespace

void addRoomLevers(const Trial& trial, std::vector<Lever>& into) {
  addTrimBound(trial, into);
  addMostTrim(trial, into);
  addSteel(trial, into);
  addObstructions(trial, into);
  addSpacing(trial, into);
  addCover(trial, into);
  addWind(trial, into);
}

} // namespace hangbook::options
