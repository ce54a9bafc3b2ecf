// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/house_figures.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hangbook::options {
namespace {

using venue::HouseFigure;

const QString commonPractice = QStringLiteral("common practice, no published source");

HouseFigureKind kind(const char* id, const char* what, const char* unit, std::optional<double> usual,
                     const QString& source, Stricter stricter, Stricter tighter) {
  return {QString::fromUtf8(id),
          QString::fromUtf8(what),
          QString::fromUtf8(unit),
          usual,
          source,
          stricter,
          tighter};
}

/// A figure that may move in its stricter direction alone.
HouseFigureKind kind(const char* id, const char* what, const char* unit, std::optional<double> usual,
                     const QString& source, Stricter stricter) {
  return kind(id, what, unit, usual, source, stricter, stricter);
}

/// Kept in order of id, as the window lists them.
const std::vector<HouseFigureKind>& allKinds() {
  static const std::vector<HouseFigureKind> kinds{
      kind("angle-margin",
           "how near its limit an angle may come before travel is called tight: actuator, pan, joint, swing",
           "°", 0.5, commonPractice, Stricter::free, Stricter::higher),
      kind("bar-met-height",
           "height above the floor beneath at which the hook meets the bar on its case (lift height)", "m",
           0.5, commonPractice, Stricter::free, Stricter::lower),
      kind("bridle-angle-least", "least angle of a bridle's leg from the horizontal", "°", 30.0,
           QStringLiteral("OSHA 29 CFR 1910.184: no leg beyond 60° from the vertical"), Stricter::higher),
      kind("bridle-angle-preferred",
           "angle of a bridle's leg from the horizontal below which bridle is called tight", "°", 45.0,
           commonPractice, Stricter::free, Stricter::higher),
      kind("bridle-tolerance",
           "how far a bridle's leg, made up from steels and shackles, may be from the length that its apex "
           "asks",
           "m", 0.1, commonPractice, Stricter::free, Stricter::lower),
      kind("cart-clearance",
           "clear height between what hangs and a cart that is wheeled in or out below it (build plan)", "m",
           0.08, commonPractice, Stricter::higher),
      kind("centre-doubt",
           "how far a centre of gravity may be off, each way along x and z, where the maker states no "
           "tolerance",
           "m", 0.01, commonPractice, Stricter::free, Stricter::higher),
      kind("chain-tail",
           "1: the links of a chain beyond its mark hang free below the eye and count as the lowest edge; 0: "
           "they "
           "are tied up",
           "", 0.0, commonPractice, Stricter::free, Stricter::higher),
      kind("chain-wear", "how much longer than new a chain may have become by wear", "%", 0.5, commonPractice,
           Stricter::free, Stricter::higher),
      kind("cover-margin",
           "how far inside the edge of cover the audience must lie before cover holds and is not tight", "°",
           0.5, commonPractice, Stricter::free, Stricter::higher),
      kind("cover-share", "share of the audience positions that the hang must cover", "%", 100.0,
           commonPractice, Stricter::free, Stricter::higher),
      kind("dynamic-factor",
           "factor on a load at rest while the hoists start and stop; the one that follows from the hoist's "
           "class and speed stands where it is higher",
           "", std::nullopt, QStringLiteral("follows from the hoist's hoisting class and speed"),
           Stricter::higher),
      kind("examination-margin",
           "days that an examination must outlast the show before examined holds and is not tight", "d", 7.0,
           commonPractice, Stricter::free, Stricter::higher),
      kind("examine-cabinets",
           "1: cabinets without a rule for examination leave examined unproven; 0: the house asks for none",
           "", 1.0, commonPractice, Stricter::free, Stricter::higher),
      kind("hardware-by-serial",
           "1: shackles, slings and the like are counted as units in stock and examined; 0: they are counted "
           "by "
           "hand, outside this list",
           "", 0.0, commonPractice, Stricter::free, Stricter::higher),
      kind("headroom-clearance",
           "least clear height between a hoist, bar or cabinet and what is above it (headroom)", "m", 0.1,
           commonPractice, Stricter::free, Stricter::higher),
      kind("headroom-margin", "room to spare below which headroom is called tight", "m", 0.1, commonPractice,
           Stricter::free, Stricter::higher),
      kind("hoist-difference", "how unlike the two hoists of a side pair may stand after levelling (uneven)",
           "m", 0.01, commonPractice, Stricter::free, Stricter::higher),
      kind("joint-open-most",
           "most that a seated joint may stand open in the shape that the hang takes; the usual 0 lets none "
           "open",
           "°", 0.0, QStringLiteral("common practice, no published source: a seated joint stands shut"),
           Stricter::free, Stricter::lower),
      kind("joint-side-share", "share that the more loaded side of a joint takes where the maker states none",
           "", std::nullopt, QStringLiteral("no usual value: the maker or the house states it"),
           Stricter::higher),
      kind("lean-most", "most angle of a hoist's chain from the vertical", "°", 5.0,
           QStringLiteral("OSHA 29 CFR 1910.184(b): up to 5° from vertical counts as vertical"),
           Stricter::lower),
      kind("least-trim", "least height of the lowest edge above the floor beneath and above the datum", "m",
           2.5, QStringLiteral("common practice (out of reach of a raised hand), no published source"),
           Stricter::free, Stricter::higher),
      kind("length-doubt",
           "how far a length or place of cabinet or bar may be off, each way, where the maker states no "
           "tolerance",
           "m", 0.0012, QStringLiteral("ISO 2768-1, class m: 1.2 mm on 1 to 2 m (from memory)"),
           Stricter::free, Stricter::higher),
      kind("lift-height-margin", "hoist chain to spare below which lift height is called tight", "m", 0.5,
           commonPractice, Stricter::free, Stricter::higher),
      kind("lift-share",
           "how much more than its pick load one hoist of a lift may take while they run (1 or more)", "",
           1.0,
           QStringLiteral(
               "common practice: hoists of one lift alike in speed and watched, no published source"),
           Stricter::higher),
      kind(
          "mass-doubt",
          "how far a mass may be off, either way, where the maker states no tolerance and nobody weighed it; "
          "cable, hoists, chains and hardware too",
          "%", 2.0, commonPractice, Stricter::free, Stricter::higher),
      kind("people-beneath-accessory",
           "part of its working load limit that a lifting accessory may use over people", "", 0.5,
           QStringLiteral("DGUV Information 215-313, table 1"), Stricter::lower),
      kind("people-beneath-hoist", "part of its working load limit that a hoist may use over people", "", 0.5,
           QStringLiteral("DGUV Information 215-313, table 1 (chain 4 / 8)"), Stricter::lower),
      kind("pick-share-least", "least part of the total that each pick must carry", "%", 10.0, commonPractice,
           Stricter::higher),
      kind("pitch-doubt",
           "how far the pitch of a new chain may be off, either way, where the maker states no tolerance",
           "%", 0.3, commonPractice, Stricter::free, Stricter::higher),
      kind("scale-doubt", "how far a weighed mass may be off, either way: the crew's scale", "%", 0.5,
           commonPractice, Stricter::free, Stricter::higher),
      kind("scale-tolerance",
           "most difference of a load cell's reading from the computed load, of that load, before the crew "
           "stops and looks for the cause",
           "%", 5.0, commonPractice, Stricter::lower),
      kind("secondary-drop",
           "how far a pick may drop before its secondary suspension is taut, where the hang does not say",
           "m", 0.0, QStringLiteral("DGUV Information 215-313: no drop path, else as small as can be"),
           Stricter::higher),
      kind(
          "secondary-factor",
          "factor on the load at rest that the secondary suspension must hold when it catches, the drop "
          "being as "
          "small as can be",
          "", 2.0,
          QStringLiteral("mechanics: a load that comes on suddenly without a drop counts twice; no published "
                         "source"),
          Stricter::higher),
      kind("side-difference", "most difference between the two picks, of their mean", "%", 25.0,
           commonPractice, Stricter::lower),
      kind("spare-bars", "bars that must be left over (stock)", "", 0.0, commonPractice, Stricter::free,
           Stricter::higher),
      kind("spare-cabinets", "cabinets of each type used that must be left over (stock)", "", 0.0,
           commonPractice, Stricter::free, Stricter::higher),
      kind("spare-chains", "chains of the type used that must be left over (stock)", "", 0.0, commonPractice,
           Stricter::free, Stricter::higher),
      kind("spare-hoists", "hoists of the type used that must be left over (stock)", "", 0.0, commonPractice,
           Stricter::free, Stricter::higher),
      kind("swing-clearance",
           "clear height below a downfill that is swung by hand, anywhere in its travel, before its chain "
           "is on (build plan)",
           "m", 0.5, commonPractice, Stricter::higher),
      kind("trim-margin", "room to spare below which lowest edge is called tight", "m", 0.05, commonPractice,
           Stricter::free, Stricter::higher),
      kind("wind-first-action",
           "part of the wind at which the first limit is passed, told as the first figure for the crew's own "
           "plan",
           "%", 60.0, QStringLiteral("a city's event guide: act at 60 % and 80 % of the limit"),
           Stricter::lower),
      kind("wind-force-coefficient", "force coefficient of the bar's frame in the wind", "", 2.1,
           QStringLiteral("handbook figure for a sharp-edged rectangle, about 2.0 to 2.1; not checked "
                          "against a standard"),
           Stricter::higher),
      kind("wind-second-action", "the same, the second figure", "%", 80.0,
           QStringLiteral("a city's event guide: act at 60 % and 80 % of the limit"), Stricter::lower),
      kind("working-coefficients",
           "table of working coefficients for hardware without and with people beneath: 1 DGUV Information "
           "215-313, table 1; 2 Machinery Directive 2006/42/EC, Annex I 4.1.2.5 (says nothing of people "
           "beneath)",
           "", 1.0, QStringLiteral("DGUV Information 215-313, table 1"), Stricter::free, Stricter::free),
  };
  return kinds;
}

struct Statement {
  HousePlace place = HousePlace::tour;
  const HouseFigure* figure = nullptr;
};

/// The newest signed statement of a list, of equally dated ones the later, then all unsigned ones.
std::vector<const HouseFigure*> countingOf(const std::vector<HouseFigure>& list, const QString& id) {
  const HouseFigure* newest = nullptr;
  std::vector<const HouseFigure*> counting{nullptr};
  for (const HouseFigure& each : list) {
    if (each.figure != id) {
      continue;
    }
    if (!isSigned(each)) {
      counting.push_back(&each);
    } else if (newest == nullptr || each.signedOn >= newest->signedOn) {
      newest = &each;
    }
  }
  counting.front() = newest;
  std::erase(counting, nullptr);
  return counting;
}

QString sourceOf(const Statement& statement) {
  QString text = QStringLiteral("house rule of the %1").arg(wordFor(statement.place));
  if (!statement.figure->source.isEmpty()) {
    text += QStringLiteral(": ") + statement.figure->source;
  }
  if (!isSigned(*statement.figure)) {
    return text + QStringLiteral(" (not signed)");
  }
  return text + QStringLiteral(" (%1, %2)")
                    .arg(statement.figure->signedBy, statement.figure->signedOn.toString(Qt::ISODate));
}

/// Why a statement cannot be used, or empty.
QString faultOf(const HouseFigureKind& kind, const HouseFigure& figure) {
  if (!std::isfinite(figure.value)) {
    return QStringLiteral("is no number");
  }
  if (figure.value <
      0.0) { // a factor, share, room, margin or number to spare: below 0 it would loosen a rule
    return QStringLiteral("is below 0");
  }
  if (!figure.unit.isEmpty() && figure.unit != kind.unit) {
    return QStringLiteral("is stated in “%1”, expected “%2”").arg(figure.unit, kind.unit);
  }
  return {};
}

bool isStricter(Stricter direction, double value, double than) {
  return direction == Stricter::higher ? value > than : direction == Stricter::lower ? value < than : false;
}

const HouseFigureKind* kindOf(const QString& id) {
  const auto& kinds = allKinds();
  const auto kind =
      std::find_if(kinds.begin(), kinds.end(), [&](const HouseFigureKind& each) { return each.id == id; });
  return kind == kinds.end() ? nullptr : &*kind;
}

} // namespace

QString wordFor(HousePlace place) {
  switch (place) {
  case HousePlace::tour:
    return QStringLiteral("tour");
  case HousePlace::venue:
    return QStringLiteral("venue");
  case HousePlace::show:
    break;
  }
  return QStringLiteral("show");
}

bool isSigned(const HouseFigure& figure) {
  return !figure.signedBy.trimmed().isEmpty() && figure.signedOn.isValid();
}

QString houseFault(const HouseFigure& figure) {
  const HouseFigureKind* kind = kindOf(figure.figure);
  return kind == nullptr ? QStringLiteral("there is no house figure “%1”").arg(figure.figure)
                         : faultOf(*kind, figure);
}

std::span<const HouseFigureKind> houseFigureKinds() {
  return allKinds();
}

House::House(const std::vector<HouseFigure>& tour, const std::vector<HouseFigure>& venue,
             const std::vector<HouseFigure>& show)
    : tour_(tour), venue_(venue), show_(show) {}

/// From the tour to the show. A signed statement takes the place of what stood, where its kind is free, else
/// only where it is stricter; an unsigned one only where it is stricter. Nothing: nobody stated any.
std::optional<HouseValue> House::statedValue(const HouseFigureKind& kind, HouseValue standing) const {
  const std::array<std::pair<HousePlace, const std::vector<HouseFigure>*>, 3> lists{
      {{HousePlace::tour, &tour_}, {HousePlace::venue, &venue_}, {HousePlace::show, &show_}}};
  std::optional<HouseValue> found;
  for (const auto& [place, list] : lists) {
    for (const HouseFigure* figure : countingOf(*list, kind.id)) {
      const Statement statement{place, figure};
      const QString fault = faultOf(kind, *figure);
      const bool free = kind.stricter == Stricter::free;
      if (!fault.isEmpty()) { // it might have been the strictest
        found = HouseValue{std::nullopt, sourceOf(statement) + QStringLiteral(" ") + fault, false};
        if (!free) {
          return found;
        }
        standing = *found;
        continue;
      }
      const bool replaces = free && isSigned(*figure);
      const bool unread = found && !found->value; // what cannot be read is only replaced, never tightened
      const bool tightens =
          !unread && (standing.value ? isStricter(kind.tighter, figure->value, *standing.value)
                                     : kind.tighter != Stricter::free);
      if (replaces || tightens) {
        const bool alone = !isSigned(*figure) && (!standing.value || standing.unsignedAlone);
        found = HouseValue{figure->value, sourceOf(statement), alone};
        standing = *found;
      } else if (!free && isSigned(*figure) && standing.unsignedAlone) {
        standing.unsignedAlone = false; // somebody signed a figure that is less strict
        found = standing;
      }
    }
  }
  return found;
}

HouseValue House::figure(const QString& id) const {
  const HouseFigureKind* kind = kindOf(id);
  if (kind == nullptr) {
    return {std::nullopt, QStringLiteral("there is no house figure “%1”").arg(id), {}};
  }
  const HouseValue usual{kind->usual, kind->source, false};
  return statedValue(*kind, usual).value_or(usual);
}

} // namespace hangbook::options
