// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "desk/options/option_list_model.h"
#include "options/side_by_side.h"

class QLabel;
class QPushButton;
class QTableView;

namespace hangbook::desk {

enum class CompareColumn { what, first, second, third, fourth, count };

/// One row of a comparison; `heading`: it only says what the rows below it have in common.
struct CompareLine {
  QString what{};
  QStringList cells{};
  std::vector<std::optional<options::Verdict>> verdicts{};
  bool heading = false;
};

class CompareModel : public ListOf<CompareLine, CompareColumn> {
public:
  using ListOf::ListOf;
  void setCompared(const std::vector<OptionLine>& compared, const Figures& figures);

private:
  Heading headingOf(CompareColumn column) const override;
  Cell cellOf(const CompareLine& line, CompareColumn column) const override;
  QString keyOf(const CompareLine& line) const override { return line.what; }

  QStringList names_;
};

/// Two to four options row by row, what they differ in first.
class SideBySidePanel : public QWidget {
  Q_OBJECT
public:
  static constexpr std::size_t most = 4;

  explicit SideBySidePanel(QWidget* parent = nullptr);

  /// The one that is looked at: what the button puts beside the others.
  void setLooked(const std::optional<OptionLine>& looked);
  /// Puts the looked at one beside the others, or takes it away where it stands there already.
  void toggle();
  /// What the list holds now: compared ones that are no longer in it go.
  void follow(const std::vector<OptionLine>& lines);
  void setFigures(const Figures& figures);
  const std::vector<OptionLine>& compared() const { return compared_; }

private:
  void clear();
  void tell();
  bool holds(const QString& id) const;

  CompareModel model_;
  QTableView* table_;
  QLabel* head_;
  QPushButton* toggle_;
  QPushButton* clear_;
  std::optional<OptionLine> looked_;
  std::vector<OptionLine> compared_;
  Figures figures_;
};

} // namespace hangbook::desk
