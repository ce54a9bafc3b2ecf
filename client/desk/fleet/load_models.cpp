// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/load_models.h"

#include <algorithm>

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

/// Its place in the list: the rows stand in their order, and a row is told by where it stands.
template <class Row>
Cell placeOf(const std::vector<Row>& rows, const Row& row) {
  const auto place = static_cast<int>(&row - rows.data()) + 1;
  return {.text = QString::number(place), .number = static_cast<double>(place)};
}

Cell massCell(const Figures& figures, const std::optional<Mass>& mass) {
  if (!mass) {
    return {
        .text = Words::tr("not known"), .missing = true, .toolTip = Words::tr("A mass in it is not known.")};
  }
  const double kilograms = inKilograms(*mass);
  return {.text = figures.mass(kilograms), .number = kilograms};
}

Cell lengthCell(const Figures& figures, const std::optional<Length>& length) {
  if (!length) {
    return {.text = QStringLiteral("–"), .missing = true};
  }
  const double metres = inMetres(*length);
  return {.text = figures.length(metres), .number = metres};
}

} // namespace

void CartPlanModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading CartPlanModel::headingOf(CartColumn column) const {
  switch (column) {
  case CartColumn::number:
    return {.title = Words::tr("No."), .figure = true, .characters = 5};
  case CartColumn::cart:
    return {.title = Words::tr("Cart"), .characters = 16, .wish = 24};
  case CartColumn::riding:
    return {.title = Words::tr("Rides on it"), .characters = 18, .wish = 28};
  case CartColumn::hangs:
    return {.title = Words::tr("For the hang"), .characters = 16, .wish = 32};
  case CartColumn::gross:
    return {.title = Words::tr("Gross"), .figure = true, .characters = 11};
  case CartColumn::count:
    break;
  }
  return {};
}

Cell CartPlanModel::cellOf(const options::PlannedCart& line, CartColumn column) const {
  switch (column) {
  case CartColumn::number:
    return placeOf(all(), line);
  case CartColumn::cart:
    return line.cart.isEmpty()
               ? Cell{.text = Words::tr("no cart known"),
                      .missing = true,
                      .toolTip = Words::tr("No type of cart says that it takes this cabinet, or how many.")}
               : Cell{.text = line.cart, .strong = true};
  case CartColumn::riding:
    return {.text = Words::tr("%1 × %2").arg(line.number).arg(line.cabinet)};
  case CartColumn::hangs: {
    const QString hangs = line.hangs.join(QStringLiteral(" + "));
    return line.hangs.size() > 1
               ? Cell{.text = Words::tr("%1, shared").arg(hangs),
                      .toolTip = Words::tr("What is left over on one side is wheeled across to the other.")}
               : Cell{.text = hangs};
  }
  case CartColumn::gross:
    return massCell(figures_, line.gross);
  case CartColumn::count:
    break;
  }
  return {};
}

void LoadModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading LoadModel::headingOf(LoadColumn column) const {
  switch (column) {
  case LoadColumn::number:
    return {.title = Words::tr("Out"),
            .figure = true,
            .characters = 5,
            .toolTip = Words::tr("The order in which it comes out; to load, go from the last to the first")};
  case LoadColumn::unit:
    return {.title = Words::tr("Unit"), .characters = 12, .wish = 14};
  case LoadColumn::type:
    return {.title = Words::tr("Type"), .characters = 16, .wish = 24};
  case LoadColumn::riding:
    return {.title = Words::tr("Rides on it"), .characters = 18, .wish = 40};
  case LoadColumn::gross:
    return {.title = Words::tr("Gross"), .figure = true, .characters = 11};
  case LoadColumn::floor:
    return {.title = Words::tr("On the floor"), .figure = true, .characters = 12};
  case LoadColumn::count:
    break;
  }
  return {};
}

Cell LoadModel::cellOf(const fleet::Load& line, LoadColumn column) const {
  switch (column) {
  case LoadColumn::number:
    return placeOf(all(), line);
  case LoadColumn::unit:
    return {.text = line.unit.serial, .strong = true};
  case LoadColumn::type:
    return {.text = line.unit.type};
  case LoadColumn::riding: {
    QStringList riding;
    for (const fleet::Unit& unit : line.riding) {
      riding << unit.serial;
    }
    const QString text = riding.isEmpty() ? QStringLiteral("–") : riding.join(QStringLiteral(", "));
    return {.text = text, .toolTip = text};
  }
  case LoadColumn::gross:
    return massCell(figures_, line.gross);
  case LoadColumn::floor:
    return lengthCell(figures_, line.floor);
  case LoadColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
