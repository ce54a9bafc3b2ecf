// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <exception>

#include <QDialog>
#include <QPointer>

#include "desk/source/session.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace hangbook::desk {

/// A dialog in which something stored is typed anew: who saves it, what is wrong, Save and Cancel under it.
/// Nothing is saved until all of it can be read and somebody's name is there; leaving what was changed asks
/// once. Its parts are named after `prefix`: prefixBy, prefixSays, prefixSave, prefixCancel.
class EditDialog : public QDialog {
  Q_OBJECT
public:
  /// What the save did, in words.
  const QString& effect() const { return effect_; }

protected:
  EditDialog(Session& session, const QString& prefix, QWidget* parent);

  Session& session() const { return session_; }
  QString by() const;
  bool sending() const { return sending_; }
  /// Puts the content, which is there already, over the note and the line of buttons, which are made now: the
  /// keyboard comes to what is typed first. `more` stands before Save. Before it nothing here may be asked.
  void layOut(QWidget* content, const QString& note, QPushButton* more = nullptr);

  /// Whether what is typed is other than what was there.
  virtual bool differs() const = 0;
  /// Reads what is typed again and ends with `judge`.
  virtual void check() = 0;
  virtual void save() = 0;

  /// Says what is wrong (empty: nothing is) and lets it be saved, or not.
  void judge(const QString& wrong);
  void say(const QString& words);
  void setEffect(const QString& effect) { effect_ = effect; }

  /// Runs a job of the store's thread with the dialog shut meanwhile; `done` gets its answer.
  template <class Job, class Done>
  void send(const QString& meanwhile, Job job, Done done) {
    begin(meanwhile);
    session_.work().start(
        this, std::move(job),
        [this, done = std::move(done)](const auto& answer) {
          end();
          done(answer);
        },
        [this](const std::exception_ptr& what) {
          end();
          sayTrouble(what);
        });
  }

  void reject() override;

private:
  QLayout* buttons(QPushButton* more);
  void begin(const QString& meanwhile);
  void end();
  void sayTrouble(const std::exception_ptr& what);

  Session& session_;
  QString prefix_;
  QComboBox* by_ = nullptr;
  QLabel* says_ = nullptr;
  QPushButton* save_ = nullptr;
  QPointer<QWidget> focus_; ///< a dialog that is shut loses it
  QString effect_;
  bool sending_ = false;
  bool warned_ = false; ///< that leaving loses what was typed
};

} // namespace hangbook::desk
