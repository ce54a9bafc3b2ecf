// SPDX-License-Identifier: GPL-3.0-or-later
// Which tilts and trims options stand at, of shows no two parts of which are alike, as they are and with what
// leaves no setting, against what was kept.
#include <boost/test/unit_test.hpp>

#include "kept/kept.h"
#include "kept/unlike_show.h"
#include "model/options/show_fixture.h"
#include "options/search.h"
#include "options/setting_map.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Option;
using options::SettingColumn;
using options::SettingMap;
using options::Snapshot;

namespace {

void word(Line& line, const QString& text) {
  line.word(text.toStdString());
}

void add(Line& line, const SettingMap& map) {
  line.plain(std::to_string(map.columns.size()) + "x" + std::to_string(map.marks.size()) + ' ');
  line.number(map.mark ? std::optional<double>(*map.mark) : std::nullopt);
  line.number(map.tiltStepDeg);
  line.number(static_cast<double>(map.runs));
  word(line, map.impossible);
  for (const SettingColumn& column : map.columns) {
    line.number(column.tiltDeg);
    word(line, column.shutBy.join(u' '));
    for (const options::SettingStretch& each : column.stretches) {
      line.number(each.lowM);
      line.number(each.highM);
      word(line, each.lowRule + u' ' + each.highRule);
      for (const auto& part : each.parts) {
        line.number(part.lowM);
        line.number(part.highM);
        word(line, wordFor(part.verdict));
      }
    }
  }
  for (const options::MarkLine& mark : map.marks) {
    line.number(mark.mark);
    for (const auto& at : mark.at) {
      line.number(at.tiltDeg);
      word(line, wordFor(at.best));
    }
  }
}

/// With steel and bounds that end the trims within a few metres.
Snapshot standingShow(Chance& by) {
  Snapshot show = smallHarbourShow();
  show.catalogue.bars.front().tiltStep = degrees(by.between(3.5, 4.5));
  show.catalogue.chains.front().pitch = metres(by.between(0.08, 0.1));
  show.catalogue.chains.front().links = 26;
  show.venue.lowSteel = metres(by.between(18, 18.5));
  show.show.hangs.front().leastTrim = metres(by.between(8, 8.5));

  return show;
}

/// As it is; with a room so low that little stands; with parts that are no longer there; with a figure less.
void mapped(std::vector<Line>& lines, const Snapshot& show, const Option& option, const std::string& name) {
  const auto of = [&](const char* what, auto change) {
    Snapshot changed = show;
    Option meant = option;
    change(changed, meant);
    Line line(name + what);
    double before = -1.0;
    bool rises = true;
    add(line, options::settingMap(changed, meant, [&](double share) {
          rises = rises && share >= before && share <= 1.0;
          before = share;
          return true;
        }));
    line.plain(rises ? "" : "back");
    lines.push_back(line);
  };
  of("", [](Snapshot&, Option&) {});
  of(" low", [](Snapshot& now, Option&) { now.venue.mostTrim = metres(6.2); });
  of(" without steel", [](Snapshot& now, Option&) {
    now.venue.lowSteel.reset();
    now.venue.obstructions.clear();
  });
  of(" without a lowest trim", [](Snapshot& now, Option&) {
    now.venue.leastTrim.reset();
    now.show.hangs.front().leastTrim.reset();
  });
  of(" shut", [](Snapshot& now, Option&) { now.venue.lowSteel = metres(2); });
  of(" no hoist", [](Snapshot& now, Option&) { now.catalogue.hoists.clear(); });
  of(" no bar", [](Snapshot& now, Option&) { now.catalogue.bars.clear(); });
  of(" no table", [](Snapshot& now, Option&) { now.catalogue.tables.clear(); });
  of(" no points", [](Snapshot& now, Option&) { now.venue.points.clear(); });
  of(" no mass", [](Snapshot& now, Option&) { now.catalogue.bars.front().frameMass.reset(); });
  of(" no hang", [](Snapshot&, Option& meant) { meant.key.hang = QStringLiteral("none"); });
  of(" no setting", [](Snapshot&, Option& meant) { meant.setting.reset(); });
  of(" panned beyond", [](Snapshot&, Option& meant) { meant.setting->panDeg = 60; });
  of(" other mark", [](Snapshot&, Option& meant) { meant.setting->mark = 3000; });
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(maps_come_out_as_kept) {
  std::vector<Line> lines;
  int looked = 0;
  for (std::uint64_t seed = 400; looked < 4; ++seed) {
    Snapshot show = unlikeShow(seed);
    show.catalogue.bars.front().tiltStep = degrees(seed % 2 == 0 ? 3 : 8);
    const std::vector<Option> all = options::decide(show, QStringLiteral("left")).hangs.front().options;
    const auto some = std::ranges::find_if(all, [&](const Option& each) {
      return each.setting && each.key.stack.size() < 4 && (looked % 2 == 0) == each.setting->mark.has_value();
    });
    if (some != all.end()) {
      ++looked;
      mapped(lines, show, *some, "map " + std::to_string(seed));
    }
  }
  compareWithKept(lines, "maps.txt");
}

BOOST_AUTO_TEST_CASE(maps_of_what_stands_come_out_as_kept) {
  std::vector<Line> lines;
  Chance by(7);
  Snapshot show = standingShow(by);
  const std::vector<Option> all = options::decide(show, QStringLiteral("left")).hangs.front().options;
  BOOST_REQUIRE((all.front().verdict < options::Verdict::unproven));
  BOOST_REQUIRE(all.front().setting->mark.has_value());
  mapped(lines, show, all.front(), "map that stands");
  show.catalogue.tables.front().lowest.pop_back(); // without the downfill: the audience is not all covered
  show.show.house.push_back(
      {QStringLiteral("cover-share"), 60.0, {}, {}, QStringLiteral("Edda"), show.today});
  const std::vector<Option> plain = options::decide(show, QStringLiteral("left")).hangs.front().options;
  BOOST_REQUIRE(!plain.front().setting->mark.has_value());
  mapped(lines, show, plain.front(), "map without a chain");
  compareWithKept(lines, "maps_standing.txt");
}

BOOST_AUTO_TEST_SUITE_END()
