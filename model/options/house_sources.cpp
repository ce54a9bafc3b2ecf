// SPDX-License-Identifier: GPL-3.0-or-later
// Which house figures a rule reads, so that its finding can say who set them where.
#include <algorithm>
#include <array>

#include "options/house_figures.h"

namespace hangbook::options {
namespace {

struct Reads {
  const char* rule;
  std::vector<const char*> figures;
};

const std::vector<Reads>& allReads() {
  static const std::vector<Reads> reads{
      {"point-load", {"dynamic-factor"}},
      {"zone-load", {"dynamic-factor"}},
      {"bridle", {"bridle-angle-least", "bridle-angle-preferred", "bridle-tolerance", "dynamic-factor"}},
      {"uneven", {"hoist-difference", "dynamic-factor", "lift-share", "people-beneath-hoist"}},
      {"hoist", {"dynamic-factor", "lift-share", "people-beneath-hoist"}},
      {"bar", {"dynamic-factor", "people-beneath-accessory"}},
      {"joint", {"dynamic-factor", "joint-side-share", "people-beneath-accessory"}},
      {"contact", {"joint-open-most"}},
      {"chain", {"dynamic-factor", "people-beneath-accessory"}},
      {"pick-share", {"pick-share-least", "side-difference"}},
      {"hardware",
       {"dynamic-factor", "people-beneath-accessory", "working-coefficients", "secondary-factor",
        "secondary-drop"}},
      {"wind", {"wind-force-coefficient", "dynamic-factor", "lift-share"}},
      {"lean", {"lean-most"}},
      {"lowest-edge", {"least-trim", "trim-margin", "chain-tail"}},
      {"headroom", {"headroom-clearance", "headroom-margin"}},
      {"lift-height", {"bar-met-height", "lift-height-margin"}},
      {"travel", {"angle-margin"}},
      {"cover", {"cover-share", "cover-margin"}},
      {"stock", {"spare-cabinets", "spare-bars", "spare-hoists", "spare-chains", "hardware-by-serial"}},
      {"examined", {"examination-margin", "examine-cabinets"}},
  };
  return reads;
}

} // namespace

QString House::sourcesOf(const QString& rule, const QString& said) const {
  const auto& all = allReads();
  const auto reads = std::find_if(all.begin(), all.end(),
                                  [&](const Reads& each) { return rule == QLatin1String(each.rule); });
  if (reads == all.end() || (tour_.empty() && venue_.empty() && show_.empty())) {
    return {};
  }
  QStringList parts;
  for (const char* id : reads->figures) {
    const HouseValue value = figure(QString::fromLatin1(id));
    if (value.source.startsWith(QStringLiteral("house rule of")) && !said.contains(value.source)) {
      parts.append(QStringLiteral("%1%2: %3")
                       .arg(QString::fromLatin1(id),
                            value.value ? QStringLiteral(" ") + QString::number(*value.value) : QString(),
                            value.source));
    }
  }
  return parts.join(QStringLiteral("; "));
}

} // namespace hangbook::options
