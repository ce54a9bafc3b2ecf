// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "catalogue/catalogue.h"
#include "marks/learning.h"
#include "marks/mark.h"

namespace hangbook::marks {

/// What a record needs before it can be learned from, or why it cannot.
struct Observed {
  std::optional<Observation> observation;
  QString whyNot;
};

/// The geometry of a record by the makers' data, with the slips that it could hide: another hole of each
/// joint that has several, another type of chain.
Observed observedOf(const catalogue::Catalogue& catalogue, const MarkUsed& used);

/// Pitch, fixed length and discard figure of a type; none where pitch or fixed length is not known.
std::optional<ChainFigures> chainFigures(const catalogue::Catalogue& catalogue, const QString& type);

/// One chain: by its serial, or those of a type whose serial nobody noted.
struct ChainBook {
  QString chain;                 ///< type
  QString serial;                ///< empty: not noted
  std::vector<MarkUsed> records; ///< each with an observation, in the order of `learned.fits`
  std::vector<std::pair<MarkUsed, QString>> leftOut; ///< and why
  std::optional<Learned> learned;                    ///< none: the chain's own figures are not known
};

/// Every chain of the mark book with what its records say. Corrected records must not be among them. What has
/// no serial is never learned from: it may be several chains.
std::vector<ChainBook> chainBooks(const catalogue::Catalogue& catalogue, const std::vector<MarkUsed>& used);

/// The pivot's triangle of a stack with these holes; none where the makers' data do not give it.
std::optional<hang::PivotTriangle> triangleOf(const catalogue::Catalogue& catalogue, const QStringList& stack,
                                              const QString& bar, const QString& chain,
                                              const std::vector<double>& holesDeg, QString* whyNot = nullptr);

} // namespace hangbook::marks
