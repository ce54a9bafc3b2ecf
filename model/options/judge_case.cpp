// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/judge_case.h"

#include <algorithm>
#include <cmath>
#include <cstring>

#include "hang/chain.h"
#include "hang/halving.h"
#include "options/box.h"
#include "options/carriers.h"
#include "options/cover.h"
#include "options/hang_once.h"
#include "options/hoist_stops.h"
#include "options/level.h"
#include "options/load_path.h"
#include "options/loads.h"
#include "options/placement.h"
#include "options/room_limits.h"
#include "options/weight_limits.h"
#include "options/wind_limits.h"

namespace hangbook::options {
namespace {

/// A trim is given to the centimetre: nobody sets a hang finer.
constexpr double trimStep = 0.01;

std::vector<const Rule*> collect() {
  std::vector<const Rule*> rules;
  for (const auto part : {weightRules(), roomRules(), gearRules()}) {
    for (const Rule& rule : part) {
      rules.push_back(&rule);
    }
  }
  return rules;
}

/// The finding of a rule that needs a setting where there is none.
Finding withoutSetting(const Case& option, const Rule& rule, const QString& why) {
  Finding finding;
  finding.rule = QString::fromLatin1(rule.id);
  if (why.isEmpty()) {
    finding.text =
        QStringLiteral("Cannot be judged: not stated: %1.").arg(option.missing.join(QStringLiteral("; ")));
  } else if (std::strcmp(rule.id, travelRule.id) == 0) {
    finding.verdict = Verdict::fails;
    finding.source = QStringLiteral("geometry of bar, chain and joints");
    finding.text = QStringLiteral("No setting is possible: %1.").arg(why);
  } else {
    finding.text = QStringLiteral("Cannot be judged: no setting is possible.");
  }
  return finding;
}

/// What house rules had a part in it.
void sayWhoseRules(const Case& option, Finding& finding) {
  if (!finding.applies) {
    return;
  }
  const QString house = option.house->sourcesOf(finding.rule, finding.source);
  if (!house.isEmpty()) {
    finding.source += (finding.source.isEmpty() ? QString() : QStringLiteral("; ")) + house;
  }
}

/// Where points and picks do not stand alike, the chains lean the more the higher the hang, and loads rise
/// with that: such a rule may end a window too, where it holds at its lower end and fails at its upper one.
void endByLoads(const Case& option, const Settled& settled, Window& window, const MayFail& mayFail) {
  if (!chainsLean(option, settled) || !window.open() || !std::isfinite(window.low) ||
      !std::isfinite(window.high)) {
    return;
  }
  for (std::size_t i = 0; i < weightRules().size(); ++i) {
    const Rule& rule = weightRules()[i];
    const bool depends = rule.needsSetting && rule.trimRange == nullptr && !isOfRigAndHoist(rule);
    if (!depends || (mayFail && !mayFail(i))) {
      continue;
    }
    const auto failsAt = [&](double trimM) {
      return rule.evaluate(option, &settled, trimM).verdict == Verdict::fails;
    };
    if (!failsAt(window.high) || failsAt(window.low)) {
      continue;
    }
    window.high = hang::turnBetween({window.low, window.high}, 0.0, [&](double trimM) {
                    return !failsAt(trimM);
                  }).within;
    window.highSetBy = rule.id;
  }
}

std::vector<MarkAngle> marksAround(const Case& option, const Rig& rig, const Settled& settled) {
  if (!settled.setting.mark) { // no chain
    return {};
  }
  const auto held = static_cast<std::size_t>(option.held) - 1;
  const int mark = *settled.setting.mark;
  std::vector<MarkAngle> marks{{mark, settled.statics.joints[held].angleDeg}};
  if (!std::holds_alternative<hang::Pivot>(rig.hang.stack[held].joint)) {
    return marks;
  }
  const hang::PivotTriangle triangle = hang::pivotTriangle(rig.hang.bar, rig.hang.stack, option.held);
  for (const int other : {mark - 1, mark + 1}) {
    MarkAngle beside{other, std::nullopt};
    if (other >= 1 && other <= rig.mostMark) {
      hang::Chain chain = *rig.hang.chain;
      chain.mark = other;
      const hang::PivotAngles angles = hang::anglesAt(triangle, hang::chainLength(chain));
      if (angles.count == 1) {
        beside.angleDeg = angles.deg[0];
      }
    }
    marks.push_back(beside);
  }
  return marks;
}

std::optional<double> datumHeight(const Case& option, const Settled& settled, double trimM) {
  if (!option.bar->datum || std::isnan(trimM)) {
    return std::nullopt;
  }
  const double height = originHeight(option, settled, trimM) + settled.layout.frameOrigin.z +
                        inMetres(option.bar->datum->x) * settled.layout.forward.z +
                        inMetres(option.bar->datum->z) * settled.layout.up.z;
  return std::isfinite(height) ? std::optional<double>(height) : std::nullopt;
}

/// `worst`: at the unfavourable end of all doubts, `settled` as stated. Loads are told as stated; the trim
/// window, the load path and the wind at which a rule fails are judged, so at their worst.
void fillSetting(Option& option, const Case& of, const Rig& rig, const Settled& worst, const Settled& settled,
                 double trimM) {
  option.setting = settled.setting;
  option.setting->trimM = trimM;
  const Window window = windowOf(of, worst, true);
  if (window.open() && std::isfinite(window.low) && std::isfinite(window.high)) {
    option.trimWindow = TrimWindow{window.low, window.high, QString::fromLatin1(window.lowSetBy),
                                   QString::fromLatin1(window.highSetBy)};
  }
  for (std::size_t pick = 0; pick < of.points.size(); ++pick) {
    option.pickLoads.push_back(
        {pickName(settled, pick), pickLoad(settled, pick) / 1000.0, {of.points[pick]->name}});
  }
  option.points = pointResults(of, settled, trimM);
  option.bridles = bridleResults(of, settled, trimM);
  const std::vector<PointResult> points = pointResults(of, worst, trimM);
  for (std::size_t i = 0; i < option.points.size(); ++i) {
    option.points[i].worstStaticKn = points[i].staticKn;
    option.points[i].worstDynamicKn = points[i].dynamicKn;
  }
  option.loadPath = loadPath(of, worst, trimM);
  for (std::size_t i = 0; i < settled.statics.joints.size(); ++i) {
    option.aims.push_back({static_cast<int>(i) + 1, settled.statics.joints[i].aimDeg});
  }
  option.massKg = settled.statics.mass;
  option.datumHeightM = datumHeight(of, settled, trimM);
  option.level = levelOf(of, settled, trimM);

  hang::Hang input = asInput(rig);
  Rig at = rig;
  useHoles(at, settled.setting.holesDeg); // the rig's own holes are those of whatever was tried last
  option.marks = marksAround(of, at, settled);
  input.stack = asInput(at).stack;
  if (input.chain) {
    input.chain->mark = *settled.setting.mark;
  }
  input.set = {};
  if (!std::holds_alternative<hang::SinglePick>(input.bar.picks)) {
    input.set.tiltDeg = settled.setting.tiltDeg;
  }
  input.set.panDeg = settled.setting.panDeg;
  option.hangInput = std::move(input);
  option.build = stepLoads(of, worst, settled, trimM, option);
  option.wind = windAnswer(of, worst, trimM);
  option.stops = hoistStops(of, worst, settled, trimM, option);
}

} // namespace

const std::vector<const Rule*>& allRules() {
  static const std::vector<const Rule*> rules = collect();
  return rules;
}

const Rule* ruleNamed(const char* id) {
  const auto& rules = allRules();
  const auto found = std::find_if(rules.begin(), rules.end(),
                                  [id](const Rule* rule) { return std::strcmp(rule->id, id) == 0; });
  return found == rules.end() ? nullptr : *found;
}

OptionKey keyOf(const Search& search, const catalogue::StackingTable& table, const Stack& stack,
                const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement,
                const catalogue::HoistType& hoist, const std::vector<const venue::Point*>& points) {
  QStringList names;
  for (const venue::Point* point : points) {
    names.append(point->name);
  }
  return {search.hang->name, stack.types(), table.name, bar.name, arrangement.picks, hoist.name, names};
}

Case caseOf(const Search& search, const catalogue::StackingTable& table, const Stack& stack,
            const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement,
            const catalogue::HoistType& hoist, const std::vector<const venue::Point*>& points,
            const QStringList& missing) {
  Case made;
  made.snapshot = search.snapshot;
  made.house = search.house;
  made.hang = search.hang;
  made.table = &table;
  made.cabinets = stack.cabinets;
  made.joins = stack.joins;
  made.bar = &bar;
  made.arrangement = &arrangement;
  made.hoist = &hoist;
  made.held = stack.held;
  made.chain = stack.held == 0 ? nullptr : catalogue::find(search.snapshot->catalogue.chains, table.chain);
  made.points = points;
  findCarriers(search.bridles, made);
  made.missing = missing;
  made.key = keyOf(search, table, stack, bar, arrangement, hoist, points);
  made.weight = weightLimits(made);
  made.room = search.once ? roomLimits(made, search.once->seats) : roomLimits(made);
  made.gear = search.once ? gearNeeds(made, search.once->gear) : gearNeeds(made);
  return made;
}

Window windowOf(const Case& option, const Settled& settled, bool withCover, const MayFail& mayFail) {
  Window window{-std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity(), "", ""};
  const auto narrow = [&window](const TrimRange& range, const Rule& rule) {
    if (range.low > window.low) {
      window.low = range.low;
      window.lowSetBy = rule.id;
    }
    if (range.high < window.high) {
      window.high = range.high;
      window.highSetBy = rule.id;
    }
  };
  for (const Rule* rule : allRules()) {
    if (rule->trimRange != nullptr && rule->trimRange != coverRule.trimRange) {
      narrow(rule->trimRange(option, settled), *rule);
    }
  }
  endByLoads(option, settled, window, mayFail);
  if (withCover) { // last: of its stretches the one that the others leave most of
    narrow(widestWithin(coverStretches(option, settled), {window.low, window.high}), coverRule);
  }
  return window;
}

double middleOf(const Window& window) {
  if (!std::isfinite(window.low)) {
    return std::isfinite(window.high) ? window.high : notKnown;
  }
  if (!std::isfinite(window.high) || !window.open()) {
    return window.low;
  }
  const double middle = 0.5 * (window.low + window.high);
  const double rounded = std::round(middle / trimStep) * trimStep;
  return TrimRange{window.low, window.high}.holds(rounded) ? rounded : middle;
}

namespace {

/// What a rule says of a setting: its sentence is of the figures as stated, since that is what a pencil can
/// follow, with what they come to at their unfavourable end, which the verdict follows.
Finding findingOf(const Case& of, const Rule& rule, const Settled* settled, const Settled* stated,
                  double trimM, const Use& use) {
  if (stated == nullptr || !rule.needsSetting) {
    Finding finding = rule.explain(of, settled, trimM, use);
    finding.nominal = finding.value;
    return finding;
  }
  const bool unbounded = settled->doubt != nullptr && !settled->doubt->worst.bounded;
  const Use plain = rule.evaluate(of, stated, trimM);
  Finding worst = rule.explain(of, settled, trimM, use);
  Finding nominal = rule.explain(of, stated, trimM, plain);
  worst.nominal = plain.applies == use.applies ? nominal.value : std::nullopt;
  worst.worstFollows = worst.worstFollows && !(unbounded && use.applies);
  const bool close = worst.value && nominal.value && std::abs(*worst.value - *nominal.value) < 0.005;
  const bool same = (worst.value == nominal.value || close) && plain.verdict == use.verdict;
  if (same || !use.applies || !worst.value) {
    return worst;
  }
  const auto figure = [&](const std::optional<double>& value) {
    QString text = value ? QString::number(*value, 'f', 2) : QStringLiteral("not known");
    if (!worst.unit.isEmpty()) {
      text += worst.unit == QStringLiteral("°") ? worst.unit : QLatin1Char(' ') + worst.unit;
    }
    return text;
  };
  if (plain.why == use.why && plain.which == use.which && nominal.unit == worst.unit) {
    worst.text = nominal.text +
                 QStringLiteral(" With every figure at its unfavourable end: %1.").arg(figure(worst.value));
  } else {
    worst.text +=
        QStringLiteral(" All that with every figure at its unfavourable end; as stated: %1.")
            .arg(nominal.unit == worst.unit && nominal.value ? figure(nominal.value) : nominal.text);
  }
  if (unbounded) {
    worst.text += QStringLiteral(" What the doubts of the figures may come to does not follow.");
  }
  return worst;
}

/// The findings that a cabinet's mass goes into most plainly say that somebody weighed it.
void tellWeighed(const Rig& rig, Finding& finding) {
  const bool weight = finding.rule == QLatin1String(barRule.id) ||
                      finding.rule == QLatin1String(pointLoadRule.id) ||
                      finding.rule == QLatin1String(hoistRule.id);
  if (weight && !rig.doubts.weighed.isEmpty()) {
    finding.text += QStringLiteral(" %1.").arg(rig.doubts.weighed.join(QStringLiteral("; ")));
  }
}

} // namespace

Option optionAt(const Case& of, const Rig& rig, const Settled* settled, double trimM, const QString& why) {
  Option option;
  std::optional<Settled> stated;
  if (settled != nullptr && settled->doubt != nullptr) {
    stated = asStated(*settled);
  }
  if (settled != nullptr) {
    option.doubts = rig.doubts.sources;
    option.weighed = rig.doubts.weighed;
  }
  option.id = idOf(of.key);
  option.key = of.key;
  option.downfill = std::any_of(of.cabinets.begin(), of.cabinets.end(),
                                [](const catalogue::CabinetType* cabinet) { return cabinet->downfill; });
  option.verdict = Verdict::holds;
  for (const Rule* rule : allRules()) {
    if (rule->needsSetting && settled == nullptr) {
      option.findings.push_back(withoutSetting(of, *rule, why));
    } else {
      const Use use = rule->evaluate(of, settled, trimM);
      option.findings.push_back(findingOf(of, *rule, settled, stated ? &*stated : nullptr, trimM, use));
      option.findings.back().verdict = use.verdict;
      tellWeighed(rig, option.findings.back());
      sayWhoseRules(of, option.findings.back());
      if (rule == ruleNamed(coverRule.id)) {
        option.coveredPercent = std::isnan(use.value) ? 0.0 : use.value;
      }
    }
    option.verdict = std::max(option.verdict, option.findings.back().verdict);
  }
  if (settled != nullptr) {
    fillSetting(option, of, rig, *settled, stated ? *stated : *settled, trimM);
  }
  return option;
}

Option outlineAt(const Case& of, const Settled* settled, double trimM, const QString& why) {
  Option option;
  option.id = idOf(of.key);
  option.key = of.key;
  option.verdict = Verdict::holds;
  const auto keep = [&option](Finding finding) {
    if (finding.verdict != Verdict::holds) {
      option.verdict = std::max(option.verdict, finding.verdict);
      option.findings.push_back(std::move(finding));
    }
  };
  for (const Rule* rule : allRules()) {
    if (rule->needsSetting && settled == nullptr) {
      keep(withoutSetting(of, *rule, why));
      continue;
    }
    const Use use = rule->evaluate(of, settled, trimM);
    if (use.verdict != Verdict::holds) {
      Finding finding;
      finding.rule = QString::fromLatin1(rule->id);
      finding.applies = use.applies;
      finding.verdict = use.verdict;
      keep(std::move(finding));
    }
    if (rule == ruleNamed(coverRule.id)) {
      option.coveredPercent = std::isnan(use.value) ? 0.0 : use.value;
    }
  }
  if (settled != nullptr) {
    option.massKg = settled->doubt == nullptr ? settled->statics.mass : settled->doubt->statics.mass;
  }
  return option;
}

} // namespace hangbook::options
