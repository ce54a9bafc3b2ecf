// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/load_path.h"

#include <cmath>
#include <limits>

#include "options/build_force.h"
#include "options/carriers.h"
#include "options/catching.h"
#include "options/loads.h"
#include "options/working_limit.h"

namespace hangbook::options {
namespace {

class Path {
public:
  Path(const Case& option, const Settled& settled, double trimM)
      : option_(option), limits_(*option.weight), settled_(settled), trim_(trimM) {}

  std::vector<PathLink> trace() {
    for (std::size_t pick = 0; pick < option_.points.size(); ++pick) {
      legs(pick);
      rigging(pick);
      hoist(pick);
      secondary(pick);
    }
    rule("bar", option_.bar->name, QStringLiteral("all below the hooks"), barRule, settled_,
         QStringLiteral("maker's data for %1: %2").arg(option_.bar->name, option_.bar->source.text));
    for (std::size_t i = 0; i < option_.joins.size(); ++i) {
      joint(i);
    }
    if (option_.chain != nullptr) {
      rule("chain", option_.chain->name, QStringLiteral("to element %1").arg(option_.held), chainRule,
           settled_,
           QStringLiteral("maker's data for %1: %2").arg(option_.chain->name, option_.chain->source.text));
    }
    return std::move(links_);
  }

private:
  void add(const char* kind, const QString& link, const QString& at, double loadKn, double limitKn,
           const QString& source) {
    PathLink made;
    made.kind = QString::fromLatin1(kind);
    made.link = link;
    made.at = at;
    made.loadKn = loadKn;
    if (std::isfinite(limitKn)) {
      made.limitKn = limitKn;
    }
    if (std::isfinite(loadKn) && limitKn > 0.0) {
      made.usePercent = 100.0 * loadKn / limitKn;
    }
    made.verdict = againstLoadLimit(loadKn, limitKn);
    made.source = source;
    links_.push_back(std::move(made));
  }

  /// A link that a rule judges by itself: the very figures of its finding.
  void rule(const char* kind, const QString& link, const QString& at, const Rule& by, const Settled& settled,
            const QString& source) {
    const Use use = by.evaluate(option_, &settled, trim_);
    if (use.applies) {
      add(kind, link, at, use.value, use.limit, source);
    }
  }

  void piece(const char* kind, const catalogue::HardwareType& type, const QString& at, double loadN) {
    add(kind, type.name, at, loadN / 1000.0, usableLimit(limits_, type) / 1000.0,
        QStringLiteral("maker's data for %1: %2; %3")
            .arg(type.name, type.source.text, usableSource(limits_, type)));
  }

  void legs(std::size_t pick) {
    if (option_.bridles[pick] == nullptr) {
      return;
    }
    const BridledPick& bridle = *option_.bridles[pick];
    for (std::size_t i = 0; i < bridle.legs.size(); ++i) {
      const double load = worstTension(option_, settled_, trim_, pick, i) * factorsFor(limits_, false);
      const QString at =
          QStringLiteral("bridle %1 to point %2").arg(bridle.apex.name, bridle.legs[i].point->name);
      for (const LegPiece& each : bridle.legs[i].pieces) {
        piece("bridle", *each.type, at, load);
      }
    }
  }

  void pieces(const char* kind, const std::vector<Piece>& list, const QString& at, double loadN) {
    for (const Piece& each : list) {
      if (each.type != nullptr) {
        piece(kind, *each.type, at, loadN);
      } else {
        // What it weighs is not known either, and so not what hangs from it.
        add(kind, each.name, at, notKnown, notKnown, QStringLiteral("not in the makers' data"));
      }
    }
  }

  void rigging(std::size_t pick) {
    pieces("rigging", limits_.hardware, QStringLiteral("under %1").arg(option_.points[pick]->name),
           highestAtRest(option_, settled_, trim_, pick) * factorsFor(limits_, false));
  }

  /// The hoist with its two hooks, at one pick alone.
  void hoist(std::size_t pick) {
    Settled alone = settled_;
    for (std::size_t other = 0; other < alone.statics.pickCount; ++other) {
      if (other != pick) {
        // The rule tells of this one.
        alone.statics.pickLoads[other].load = alone.build.most[other] =
            -std::numeric_limits<double>::infinity();
      }
    }
    rule("hoist", QStringLiteral("%1 with its hooks").arg(option_.hoist->name),
         QStringLiteral("%1 pick").arg(pickName(settled_, pick)), hoistRule, alone,
         QStringLiteral("maker's data for %1: %2").arg(option_.hoist->name, option_.hoist->source.text));
  }

  void secondary(std::size_t pick) {
    const QString at = QStringLiteral("%1 pick, caught").arg(pickName(settled_, pick));
    const Catching catching = catchingAt(option_, settled_, pick);
    for (const Piece& each : limits_.secondarySteel) {
      add("secondary", each.name, at, catching.load / 1000.0, each.limit / 1000.0,
          QStringLiteral("maker's data for %1: %2; %3")
              .arg(each.name, each.source, catchingWords(option_, catching)));
    }
  }

  void joint(std::size_t number) {
    Settled alone = settled_;
    for (std::size_t other = 0; other < alone.statics.joints.size(); ++other) {
      if (other != number) {
        alone.statics.joints[other].pinCount = 0;
        alone.statics.joints[other].contact.reset();
        alone.statics.joints[other].stop.reset();
        alone.statics.joints[other].end.reset();
      }
    }
    for (std::size_t other = 0; other < alone.build.carried.joints.size(); ++other) {
      if (other != number) {
        alone.build.carried.joints[other] = {};
      }
    }
    rule("joint", QStringLiteral("joint of %1").arg(option_.cabinets[number]->name),
         QStringLiteral("element %1, worst pin or contact").arg(number + 1), jointRule, alone,
         QStringLiteral("stacking table %1: %2").arg(option_.table->name, option_.table->source.text));
  }

  const Case& option_;
  const WeightLimits& limits_;
  const Settled& settled_;
  double trim_;
  std::vector<PathLink> links_;
};

} // namespace

std::vector<PathLink> loadPath(const Case& option, const Settled& settled, double trimM) {
  return Path(option, settled, trimM).trace();
}

} // namespace hangbook::options
