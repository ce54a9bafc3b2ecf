// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "desk/examinations/due_model.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"

class QComboBox;

namespace hangbook::desk {

class DueChart;
class ExamineForm;

/// What is due when, where it is best examined, and the record of it.
class ExaminationsPlace : public Place {
  Q_OBJECT
public:
  explicit ExaminationsPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

  /// Who names the calendar's file; the same.
  void setCalendarAsker(std::function<QString()> asker) { calendarAsker_ = std::move(asker); }
  /// Who names the certificate's file; by default the person in front of the screen. Empty: nobody did.
  void setFileAsker(std::function<QString()> asker) { fileAsker_ = std::move(asker); }

private:
  void showFacts();
  void showVisits();
  void keepVisit();
  void showHidden();
  void showSubject();
  void record();
  void writeCalendar();

  Session& session_;
  DueModel model_;
  ListPage* page_;
  std::vector<calendar::Slot> slots_; ///< of the visits that are offered
  DueChart* chart_;
  ExamineForm* form_;
  QComboBox* visits_;
  QLabel* hidden_;
  QLabel* written_;
  std::function<QString()> fileAsker_;
  std::function<QString()> calendarAsker_;
};

} // namespace hangbook::desk
