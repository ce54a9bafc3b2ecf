// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "catalogue/catalogue.h"
#include "desk/lists/table_model.h"
#include "desk/style/figures.h"
#include "options/frozen.h"

class QFormLayout;
class QLabel;
class QTableView;

namespace hangbook::desk {

class VerdictLabel;

/// One cabinet with what an inclinometer on its side must read.
struct AimLine {
  int element = 0;
  QString type{};
  std::optional<double> aimDeg{};
};

enum class AimColumn { element, type, aim, count };

class AimModel : public ListOf<AimLine, AimColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(AimColumn column) const override;
  Cell cellOf(const AimLine& line, AimColumn column) const override;
  QString keyOf(const AimLine& line) const override { return QString::number(line.element); }
};

/// What the crew reads under the hang: the chain mark in the largest type on the page, the links beside it,
/// then trim, tilt, tape height, loads, and what each cabinet's side must read.
class BuildSheet : public QWidget {
  Q_OBJECT
public:
  explicit BuildSheet(QWidget* parent = nullptr);

  /// `results` are the frozen ones.
  void setChoice(const options::Choice& choice, const options::Option& results,
                 const catalogue::Catalogue& catalogue, const Figures& figures);

private:
  void addFact(const QString& what, const QString& text);

  QLabel* notCleared_;
  VerdictLabel* verdict_;
  QLabel* chosen_;
  QLabel* mark_;
  QLabel* caption_;
  QLabel* neighbours_;
  QFormLayout* facts_;
  AimModel aims_;
  QTableView* aimTable_;
};

} // namespace hangbook::desk
