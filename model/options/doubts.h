// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "hang/doubt.h"
#include "options/option.h"
#include "options/rule.h"
#include "options/stacks.h"

/// What the figures of a hang may be off by: as makers and scales say, else as the house takes it.
namespace hangbook::options {

/// The mass of one cabinet of a type, kg.
struct KnownMass {
  double stated = notKnown; ///< what counts as its mass: as weighed where that is heavier, or all are weighed
  double lighter = notKnown;
  double heavier = notKnown;
  QString source;  ///< of the doubt
  QString weighed; ///< "Marram bass weighs 93.4 kg (B07 weighed 2027-03-02 by …)"; empty: nobody weighed one
};

/// An option is of types, so that any unit of the type may come to hang. Of those that may (none is written
/// off, or due back at its owner before the show) the heaviest weighed one counts on the heavy side and the
/// lightest on the light side, each with the scale's own doubt; the maker's figure with its tolerance counts
/// beside them until every such unit has been weighed. Where nobody weighed one, it is the maker's.
KnownMass massOfType(const Snapshot&, const House&, const catalogue::CabinetType&);

/// The same of a bar. What is weighed is the whole of it; what that differs from the maker's figure is spread
/// over frame and head in proportion to what the maker says of them, so that its centre of gravity stays.
/// Where the maker does not state the parts, nothing weighed counts: they are missing.
struct KnownBar {
  KnownMass frame;
  KnownMass head;
  KnownMass whole; ///< with head, where the type has one; says what was weighed
};
KnownBar massesOfBar(const Snapshot&, const House&, const catalogue::BarType&);

/// All of a rig's, and where they come from.
struct RigDoubts {
  hang::Doubts figures;
  double gearHeavier = 1.0; ///< factor on hoists, their chains and hardware at their heaviest
  double longer{};          ///< m, by which a hoist or a piece of hardware may be off its length, either way
  std::vector<DoubtFigure> sources;
  QStringList weighed;
};

/// `masses`: of the stack's cabinets. A house figure that cannot be read is NaN: nothing is then bounded.
RigDoubts doubtsOf(const House&, const Stack&, const catalogue::BarType&, const KnownBar&,
                   const catalogue::ChainType* chain, const calendar::Hang&,
                   const std::vector<KnownMass>& masses);

/// The same setting with every figure as stated.
Settled asStated(const Settled&);

/// Puts a solved setting at its unfavourable end. `hang` is what was solved, `doubting` of it and `doubts`.
void takeDoubts(hang::Doubting& doubting, const hang::Hang& hang, const RigDoubts& doubts, Settled& settled);

} // namespace hangbook::options
