// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/examinations/due_model.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"

namespace hangbook::desk {

/// What is due when.
class ExaminationsPlace : public Place {
  Q_OBJECT
public:
  explicit ExaminationsPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

private:
  void showFacts();

  Session& session_;
  DueModel model_;
  ListPage* page_;
};

} // namespace hangbook::desk
