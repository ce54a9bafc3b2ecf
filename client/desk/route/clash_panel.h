// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QWidget>

#include "desk/lists/list_page.h"
#include "desk/route/clashes.h"
#include "desk/source/session.h"

namespace hangbook::desk {

/// The clashes of the route with a way out of each; worked out off the window's thread while somebody looks.
class ClashPanel : public QWidget {
  Q_OBJECT
public:
  explicit ClashPanel(Session& session, QWidget* parent = nullptr);

Q_SIGNALS:
  void optionsWanted(const ShowKey& show);

protected:
  void showEvent(QShowEvent* event) override;

private:
  void look();

  Session& session_;
  ClashModel model_;
  ListPage* page_;
  std::shared_ptr<Watch> looking_;
  bool stale_ = true;
};

} // namespace hangbook::desk
