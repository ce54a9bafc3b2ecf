// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/house_change.h"

#include "options/search.h"
#include "options/verdict_changes.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

QString becauseOf(const ChosenNow& chosen) {
  if (!chosen.option) {
    return chosen.why;
  }
  QStringList sentences;
  for (const Finding& finding : chosen.option->findings) {
    if (finding.applies && finding.verdict == chosen.option->verdict && finding.verdict != Verdict::holds) {
      sentences.append(finding.rule + QStringLiteral(": ") + finding.text);
    }
  }
  return sentences.join(QStringLiteral(" "));
}

} // namespace

bool countsFor(const HouseSite& site, const Snapshot& snapshot) {
  switch (site.place) {
  case HousePlace::tour:
    return snapshot.tour.name == site.name;
  case HousePlace::venue:
    return snapshot.venue.name == site.name;
  case HousePlace::show:
    break;
  }
  return snapshot.show.name == site.name && snapshot.tour.name == site.tour;
}

std::vector<venue::HouseFigure>& houseOf(const HouseSite& site, Snapshot& snapshot) {
  switch (site.place) {
  case HousePlace::tour:
    return snapshot.tour.house;
  case HousePlace::venue:
    return snapshot.venue.house;
  case HousePlace::show:
    break;
  }
  return snapshot.show.house;
}

std::vector<ChosenNow> chosenNow(const Snapshot& snapshot) {
  std::vector<ChosenNow> all;
  for (const calendar::Hang& hang : snapshot.show.hangs) {
    const Choice* found = nullptr;
    for (const Choice& each : snapshot.choices) {
      found = each.hang == hang.name ? &each : found;
    }
    if (found == nullptr) {
      continue;
    }
    ChosenNow now{found, std::nullopt, {}};
    try {
      now.option = judge(snapshot, found->key, found->setting);
    } catch (const Error& error) { // gone from the data since it was chosen: no pass
      now.why = QString::fromUtf8(error.what());
    }
    all.push_back(std::move(now));
  }
  return all;
}

void addChanges(const Snapshot& before, const Snapshot& after, HouseEffect& effect) {
  const std::vector<ChosenNow> was = chosenNow(before);
  const std::vector<ChosenNow> is = chosenNow(after);
  for (std::size_t i = 0; i < was.size(); ++i) {
    ++effect.judged;
    if (was[i].verdict() != is[i].verdict()) {
      const Choice& choice = *was[i].choice;
      effect.changed.push_back({choice.tour, choice.show, choice.hang, choice.option, was[i].verdict(),
                                is[i].verdict(), becauseOf(is[i])});
    }
  }
}

HouseEffect effectOf(const std::vector<Snapshot>& shows, const HouseSite& site,
                     const std::vector<venue::HouseFigure>& rules) {
  HouseEffect effect;
  for (const Snapshot& before : shows) {
    if (!countsFor(site, before)) {
      continue;
    }
    Snapshot after = before;
    houseOf(site, after) = rules;
    addChanges(before, after, effect);
  }
  return effect;
}

HouseEffect effectOf(const std::vector<Snapshot>& shows, const venue::Venue& becomes) {
  HouseEffect effect;
  for (const Snapshot& before : shows) {
    if (before.venue.name == becomes.name) {
      Snapshot after = before;
      after.venue = becomes;
      addChanges(before, after, effect);
    }
  }
  return effect;
}

} // namespace hangbook::options
