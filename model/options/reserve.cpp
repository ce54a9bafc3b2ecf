// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/reserve.h"

#include <algorithm>
#include <functional>
#include <iterator>
#include <tuple>

#include <boost/iterator/counting_iterator.hpp>

#include "options/easing_lever.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

constexpr int mostKilograms = 5000;
constexpr int mostCentimetres = 500;
constexpr int mostHalfDegrees = 40;
constexpr int mostLinks = 20;
constexpr int mostWind = 200;

/// One direction to go in.
struct Way {
  const char* kind;
  const char* unit;
  const char* words; ///< %1: how much
  double step;
  int sign;
  int most;
  double from;
  bool rises; ///< once it breaks it stays broken: halving is enough
  std::function<void(Trial&, double)> set;
};

using Counted = boost::counting_iterator<int>; // steps, one after the other

bool stands(const Option& option) {
  return option.verdict <= Verdict::tight;
}

class Walker {
public:
  Walker(const Snapshot& snapshot, const Option& option, const Progress& progress)
      : base_{snapshot, option.key, option.setting}, progress_(progress) {}

  Reserve walk(const Way& way, double done) {
    done_ = done;
    Reserve reserve{QString::fromLatin1(way.kind),
                    QString::fromUtf8(way.unit),
                    way.step,
                    0,
                    way.most,
                    way.from,
                    movedBy(way.from, way.sign * way.most, way.step),
                    Verdict::holds,
                    {},
                    {},
                    {}};
    const int breaks = way.rises ? byHalving(way) : oneByOne(way);
    const int within = breaks == 0 ? way.most : breaks - 1;
    reserve.words = QString::fromUtf8(way.words).arg(QString::number(within * way.step, 'f',
                                                                     way.step < 0.1   ? 2
                                                                     : way.step < 1.0 ? 1
                                                                                      : 0));
    if (breaks > 0) {
      reserve.steps = breaks;
      reserve.last = movedBy(way.from, way.sign * within, way.step);
      note(way, breaks, reserve);
    }
    return reserve;
  }

private:
  /// Nothing where that setting is not possible.
  std::optional<Option> at(const Way& way, int steps, QString* why = nullptr) {
    if (progress_ && !progress_(done_)) {
      throw Cancelled{};
    }
    Trial trial = base_;
    way.set(trial, movedBy(way.from, way.sign * steps, way.step));
    try {
      return judge(trial.snapshot, trial.key, *trial.setting);
    } catch (const Error& error) {
      if (why != nullptr) {
        *why = QString::fromUtf8(error.what());
      }
      return std::nullopt;
    }
  }

  bool standsAt(const Way& way, int steps) {
    const auto option = at(way, steps);
    return option && stands(*option);
  }

  int byHalving(const Way& way) {
    if (standsAt(way, way.most)) {
      return 0;
    }
    return *std::partition_point(Counted(1), Counted(way.most),
                                 [&](int step) { return standsAt(way, step); });
  }

  int oneByOne(const Way& way) {
    const Counted end(way.most + 1);
    const Counted breaks = std::find_if_not(Counted(1), end, [&](int step) { return standsAt(way, step); });
    return breaks == end ? 0 : *breaks;
  }

  void note(const Way& way, int steps, Reserve& reserve) {
    QString why;
    const auto option = at(way, steps, &why);
    reserve.then = option ? option->verdict : Verdict::fails;
    reserve.text = why;
    if (!option) {
      return;
    }
    const auto broken = std::find_if(option->findings.begin(), option->findings.end(),
                                     [&](const Finding& each) { return each.verdict == option->verdict; });
    reserve.rule = broken->rule;
    reserve.text = broken->text;
  }

  Trial base_;
  const Progress& progress_;
  double done_{};
};

std::vector<Way> waysFor(const Snapshot& snapshot, const Option& option) {
  std::vector<Way> ways;
  const Setting& setting = *option.setting;
  const Trial base{snapshot, option.key, setting};
  if (const auto& cable = hangOf(base).cableMass) {
    ways.push_back({"mass", "kg", "%1 kg more on the bar", 1.0, 1, mostKilograms, inKilograms(*cable), true,
                    [](Trial& trial, double to) { hangOf(trial).cableMass = kilograms(to); }});
  }
  if (const auto& steel = snapshot.venue.lowSteel) {
    ways.push_back({"low-steel", "m", "%1 m less under low steel", 0.01, -1, 2 * mostCentimetres,
                    inMetres(*steel), true,
                    [](Trial& trial, double to) { trial.snapshot.venue.lowSteel = metres(to); }});
  }
  const auto trim = [](Trial& trial, double to) { trial.setting->trimM = to; };
  ways.push_back({"trim-down", "m", "%1 m lower", 0.01, -1, mostCentimetres, setting.trimM, false, trim});
  ways.push_back({"trim-up", "m", "%1 m higher", 0.01, 1, mostCentimetres, setting.trimM, false, trim});
  if (option.key.picks != catalogue::Picks::single) {
    const auto tilt = [](Trial& trial, double to) { trial.setting->tiltDeg = to; };
    ways.push_back(
        {"tilt-down", "°", "%1° further down", 0.5, -1, mostHalfDegrees, setting.tiltDeg, false, tilt});
    ways.push_back({"tilt-up", "°", "%1° further up", 0.5, 1, mostHalfDegrees, setting.tiltDeg, false, tilt});
  }
  if (setting.mark) {
    const auto mark = [](Trial& trial, double to) { trial.setting->mark = static_cast<int>(to); };
    ways.push_back({"mark-down", "links", "%1 links shorter", 1.0, -1, std::min(mostLinks, *setting.mark - 1),
                    static_cast<double>(*setting.mark), false, mark});
    ways.push_back({"mark-up", "links", "%1 links longer", 1.0, 1, mostLinks,
                    static_cast<double>(*setting.mark), false, mark});
  }
  if (snapshot.venue.outdoors.value_or(false) && snapshot.show.wind) {
    ways.push_back({"wind", "m/s", "%1 m/s more wind", 0.5, 1, mostWind,
                    inMetresPerSecond(*snapshot.show.wind), true,
                    [](Trial& trial, double to) { trial.snapshot.show.wind = metresPerSecond(to); }});
  }
  return ways;
}

} // namespace

std::vector<Reserve> reservesOf(const Snapshot& snapshot, const Option& option, const Progress& progress) {
  std::vector<Reserve> all;
  if (!stands(option) || !option.setting) {
    return all;
  }
  Walker walker(snapshot, option, progress);
  const std::vector<Way> ways = waysFor(snapshot, option);
  for (std::size_t i = 0; i < ways.size(); ++i) {
    all.push_back(walker.walk(ways[i], static_cast<double>(i) / static_cast<double>(ways.size())));
  }
  // What breaks at all comes first; what is counted alike stands together, the nearest before.
  QStringList units;
  std::ranges::transform(all, std::back_inserter(units), &Reserve::unit);
  std::ranges::stable_sort(all, {}, [&units](const Reserve& each) {
    return std::tuple(each.steps == 0, units.indexOf(each.unit), each.steps);
  });
  return all;
}

} // namespace hangbook::options
