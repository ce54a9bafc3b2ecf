// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/options/choosing.h"
#include "desk/options/option_list_model.h"
#include "desk/options/option_search.h"
#include "desk/options/rule_sheet_model.h"
#include "desk/options/setting_judge.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTabWidget;

namespace hangbook::desk {

class AdjustPanel;
class Elevation;
class HousePanel;
class SettingMapPanel;
class SideBySidePanel;
class WouldDoPanel;

/// For one show and hang: the options, beside them the elevation, under them the rule sheet of the one that
/// is looked at, what would do for it, and options side by side.
class OptionsPlace : public Place {
  Q_OBJECT
public:
  explicit OptionsPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

  /// Tests put a function of their own here.
  void setAsker(Choosing::Asker asker) { choosing_->setAsker(std::move(asker)); }

protected:
  void showEvent(QShowEvent* event) override;

private:
  void layOut();
  QWidget* lowerParts();
  void fillOrders();
  void connectAll();
  void connectSearch();
  void connectChoosing();
  void lookIfShown();
  void showFound();
  void showStopped(const QString& why);
  void showOption(int row);
  void setFindings(const std::vector<options::Finding>& findings);
  void showSentence(int row);
  void showAnswer(const SettingJudge::Answer& answer);
  void showFigures();
  void judge(const options::Setting& setting);
  void choose(const QString& before = {});
  void findAgain(SameAs when);
  void showAgain(const options::Option& option, const QString& words);
  void fillList();
  void hideAlike();
  void tellOrder();
  void tellCounts();
  void setWorking(bool working);
  QString wordsFor(const options::Option& option) const;
  QString settingWords(const options::Setting& setting) const;

  Session& session_;
  OptionSearch search_;
  SettingJudge judge_;
  OptionListModel list_;
  RuleSheetModel sheet_;
  Choosing* choosing_;
  ListPage* page_;
  QComboBox* verdicts_;
  QComboBox* order_;
  Elevation* elevation_;
  SettingMapPanel* map_;
  QTabWidget* views_;
  AdjustPanel* adjust_;
  QTableView* rules_;
  QLabel* ruleHead_;
  QLabel* sentence_;
  QProgressBar* progress_;
  QPushButton* cancel_;
  QTabWidget* parts_;
  WouldDoPanel* wouldDo_;
  SideBySidePanel* beside_;
  HousePanel* house_;
  QPushButton* yesterday_;
  QPushButton* hereBefore_;
  std::optional<options::Option> looked_; ///< as found or as judged last
  std::optional<options::Scene> scene_;
  bool stale_ = true; ///< what is shown is not of the present show, hang and facts
};

} // namespace hangbook::desk
