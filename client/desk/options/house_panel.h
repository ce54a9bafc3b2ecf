// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QWidget>

#include "desk/lists/table_model.h"
#include "desk/source/planning_source.h"
#include "desk/source/session.h"
#include "options/house_figures.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace hangbook::desk {

/// One figure that a house may set, as it stands for the show.
struct HouseLine {
  options::HouseFigureKind kind{};
  options::HouseValue stands{};
  QStringList places{}; ///< that state it: tour, venue, show
};

std::vector<HouseLine> houseLines(const options::Snapshot& snapshot);

enum class HouseColumn { figure, value, usual, direction, places, source, what, count };

class HouseModel : public ListOf<HouseLine, HouseColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures);

private:
  Heading headingOf(HouseColumn column) const override;
  Cell cellOf(const HouseLine& line, HouseColumn column) const override;
  QString keyOf(const HouseLine& line) const override { return line.kind.id; }

  Figures figures_;
};

/// What a change did, or would do, to what is chosen.
QString effectWords(const options::HouseEffect& effect, bool dryRun);

/// The house rules as they stand for the show, where each came from, and stating or withdrawing one with a
/// name. Before it is signed it can be tried: which chosen options would change their verdict.
class HousePanel : public QWidget {
  Q_OBJECT
public:
  explicit HousePanel(Session& session, QWidget* parent = nullptr);

  /// nullptr: nothing to show.
  void setSnapshot(std::shared_ptr<const options::Snapshot> snapshot);

private:
  void layOut();
  void showLine();
  void check();
  void send(bool withdraw, bool dryRun);
  options::HouseSite site() const;
  std::optional<double> typed() const;

  Session& session_;
  HouseModel model_;
  QTableView* table_;
  QComboBox* place_;
  QLineEdit* value_;
  QLabel* unit_;
  QLineEdit* because_;
  QComboBox* by_;
  QPushButton* try_;
  QPushButton* sign_;
  QPushButton* withdraw_;
  QLabel* effect_;
  std::shared_ptr<const options::Snapshot> snapshot_;
  bool sending_ = false;
};

} // namespace hangbook::desk
