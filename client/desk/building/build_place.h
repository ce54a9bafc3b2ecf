// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/building/marks_before.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"
#include "marks/gate.h"
#include "reports/code.h"
#include "reports/shows.h"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace hangbook::desk {

class BuildSheet;
class BuildSteps;
class FlownPanel;
class RecordForm;

/// What is built today: the chosen option with its chain mark, marks used before, and what was really used.
class BuildPlace : public Place {
  Q_OBJECT
public:
  explicit BuildPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

private:
  void showFacts();
  void showResults(const options::Option& results);
  void record();
  void plan();
  void showSteps(const reports::ShowAsIs& show, const std::vector<marks::GateSigned>& gates);
  void sign(const QString& gate, const QString& by, const QString& skippedBecause);
  QPushButton* swapButton();
  void swap();
  QPushButton* hungButton();
  void recordHung();

  Session& session_;
  MarkModel marks_;
  std::shared_ptr<Watch> watch_;
  std::optional<options::Choice> choice_;
  std::optional<options::Option> results_;
  std::shared_ptr<Watch> planning_;
  BuildSheet* sheet_;
  BuildSteps* steps_;
  FlownPanel* flown_;
  QWidget* chosenPart_;
  QPushButton* hung_;
  QLabel* nothing_;
  QStackedWidget* left_;
  ListPage* before_;
  RecordForm* form_;
};

} // namespace hangbook::desk
