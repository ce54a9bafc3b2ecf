// SPDX-License-Identifier: GPL-3.0-or-later
// model/hang/BY_HAND.md explains one whole hang figure by figure. Each figure there that is followed by a
// mark
// `<!--=name-->` is compared with what the program computes for that hang today, to its last printed digit:
// the page cannot go stale. `hangbook` prints the same figures with `options --explain`.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <QFile>
#include <QRegularExpression>

#include "hang/layout.h"
#include "hang/solve.h"
#include "options/level.h"
#include "options/search.h"
#include "options/weight_limits.h"
#include "state.h"
#include "where.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

using Figures = std::map<QString, double>;

QString page() {
  QFile file(QStringLiteral(HANGBOOK_SOURCE_DIR "/model/hang/BY_HAND.md"));
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  return QString::fromUtf8(file.readAll());
}

/// What the page is about: `show`, `hang` and `option` in backquotes.
QString named(const QString& text, const char* what) {
  const QRegularExpression pattern(QStringLiteral("%1 `([^`]+)`").arg(QLatin1String(what)));
  const auto match = pattern.match(text);
  BOOST_REQUIRE_MESSAGE(match.hasMatch(), "the page does not name its " << what);
  return match.captured(1);
}

void addInputs(Figures& figures, const options::Snapshot& snapshot, const options::Option& option) {
  const auto& catalogue = snapshot.catalogue;
  const auto& cabinet = *catalogue::find(catalogue.cabinets, option.key.stack.front());
  const auto& bar = *catalogue::find(catalogue.bars, option.key.bar);
  const auto& hoist = *catalogue::find(catalogue.hoists, option.key.hoist);
  const calendar::Hang& hang = snapshot.show.hangs.front();
  figures["cabinets"] = static_cast<double>(option.key.stack.size());
  figures["cabinet.mass"] = inKilograms(*cabinet.mass);
  figures["cabinet.cg.x"] = inMetres(cabinet.centreOfGravity->x);
  figures["cabinet.cg.z"] = inMetres(cabinet.centreOfGravity->z);
  figures["cabinet.pin.z"] = inMetres(cabinet.nextPin->z);
  figures["cabinet.pins.front"] = inMetres((*cabinet.pins)[0].x);
  figures["cabinet.pins.rear"] = inMetres((*cabinet.pins)[1].x);
  figures["cabinet.pins.z"] = inMetres((*cabinet.pins)[0].z);
  figures["frame.mass"] = inKilograms(*bar.frameMass);
  figures["cable.mass"] = inKilograms(*hang.cableMass);
  figures["frame.cg.z"] = inMetres(bar.frameCentreOfGravity->z);
  figures["stack.pin.x"] = inMetres(bar.stackPin->x);
  figures["stack.pin.z"] = inMetres(bar.stackPin->z);
  figures["hoist.mass"] = inKilograms(*hoist.bodyMass);
  figures["hoist.chain.length"] = inMetres(*hoist.chainLength);
  figures["hoist.chain.per.m"] = hoist.chainMass->value();
  figures["hoist.bag"] = inKilograms(*hoist.chainBagMass);
  figures["hoist.speed"] = hoist.speed->value();
  figures["phi2"] = options::dynamicFactorOf(*hoist.hoistingClass, figures["hoist.speed"]);
  const QString zone = catalogue::find(snapshot.venue.points, option.points[0].point)->zone;
  figures["zone.others"] = inKilonewtons(*catalogue::find(snapshot.venue.zones, zone)->othersLoad);
  figures["hoist.closed"] = inMetres(*hoist.closedLength);
  double rigging = 0.0;
  double riggingLength = 0.0;
  for (const QString& name : hang.rigging) {
    const auto& piece = *catalogue::find(catalogue.hardware, name);
    rigging += inKilograms(*piece.mass);
    riggingLength += inMetres(*piece.length);
  }
  figures["rigging.mass"] = rigging;
  figures["rigging.length"] = riggingLength;
  for (std::size_t i = 0; i < option.points.size(); ++i) {
    const QString pick = i == 0 ? QStringLiteral("front") : QStringLiteral("rear");
    const auto& point = *catalogue::find(snapshot.venue.points, option.points[i].point);
    figures["point." + pick + ".x"] = inMetres(point.x);
    figures["point." + pick + ".z"] = inMetres(point.z);
  }
}

void addStatics(Figures& figures, const options::Option& option) {
  const hang::Statics statics = hang::solve(*option.hangInput);
  const hang::Layout layout = hang::layOut(*option.hangInput, statics);
  figures["tilt"] = statics.tiltDeg;
  figures["mass.below"] = statics.mass;
  figures["weight.below"] = statics.mass * 9.80665 / 1000.0;
  figures["cg.x"] = statics.cg.x;
  figures["frame.x"] = layout.frameCg.x;
  figures["frame.moment"] = option.hangInput->bar.frameMass * layout.frameCg.x;
  figures["rear.pick.x"] = layout.picks[1].x;
  figures["rear.pick.z"] = layout.picks[1].z;
  figures["pick.spacing"] = -layout.picks[1].x;
  figures["bottom"] = statics.bottom;
  figures["hook.front"] = option.setting->trimM - statics.bottom;
  figures["hook.rear"] = figures["hook.front"] + layout.picks[1].z;
  double sum = figures["frame.moment"];
  for (std::size_t i = 0; i < layout.elements.size(); ++i) {
    const QString number = QString::number(i + 1);
    figures["pin." + number] = layout.elements[i].pin.x;
    figures["cg." + number] = layout.elements[i].cg.x;
    figures["aim." + number] = layout.elements[i].aimDeg;
    figures["moment." + number] = option.hangInput->stack[i].mass * layout.elements[i].cg.x;
    sum += figures["moment." + number];
  }
  figures["moment.sum"] = sum;
  // The pins of the first cabinet's joint: the direct share, and the couple about their middle (see the
  // page).
  const hang::PlacedElement& first = layout.elements[0];
  const double middleX = 0.5 * (figures["cabinet.pins.front"] + figures["cabinet.pins.rear"]);
  const double spacing = figures["cabinet.pins.front"] - figures["cabinet.pins.rear"];
  const double weight = (statics.mass - option.hangInput->bar.frameMass) * 9.80665 / 1000.0;
  figures["six.mass"] = statics.mass - option.hangInput->bar.frameMass;
  figures["six.weight"] = weight;
  figures["six.cg.x"] = (sum - figures["frame.moment"]) / figures["six.mass"];
  figures["pins.middle.x"] =
      first.pin.x + middleX * first.forward.x - figures["cabinet.pins.z"] * first.forward.z;
  figures["pins.arm"] = figures["pins.middle.x"] - figures["six.cg.x"];
  figures["pins.spacing"] = spacing;
  figures["pins.direct"] = weight / 4.0;
  figures["pins.couple"] = weight / 2.0 * figures["pins.arm"] / spacing;
  figures["joint.moment"] = statics.joints[0].gravityMoment / 1000.0;
  figures["joint.pin.1"] = statics.joints[0].pinForces[0] / 1000.0;
  figures["joint.pin.2"] = statics.joints[0].pinForces[1] / 1000.0;
}

void addResults(Figures& figures, const options::Option& option) {
  for (std::size_t i = 0; i < option.points.size(); ++i) {
    const QString pick = option.pickLoads[i].name;
    figures["pick." + pick] = option.pickLoads[i].loadKn;
    figures["rest." + pick] = option.points[i].staticKn;
    figures["dynamic." + pick] = option.points[i].dynamicKn;
    figures["capacity." + pick] = option.points[i].capacityKn.value();
    for (const options::LoadPart& part : option.points[i].parts) {
      figures["part." + part.what + "." + pick] = part.kn;
    }
  }
  figures["factor.dynamic"] = option.points[0].dynamicKn / option.points[0].staticKn;
  for (const options::Finding& each : option.findings) {
    if (each.value && each.nominal) {
      figures["value." + each.rule] = *each.nominal;
      figures["worst." + each.rule] = *each.value;
    }
    if (each.limit) {
      figures["limit." + each.rule] = *each.limit;
    }
    if (each.usePercent) {
      figures["use." + each.rule] = *each.usePercent * *each.nominal / *each.value;
      figures["use.worst." + each.rule] = *each.usePercent;
    }
  }
  for (const options::StepLoads& step : option.build) {
    for (const options::StepPick& pick : step.picks) {
      figures["most." + pick.name] = std::max(figures["most." + pick.name], pick.mostKn);
    }
  }
  figures["trim"] = option.setting->trimM;
  figures["window.low"] = option.trimWindow->lowM;
  figures["window.high"] = option.trimWindow->highM;
  for (const options::LevelRow& row : option.level->rows) {
    const QString which = row.last ? QStringLiteral("last") : QStringLiteral("first");
    figures["way." + which] = row.distanceM;
    figures["spreading." + which] = row.spreadingDb;
    figures["air.4k." + which] = (*row.airDb)[6];
  }
  figures["drop.4k"] = (*option.level->frontToBackDb)[6];
}

Figures figuresOf(const options::Snapshot& snapshot, const options::Option& option) {
  Figures figures;
  addInputs(figures, snapshot, option);
  addStatics(figures, option);
  addResults(figures, option);
  return figures;
}

/// Half of the last digit that is printed.
double rounding(const QString& printed) {
  const qsizetype dot = printed.indexOf(QLatin1Char('.'));
  return 0.5 * std::pow(10.0, dot < 0 ? 0.0 : -static_cast<double>(printed.size() - dot - 1));
}

} // namespace

BOOST_AUTO_TEST_SUITE(by_hand)

BOOST_AUTO_TEST_CASE(the_page_says_what_the_program_says) {
  const QString text = page();
  const options::Snapshot snapshot = snapshotOf(demoShow(named(text, "show")));
  const auto found = options::decideOnly(snapshot, named(text, "option"), named(text, "hang"));
  BOOST_REQUIRE_EQUAL(found.hangs.size(), 1U);
  BOOST_REQUIRE_EQUAL(found.hangs[0].options.size(), 1U);
  const options::Option& option = found.hangs[0].options[0];
  const Figures figures = figuresOf(snapshot, option);
  for (const auto& [name, figure] : figures) {
    BOOST_TEST_MESSAGE(name.toStdString() << " = " << QString::number(figure, 'g', 17).toStdString());
  }
  static const QRegularExpression marked(QStringLiteral("([-−]?[0-9]+(?:\\.[0-9]+)?)<!--=([a-z0-9.-]+)-->"));
  std::set<QString> said;
  auto each = marked.globalMatch(text);
  qsizetype marks = 0;
  while (each.hasNext()) {
    const auto match = each.next();
    ++marks;
    const QString name = match.captured(2);
    QString printed = match.captured(1);
    printed.replace(QChar(0x2212), QLatin1Char('-'));
    const auto computed = figures.find(name);
    BOOST_TEST((computed != figures.end()), "no such figure: " << name.toStdString());
    if (computed != figures.end()) {
      said.insert(name);
      BOOST_TEST(std::abs(printed.toDouble() - computed->second) <= rounding(printed) * 1.001 + 1e-12,
                 name.toStdString() << ": the page says " << printed.toStdString() << ", the program "
                                    << QString::number(computed->second, 'g', 9).toStdString());
    }
  }
  BOOST_TEST(text.count(QStringLiteral("<!--=")) == marks); // no slip of the pen in a mark
  // A page that leaves out what decides explains nothing.
  for (const char* needed : {"mass.below",       "cg.x",
                             "pick.front",       "pick.rear",
                             "rest.front",       "rest.rear",
                             "dynamic.rear",     "value.hoist",
                             "limit.hoist",      "value.bar",
                             "value.joint",      "limit.joint",
                             "value.hardware",   "value.zone-load",
                             "value.pick-share", "value.headroom",
                             "value.lean",       "trim",
                             "drop.4k",          "worst.bar",
                             "worst.hoist",      "worst.point-load",
                             "worst.joint",      "use.worst.hoist"}) {
    BOOST_TEST(said.contains(QString::fromUtf8(needed)), needed);
  }
}

BOOST_AUTO_TEST_SUITE_END()
