// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/record_parts.h"

#include "desk/words/words.h"

namespace hangbook::desk {

PartWords wordsOfPart(const QString& sort) {
  if (sort == QLatin1String("join")) {
    return {
        QStringLiteral("recordJoints"),
        Words::tr("&Joints"),
        Words::tr("Joints"),
        Words::tr("&Add a joint"),
        Words::tr("Joint in row %1"),
        Words::tr("Above is the type over the joint, empty straight under the bar; below the type under "
                  "it. Joint: seated, pinned or pivot. Angles: one for each hole, “0; -2.5”; a pivot has a "
                  "travel, “-30; 0”. A pair that no row joins may not stand so.")};
  }
  if (sort == QLatin1String("count")) {
    return {QStringLiteral("recordCounts"),
            Words::tr("&How many"),
            Words::tr("Permitted numbers"),
            Words::tr("&Add a type"),
            Words::tr("Number in row %1"),
            Words::tr("A type without a row may not stand in a stack of this table at all.")};
  }
  if (sort == QLatin1String("picks")) {
    return {
        QStringLiteral("recordPicks"),
        Words::tr("&Picks"),
        Words::tr("Ways of picking it up"),
        Words::tr("&Add a way"),
        Words::tr("Picks in row %1"),
        Words::tr("Arrangement: side-pair, fore-aft-pair or single. A side pair has a spacing, a fore-aft "
                  "pair two places, a single pick one.")};
  }
  if (sort == QLatin1String("socket")) {
    return {QStringLiteral("recordSockets"),
            Words::tr("Soc&kets"),
            Words::tr("Sockets"),
            Words::tr("&Add a socket"),
            Words::tr("Socket in row %1"),
            Words::tr("Name as written beside it; connector is the kind that it takes.")};
  }
  return {QStringLiteral("recordEnds"),
          Words::tr("&Ends"),
          Words::tr("Ends of the loom"),
          Words::tr("&Add an end"),
          Words::tr("End in row %1"),
          Words::tr("Only a loom has ends. Name as written on it; reach along the loom from its end at the "
                    "rack.")};
}

} // namespace hangbook::desk
