// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include <QWidget>

#include "build/flown.h"
#include "desk/building/flown_changes.h"
#include "desk/source/session.h"

class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QTableView;
class QTextBrowser;

namespace hangbook::desk {

class MoveDialog;
class VerdictLabel;

/// A hang that is up: another aim, trim or wind tried, what changes against the signed setting, the steps,
/// and the way to sign it. While one wish is judged only the newest waits.
class FlownPanel : public QWidget {
  Q_OBJECT
public:
  /// Asks who and why; true: sign it.
  using Asker = std::function<bool(MoveDialog&)>;

  explicit FlownPanel(Session& session, QWidget* parent = nullptr);

  void setAsker(Asker asker) { asker_ = std::move(asker); }
  /// What stands signed; nothing is asked of it until this widget is looked at.
  void setChoice(const std::optional<options::Choice>& choice);
  /// Hold points of its build, or of its last move, that nobody signed: while there are any it is not known
  /// to be up, and the panel says so.
  void setOpenGates(const QStringList& gates);

protected:
  void showEvent(QShowEvent* event) override;

private:
  void begin();
  void fill();
  void ask();
  void next();
  void show(const build::Flown& flown);
  void showWords(const QString& words);
  void sign();
  void back();
  QString history() const;

  Session& session_;
  Asker asker_;
  std::optional<options::Choice> choice_;
  std::shared_ptr<const options::Snapshot> snapshot_;
  std::vector<options::Choice> signed_;
  build::FlownWish wish_;
  bool waiting_ = false;
  bool stale_ = true;
  std::shared_ptr<Watch> reading_;
  std::shared_ptr<Watch> judging_;
  std::optional<build::Flown> flown_;
  QDoubleSpinBox* tilt_;
  QDoubleSpinBox* pan_;
  QDoubleSpinBox* trim_;
  QDoubleSpinBox* wind_;
  QStringList openGates_;
  QLabel* up_;
  VerdictLabel* verdict_;
  QLabel* about_;
  ChangeModel changes_;
  QTableView* table_;
  QTextBrowser* steps_;
  QPushButton* asSigned_;
  QPushButton* back_;
  QPushButton* sign_;
};

} // namespace hangbook::desk
