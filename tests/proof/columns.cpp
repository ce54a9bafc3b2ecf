// SPDX-License-Identifier: GPL-3.0-or-later
#include "columns.h"

#include <algorithm>
#include <map>

#include <QDate>

#include "options/house_figures.h"

namespace hangbook::testing {
namespace {

using Kind = exchange::Kind;
using Way = Column::Way;
using Rules = std::vector<const char*>;

QString written(double figure) {
  return QString::number(figure, 'g', 17);
}

/// The figure × `factor`; a figure of 0 becomes `instead` where more is worse.
Worse times(double factor, double instead = 0.0) {
  return [=](const QString& text, const Row&) {
    bool ok = false;
    const double figure = text.toDouble(&ok);
    if (!ok || (figure == 0.0 && (instead == 0.0 || factor < 1.0))) {
      return QString();
    }
    return written(figure == 0.0 ? instead : figure * factor);
  };
}

Worse plus(double more) {
  return [=](const QString& text, const Row&) {
    bool ok = false;
    const double figure = text.toDouble(&ok);
    return ok ? written(figure + more) : QString();
  };
}

Worse wordFrom(std::map<QString, QString> worse) {
  return [=](const QString& text, const Row&) {
    const auto found = worse.find(text);
    return found == worse.end() ? QString() : found->second;
  };
}

/// Two ends, both nearer to the middle.
QString narrower(const QString& text, const Row&) {
  const QStringList ends = text.split(QLatin1Char(';'));
  if (ends.size() != 2) {
    return {};
  }
  const double low = ends[0].toDouble();
  const double high = ends[1].toDouble();
  const double inwards = 0.3 * (high - low);
  return written(low + inwards) + QStringLiteral("; ") + written(high - inwards);
}

Worse later(int days) {
  return [=](const QString& text, const Row&) {
    const QDate date = QDate::fromString(text, Qt::ISODate);
    return date.isValid() ? date.addDays(days).toString(Qt::ISODate) : QString();
  };
}

/// One piece more between point and hoist, the first one again.
QString onePieceMore(const QString& text, const Row&) {
  return text.isEmpty() ? QString() : text + QStringLiteral("; ") + text.section(QLatin1Char(';'), 0, 0);
}

/// The way in which the house's figure is stricter; none where the house is free. More doubt is worse.
QString stricter(const QString& text, const Row& row) {
  if (row["figure"].endsWith(QStringLiteral("-doubt")) || row["figure"] == QStringLiteral("chain-wear")) {
    return times(3.0, 0.5)(text, row);
  }
  for (const options::HouseFigureKind& each : options::houseFigureKinds()) {
    if (each.id == row["figure"] && each.stricter != options::Stricter::free) {
      return times(each.stricter == options::Stricter::higher ? 1.4 : 0.7, 0.5)(text, row);
    }
  }
  return {};
}

const Rules loads{"point-load", "zone-load", "hoist", "bar", "hardware"};
const std::string heavier =
    "a greater mass loads points, hoists, bar and hardware more; joints, contacts and picks may be relieved "
    "where it stands, and the wind moves a heavier hang less";
const std::string unset = "where no setting is left travel fails, and with it the option; the other rules "
                          "then have nothing to judge";
const std::string unbounded = "where the doubts leave no bound, travel, chain or contact fails, and with it "
                              "the option; the other rules then have "
                              "no worst figure that could fail";
const std::string place = "a place: what loads one part more relieves another";
const std::string words = "words: no rule computes with them";
const std::string search = "decides which stacks there are, not how one is judged";
const std::string names = "a name of another record";
const std::string cabling = "of the cabling: no rule reads it";
const std::string hung = "which very unit hangs where: options are of types";

Column up(Kind kind, const char* record, const char* heading, double factor = 1.4) {
  return {kind, record, heading, {{times(factor, 0.5), {}}}, {}};
}
Column down(Kind kind, const char* record, const char* heading) {
  return {kind, record, heading, {{times(0.6), {}}, {times(0.95), {}}}, {}};
}
Column mass(const char* record, const char* heading) {
  return {Kind::types, record, heading, {{times(1.3), loads}}, heavier};
}
Column none(Kind kind, const char* record, const char* heading, const std::string& why) {
  return {kind, record, heading, {}, why};
}
Column ways(Kind kind, const char* record, const char* heading, std::vector<Way> all, std::string why = {}) {
  return {kind, record, heading, std::move(all), std::move(why)};
}

std::vector<Column> ofTypes() {
  constexpr Kind k = Kind::types;
  const Worse yesToNo = wordFrom({{"yes", "no"}});
  return {
      mass("cabinet", "mass"),
      ways(k, "cabinet", "width", {{times(1.2), {"lowest-edge", "headroom", "wind"}}},
           "sides farther apart hold a rolled stack with less"),
      down(k, "cabinet", "throw"),
      up(k, "cabinet", "face area"),
      up(k, "cabinet", "force coefficient"),
      none(k, "cabinet", "engagement", "read by the build plan, not by a rule"),
      ways(k, "cabinet", "mass tolerance", {{times(3.0, 0.5), {"bar", "travel", "chain", "option"}}},
           unbounded),
      ways(k, "cabinet", "centre tolerance", {{times(3.0, 0.5), {"travel", "option"}}}, unbounded),
      ways(k, "cabinet", "place tolerance", {{times(3.0, 0.5), {"travel", "option"}}}, unbounded),
      ways(k, "cabinet", "cover lowest", {{plus(2.0), {}}}),
      ways(k, "cabinet", "cover highest", {{plus(-2.0), {}}}),
      down(k, "cabinet", "cover across"),
      ways(k, "bar", "mass tolerance", {{times(3.0, 0.5), {"bar", "travel", "chain", "option"}}}, unbounded),
      ways(k, "bar", "centre tolerance", {{times(3.0, 0.5), {"travel", "option"}}}, unbounded),
      ways(k, "bar", "place tolerance", {{times(3.0, 0.5), {"travel", "option"}}}, unbounded),
      mass("bar", "head mass"),
      mass("bar", "frame mass"),
      ways(k, "bar", "tilt travel", {{narrower, {"travel", "option"}}}, unset),
      ways(k, "bar", "pan travel", {{narrower, {}}}),
      down(k, "bar", "swing limit"),
      up(k, "bar", "width", 1.2),
      down(k, "bar", "hoist offset limit"),
      down(k, "picks", "limit"),
      ways(k, "picks", "limit includes factors", {{yesToNo, {}}}),
      ways(k, "picks", "most cabinets", {{plus(-1), {}}, {plus(-3), {}}}),
      down(k, "hoist", "limit"),
      up(k, "hoist", "body mass"),
      ways(k, "hoist", "body climbs", {{wordFrom({{"no", "yes"}}), {}}}),
      up(k, "hoist", "chain mass"),
      up(k, "hoist", "chain bag mass", 5.0),
      ways(k, "hoist", "chain length",
           {{times(0.7), {"lift-height"}}, {times(1.4), {"point-load", "zone-load", "hardware"}}},
           "a shorter chain lifts less high, a longer one weighs more"),
      up(k, "hoist", "closed length"),
      up(k, "hoist", "speed"),
      ways(k, "hoist", "hoisting class", {{wordFrom({{"HC1", "HC2"}, {"HC2", "HC3"}, {"HC3", "HC4"}}), {}}}),
      ways(k, "hoist", "holds without secondary", {{yesToNo, {}}}),
      down(k, "chain", "limit"),
      ways(k, "chain", "limit includes factors", {{yesToNo, {}}}),
      mass("chain", "mass per length"),
      ways(k, "chain", "pitch tolerance", {{times(3.0, 0.5), {"travel", "option"}}}, unbounded),
      down(k, "hardware", "limit"),
      up(k, "hardware", "mass", 3.0),
      up(k, "hardware", "length", 1.5),
      ways(k, "hardware", "design factor", {{times(0.6), {}}}),
      ways(k, "join", "travel", {{narrower, {"travel", "option"}}}, unset),
      down(k, "join", "pin limit"),
      down(k, "join", "contact limit"),
      down(k, "join", "stop limit"),
      up(k, "join", "side share", 1.2),
      ways(k, "join", "limit includes factors", {{yesToNo, {}}}),

      none(k, "cabinet", "name", names),
      none(k, "cabinet", "maker", words),
      none(k, "cabinet", "family", words),
      none(k, "cabinet", "centre of gravity", place),
      none(k, "cabinet", "next pin", place),
      none(k, "cabinet", "outline", place),
      none(k, "cabinet", "chain eye", place),
      none(k, "cabinet", "rear contact", place),
      none(k, "cabinet", "pins", place),
      none(k, "cabinet", "covers audience", "a cabinet more that covers reaches more and needs more figures"),
      none(k, "cabinet", "downfill", words),
      none(k, "cabinet", "level at 1 m", "level figures are advice: they gate nothing"),
      none(k, "cabinet", "source", words),
      none(k, "cabinet", "source date", words),
      none(k, "bar", "name", names),
      none(k, "bar", "maker", words),
      none(k, "bar", "head centre of gravity", place),
      none(k, "bar", "tilt axis", place),
      none(k, "bar", "tilt step", "the grid of the search"),
      none(k, "bar", "frame centre of gravity", place),
      none(k, "bar", "stack pin", place),
      none(k, "bar", "chain anchor", place),
      none(k, "bar", "datum", "where a tape is held: no rule"),
      none(k, "bar", "outline", place),
      none(k, "bar", "source", words),
      none(k, "bar", "source date", words),
      none(k, "picks", "bar", names),
      none(k, "picks", "arrangement", names),
      none(k, "picks", "spacing", place),
      none(k, "picks", "front pick", place),
      none(k, "picks", "rear pick", place),
      none(k, "picks", "only pick", place),
      none(k, "hoist", "name", names),
      none(k, "hoist", "maker", words),
      none(k, "hoist", "source", words),
      none(k, "hoist", "source date", words),
      none(k, "chain", "name", names),
      none(k, "chain", "maker", words),
      none(k, "chain", "pitch", "turns the held cabinet: no way is worse for all"),
      none(k, "chain", "fixed length", "turns the held cabinet: no way is worse for all"),
      none(k, "chain", "links", "more links weigh more, fewer reach less far: decides which marks there are"),
      none(k, "chain", "discard stretch", "read by no rule"),
      none(k, "chain", "source", words),
      none(k, "chain", "source date", words),
      none(k, "hardware", "name", names),
      none(k, "hardware", "stiffness",
           "a stiffer steel catches a drop harder, a softer one lets an apex sink"),
      none(k, "hardware", "maker", words),
      none(k, "hardware", "kind", words),
      none(k, "hardware", "source", words),
      none(k, "hardware", "source date", words),
      none(k, "cart", "name", names),
      none(k, "cart", "maker", words),
      none(k, "cart", "carries", names),
      none(k, "cart", "most", "fewer to a cart take more carts, but may fill them"),
      none(k, "cart", "mass", "read by no rule"),
      none(k, "cart", "length", "read by no rule"),
      none(k, "cart", "width", "read by no rule"),
      none(k, "cart", "height", "read by no rule"),
      none(k, "cart", "deck", "read by the build plan, not by a rule"),
      none(k, "cart", "high", "read by the build plan, not by a rule"),
      none(k, "cart", "source", words),
      none(k, "cart", "source date", words),
      none(k, "table", "name", names),
      none(k, "table", "maker", words),
      none(k, "table", "bars", search),
      none(k, "table", "chain", names),
      none(k, "table", "lowest", search),
      none(k, "table", "held", search),
      none(k, "table", "source", words),
      none(k, "table", "source date", words),
      none(k, "join", "table", names),
      none(k, "join", "above", search),
      none(k, "join", "below", search),
      none(k, "join", "joint", search),
      none(k, "join", "angles", place),
      none(k, "join", "opens to", "opening a joint turns all below it: no way is worse for all"),
      none(k, "count", "table", names),
      none(k, "count", "type", names),
      none(k, "count", "least", search),
      none(k, "count", "most", search),
      none(k, "connector", "name", names),
      none(k, "connector", "maker", cabling),
      none(k, "connector", "carries", cabling),
      none(k, "connector", "source", cabling),
      none(k, "connector", "source date", cabling),
      none(k, "socket", "cabinet", names),
      none(k, "socket", "name", names),
      none(k, "socket", "connector", cabling),
      none(k, "socket", "source", cabling),
      none(k, "socket", "source date", cabling),
      none(k, "loom end", "loom", names),
      none(k, "loom end", "name", names),
      none(k, "loom end", "connector", cabling),
      none(k, "loom end", "colour", cabling),
      none(k, "loom end", "reach", cabling),
      none(k, "loom end", "source", cabling),
      none(k, "loom end", "source date", cabling),
  };
}

std::vector<Column> ofUnits() {
  constexpr Kind k = Kind::units;
  const std::string fact =
      "a fact is appended, never changed: facts_that_get_worse changes them as they stand";
  return {
      ways(k, "examination rule", "months", {{plus(-5), {}}, {plus(-11), {}}}),
      ways(k, "unit", "state",
           {{wordFrom({{"ready", "in repair"}, {"away", "quarantined"}}), {}},
            {wordFrom({{"ready", "written off"}}), {}}}),
      ways(k, "unit", "hired until", {{later(-500), {}}}),

      none(k, "examination rule", "name", names),
      none(k, "examination rule", "kind", "what it is for"),
      none(k, "examination rule", "type", "what it is for"),
      none(k, "examination rule", "jurisdiction", words),
      none(k, "examination rule", "uses", "no rule of the demo counts uses; tests/model/fleet tries it"),
      none(k, "examination rule", "hours", "no rule of the demo counts hours; tests/model/fleet tries it"),
      none(k, "examination rule", "idle months", "no rule of the demo asks it; tests/model/fleet tries it"),
      none(k, "examination rule", "after exceptional", "nothing exceptional is in the files"),
      none(k, "examination rule", "at new site", "no assembly is in the files"),
      none(k, "examination rule", "source", words),
      none(k, "examination rule", "source date", words),
      none(k, "unit", "serial", names),
      none(k, "unit", "type", names),
      none(k, "unit", "kind", names),
      none(k, "unit", "owner", words),
      none(k, "unit", "place", words),
      none(k, "unit", "cart", "where it rides: no rule"),
      none(k, "unit", "cart position", "where it rides: no rule"),
      none(k, "unit", "weighed",
           "takes the place of the maker's figure: heavier is worse for loads, lighter for what a chain must "
           "hold"),
      none(k, "unit", "weighed on", words),
      none(k, "unit", "weighed by", words),
      none(k, "unit", "pieces", "no batch is in the demo; more pieces are more stock"),
      none(k, "place", "name", names),
      none(k, "place", "place kind", "where things are: no rule"),
      none(k, "place", "floor length", "of trucks: no rule"),
      none(k, "place", "floor width", "of trucks: no rule"),
      none(k, "place", "payload", "of trucks: no rule"),
      none(k, "place", "source", words),
      none(k, "place", "source date", words),
      none(k, "unit", "source", words),
      none(k, "unit", "source date", words),
      none(k, "unit", "last examination", fact),
      none(k, "unit", "certificate", words),
      none(k, "unit", "examiner", words),
      none(k, "examination", "serial", fact),
      none(k, "examination", "rule", fact),
      none(k, "examination", "date", fact),
      none(k, "examination", "result", fact),
      none(k, "examination", "examiner", words),
      none(k, "examination", "certificate", words),
      none(k, "examination", "remark", words),
      none(k, "examination", "entry", words),
      none(k, "examination", "corrects", fact),
      none(k, "examination", "recorded by", words),
      none(k, "examination", "recorded at", words),
  };
}

std::vector<Column> ofVenues() {
  constexpr Kind k = Kind::venues;
  const Worse basis = wordFrom({{"at rest", "dynamic"}});
  const Worse basisUnknown = wordFrom({{"at rest", "unknown"}, {"dynamic", "unknown"}});
  const std::string moved =
      "moved, the whole hang moves with it; what is judged here is the lean and what it adds to the loads";
  return {
      ways(k, "venue", "outdoors", {{wordFrom({{"no", "yes"}}), {}}}),
      ways(k, "venue", "low steel", {{plus(-1.0), {}}, {plus(-0.1), {}}}),
      ways(k, "venue", "least trim", {{plus(1.0), {}}}),
      ways(k, "venue", "most trim", {{plus(-1.0), {}}}),
      // Both points stand as far apart as the picks do, or farther: away from the other one is worse.
      ways(k, "point", "z", {{plus(-0.7), {"headroom", "lean"}}, {plus(1.5), {"lift-height"}}}, moved),
      ways(k, "point", "capacity", {{times(0.6), {}}, {times(0.95), {}}}),
      ways(k, "point", "basis", {{basis, {}}}),
      ways(k, "zone", "capacity", {{times(0.6), {}}, {times(0.95), {}}}),
      ways(k, "zone", "basis", {{basis, {}}}),
      up(k, "zone", "others' load", 1.8),
      ways(k, "obstruction", "x from", {{plus(-1.0), {}}}),
      ways(k, "obstruction", "x to", {{plus(1.0), {}}}),
      ways(k, "obstruction", "y from", {{plus(-1.0), {}}}),
      ways(k, "obstruction", "y to", {{plus(1.0), {}}}),
      ways(k, "obstruction", "underside", {{plus(-0.5), {}}, {plus(-5.0), {}}}),
      ways(k, "house rule", "value", {{stricter, {}}}, "some figures the house is free to set"),

      none(k, "venue", "name", names),
      none(k, "venue", "town", words),
      none(k, "venue", "time zone", words),
      none(k, "venue", "latitude", words),
      none(k, "venue", "longitude", words),
      none(k, "venue", "datum", words),
      none(k, "venue", "access", words),
      none(k, "venue", "source", words),
      none(k, "venue", "source date", words),
      none(k, "point", "venue", names),
      none(k, "point", "name", names),
      none(k, "point", "x", "spacing is made worse in points_farther_apart"),
      none(k, "point", "y", "spacing is made worse in points_farther_apart"),
      none(k, "point", "zone", names),
      none(k, "point", "source", words),
      none(k, "point", "source date", words),
      none(k, "bridle", "venue", names),
      none(k, "bridle", "name", names),
      none(k, "bridle", "points", names),
      none(k, "bridle", "x", place),
      none(k, "bridle", "y", place),
      none(k, "bridle", "z", "a higher apex leaves more room and flattens the legs"),
      none(k, "bridle", "steels", "which lengths there are to choose from"),
      none(k, "bridle", "shackle", names),
      none(k, "bridle", "tolerance", "decides which make-ups there are, not how one is judged"),
      none(k, "bridle", "source", words),
      none(k, "bridle", "source date", words),
      none(k, "zone", "venue", names),
      none(k, "zone", "name", names),
      none(k, "zone", "others' load by", words),
      none(k, "zone", "others' load on", words),
      none(k, "obstruction", "venue", names),
      none(k, "obstruction", "name", names),
      none(k, "section", "venue", names),
      none(k, "section", "name", names),
      none(k, "section", "profile", place),
      none(k, "section", "ear height", place),
      none(k, "section", "y from", place),
      none(k, "section", "y to", place),
      none(k, "section", "front x", place),
      none(k, "section", "front y", place),
      none(k, "section", "bearing", place),
      none(k, "section", "width", "what must be covered, as each section's place is"),
      none(k, "section", "radius", place),
      none(k, "house rule", "venue", names),
      none(k, "house rule", "figure", names),
      none(k, "house rule", "unit", words),
      none(k, "house rule", "because", words),
      none(k, "house rule", "signed by", words),
      none(k, "house rule", "signed on", "which of two statements is the newer one"),
  };
}

std::vector<Column> ofShows() {
  constexpr Kind k = Kind::shows;
  std::vector<Column> all{
      ways(k, "show", "away from", {{later(-3), {}}}),
      none(k, "plug", "tour", cabling),
      none(k, "plug", "show", cabling),
      none(k, "plug", "hang", cabling),
      none(k, "plug", "cabinet", cabling),
      none(k, "plug", "socket", cabling),
      none(k, "plug", "type", cabling),
      none(k, "plug", "loom", cabling),
      none(k, "plug", "label", cabling),
      none(k, "plug", "end", cabling),
      none(k, "plug", "rack", cabling),
      none(k, "plug", "channel", cabling),
      none(k, "plug", "source", cabling),
      none(k, "plug", "source date", cabling),
      none(k, "hung unit", "tour", hung),
      none(k, "hung unit", "show", hung),
      none(k, "hung unit", "hang", hung),
      none(k, "hung unit", "cabinet", hung),
      none(k, "hung unit", "serial", hung),
      none(k, "hung unit", "source", hung),
      none(k, "hung unit", "source date", hung),
      ways(k, "show", "away to", {{later(40), {}}, {later(300), {}}}),
      ways(k, "show", "people beneath", {{wordFrom({{"no", "yes"}}), {}}}),
      up(k, "show", "wind", 1.6),
      ways(k, "show", "wind basis", {{wordFrom({{"gust", "mean"}}), {}}}),
      up(k, "show", "wind averaging", 3.0),
      ways(k, "show", "wind height", {{plus(-20.0), {}}}),
      ways(k, "hang", "least trim", {{plus(1.0), {}}}),
      ways(k, "hang", "cable mass", {{times(3.0, 20.0), loads}}, heavier),
      ways(k, "hang", "wet mass", {{times(4.0, 60.0), {}}}),
      ways(k, "hang", "rigging", {{onePieceMore, {}}}),
      ways(k, "hang", "secondary slack", {{plus(0.01), {}}, {plus(0.5), {}}}),
      ways(k, "house rule", "value", {{stricter, {}}}, "some figures the house is free to set"),

      none(k, "show", "temperature", "absorption has no way that is worse; level is advice"),
      none(k, "show", "humidity", "absorption has no way that is worse; level is advice"),
      none(k, "show", "pressure", "absorption has no way that is worse; level is advice"),
      none(k, "hang", "points", "which points there are to choose from"),
      none(k, "hang", "pan", "no way is worse for all"),
      none(k, "hang", "sections", "what it must cover"),
      none(k, "hang", "secondary", "one piece less may be the weakest: dropped as a whole"),
      none(k, "hang", "mirrors", names),
  };
  for (const auto& [record, headings] : std::map<const char*, std::vector<const char*>>{
           {"tour", {"name", "act", "source", "source date"}},
           {"show", {"tour", "name", "venue", "from", "to", "load-in", "load-out", "source", "source date"}},
           {"hang",
            {"tour", "show", "name", "tables", "chosen option", "chosen because", "chosen by", "chosen on"}},
           {"house rule", {"tour", "show", "figure", "unit", "because", "signed by", "signed on"}},
           {"person", {"name", "role"}},
           {"mark",
            {"stack", "bar", "chain", "chain serial", "tilt", "holes", "mark", "measured", "tour", "show",
             "hang", "place", "weather", "date", "by", "entry", "corrects", "recorded at"}}}) {
    for (const char* heading : headings) {
      all.push_back(none(k, record, heading, words));
    }
  }
  return all;
}

} // namespace

QString Row::operator[](const char* heading) const {
  const auto at = headings.indexOf(QString::fromUtf8(heading));
  return at < 0 ? QString() : cells[at];
}

void Row::set(const QString& heading, const QString& text) {
  cells[headings.indexOf(heading)] = text;
}

const std::vector<Column>& columns() {
  static const std::vector<Column> all = [] {
    std::vector<Column> together = ofTypes();
    for (const auto& more : {ofUnits(), ofVenues(), ofShows()}) {
      together.insert(together.end(), more.begin(), more.end());
    }
    return together;
  }();
  return all;
}

std::string emptyMeans(const QString& record, const QString& heading) {
  static const std::map<std::pair<QString, QString>, std::string> meanings{
      {{"venue", "least trim"}, "the venue sets no lower bound"},
      {{"venue", "most trim"}, "the venue sets no upper bound"},
      {{"hang", "least trim"}, "sight lines set no lower bound"},
      {{"hang", "sections"}, "all sections"},
      {{"hang", "tables"}, "all tables"},
      {{"bridle", "x"}, "midway between its points"},
      {{"bridle", "y"}, "midway between its points"},
      {{"bridle", "tolerance"}, "the house's figure"},
      {{"hang", "secondary"}, "none is fitted: over people everything that it weighs on is unproven then"},
      {{"hang", "secondary slack"}, "the house's figure"},
      {{"hardware", "design factor"}, "the coefficient that the table of working coefficients builds on"},
      {{"unit", "hired until"}, "it need not go back"},
      {{"unit", "state"}, "ready"},
      {{"section", "y from"}, "the whole width"},
      {{"section", "y to"}, "the whole width"},
      {{"cabinet", "covers audience"}, "no"},
  };
  const auto found = meanings.find({record, heading});
  return found == meanings.end() ? std::string() : found->second;
}

} // namespace hangbook::testing
