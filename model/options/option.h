// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <QString>
#include <QStringList>

#include "catalogue/bar.h"
#include "hang/hang.h"
#include "options/build_table.h"
#include "options/level_table.h"
#include "options/stop_table.h"
#include "options/wind_table.h"

/// What the search answers: plain values for tables, sheets and the window. Figures are plain doubles in
/// the unit that the name gives, since they are results, not inputs. World height is above the venue's datum.
namespace hangbook::options {

/// In rising order of trouble: an option's verdict is its worst finding's.
enum class Verdict { holds, tight, unproven, fails };

/// What one rule says of one option at one setting. Every rule always has a finding.
struct Finding {
  QString rule; ///< stable id: "point-load"
  Verdict verdict = Verdict::unproven;
  bool applies = true; ///< false: the rule does not apply, and `text` says why
  std::optional<double> value;
  std::optional<double> limit;
  QString unit;
  std::optional<double> usePercent; ///< value ÷ limit for upper limits on loads, else none
  QString source;                   ///< where the limit came from
  QString text;                     ///< one sentence that a rigger can check with a pencil
  /// The value with every figure as stated; `value` is at their unfavourable end, where the rule is judged.
  std::optional<double> nominal;
  /// False where what the figures may come to does not follow: `value` is then only part of the worst.
  bool worstFollows = true;
};

/// How far one kind of figure may be off.
struct DoubtFigure {
  QString what;   ///< "masses", "pitch of …"
  QString figure; ///< "± 2 %"
  QString source;
  bool operator==(const DoubtFigure&) const = default;
};

struct Setting {
  double tiltDeg{};
  double panDeg{};
  double trimM{};               ///< lowest edge above the datum
  std::optional<int> mark;      ///< none: no chain
  std::vector<double> holesDeg; ///< angle of each fixed joint with more than one hole, from the bar down
};

struct TrimWindow {
  double lowM{};
  double highM{};
  QString lowSetBy;  ///< rule id
  QString highSetBy; ///< rule id
};

struct PickLoad {
  QString name; ///< left, right, front, rear, single
  double loadKn{};
  QStringList points;
};

struct LoadPart {
  QString what; ///< pick, hoist, chain, rigging, cable
  double kn{};
};

struct PointResult {
  QString point;
  double staticKn{};
  double dynamicKn{};
  std::optional<double> capacityKn;
  std::vector<LoadPart> parts;         ///< add up to staticKn
  double horizontalKn{};               ///< sideways, by a bridle's leg or a leaning chain, at rest
  std::optional<double> worstStaticKn; ///< at the unfavourable end of all doubts
  std::optional<double> worstDynamicKn;
};

/// One link of the load path.
struct PathLink {
  QString kind; ///< bridle, rigging, hoist, secondary, bar, joint, chain
  QString link;
  QString at;
  double loadKn{};               ///< with factors, as its rule judges it
  std::optional<double> limitKn; ///< what it may take here; none: nobody stated it
  std::optional<double> usePercent;
  Verdict verdict = Verdict::unproven;
  QString source;
};

/// Some of one type of hardware.
struct HardwareCount {
  QString type;
  int count{};
};

struct BridleLegResult {
  QString point;
  double wantedM{};
  double lengthM{};                  ///< as made up
  std::vector<HardwareCount> pieces; ///< steels, then shackles
  double tensionKn{};                ///< at its upper end, at rest
  double horizontalKn{};
  double fromHorizontalDeg{};
};

/// A pick held from points that do not stand over it.
struct BridleResult {
  QString pick;
  QString bridle;
  std::array<double, 3> wantedM{}; ///< apex, venue coordinates
  std::array<double, 3> apexM{};   ///< as it hangs
  std::optional<double> shiftM;    ///< what the load moves it; none: the legs' stiffness is not known
  std::vector<BridleLegResult> legs;
};

struct Aim {
  int element{};   ///< counted from 1 at the bar
  double aimDeg{}; ///< what an inclinometer on its side reads
};

/// The mark's angle and the two links beside it.
struct MarkAngle {
  int mark{};
  std::optional<double> angleDeg; ///< none: out of the joint's travel
};

/// What names an option: no figures, no random identifiers.
struct OptionKey {
  QString hang;
  QStringList stack; ///< type names from the bar down
  QString table;
  QString bar;
  catalogue::Picks picks = catalogue::Picks::sidePair;
  QString hoist;
  QStringList points; ///< one for each pick, in the order of the picks
};

/// First 16 hex digits of SHA-256 over hang, type names, bar, picks, hoist and point names.
QString idOf(const OptionKey& key);

struct Option {
  QString id;
  OptionKey key;
  bool downfill{};
  Verdict verdict = Verdict::unproven;
  std::optional<Setting> setting; ///< none: no setting is possible at all
  std::optional<TrimWindow> trimWindow;
  std::vector<PickLoad> pickLoads;
  std::vector<PointResult> points; ///< the venue's own, each once
  std::vector<BridleResult> bridles;
  std::vector<PathLink> loadPath; ///< from the points down
  std::vector<Aim> aims;
  std::vector<MarkAngle> marks;        ///< the setting's mark first, then the link below and the one above
  std::vector<DoubtFigure> doubts;     ///< that the findings were judged with
  QStringList weighed;                 ///< cabinets that the crew weighed, in words
  std::vector<Finding> findings;       ///< one for each rule, in the order of the rules
  std::optional<hang::Hang> hangInput; ///< the setting as an input to the statics
  std::vector<StepLoads> build;        ///< each step of the build, aiming, and the hang as set
  std::optional<WindAnswer> wind;      ///< outdoors
  std::vector<OneStops> stops;         ///< two hoists: each way in which one stops and the other runs on
  double massKg{};                     ///< everything below the hooks, at the setting
  double coveredPercent{};
  std::optional<double> datumHeightM; ///< tape height of the bar's datum at trim
  std::optional<LevelTable> level;    ///< advice, which no verdict reads; none where nothing can be said
};

/// Settings that one bound decided, see `best.h`.
struct BoundCount {
  QString bound; ///< best-found, no-better or all-fail
  QString rule;  ///< that proves it; empty where it is not one alone
  qint64 settings{};
};

/// How much was decided, and how.
struct Decided {
  qint64 options{};
  qint64 settings{}; ///< includes those by bound
  qint64 byBound{};
  std::vector<BoundCount> bounds; ///< add up to byBound, the largest first
  QString steps;                  ///< in words: "tilt in steps of 0.5°, every usable link, …"
};

struct HangOptions {
  QString hang;
  Decided decided;
  std::vector<Option> options; ///< ranked
};

struct ShowOptions {
  QString tour;
  QString show;
  QString venue;
  std::vector<HangOptions> hangs;
};

QString wordFor(Verdict verdict);        ///< holds, tight, unproven, fails
QString wordFor(catalogue::Picks picks); ///< side-pair, fore-aft-pair, single

} // namespace hangbook::options
