// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>

#include <QObject>

#include "desk/source/planning_source.h"
#include "desk/source/session.h"

namespace hangbook::desk {

class ChooseDialog;

/// Choosing an option with a name, and finding again what hung before.
class Choosing : public QObject {
  Q_OBJECT
public:
  /// Asks who and why; true: choose it.
  using Asker = std::function<bool(ChooseDialog&)>;

  Choosing(Session& session, QWidget* window);

  void setAsker(Asker asker) { asker_ = std::move(asker); }
  /// Asks for a name, and for a reason where it is unproven; then writes. `what` names the option in words.
  void choose(const options::Option& option, const QString& what);
  /// Looks for what hung at an earlier show, by today's rules here; `foundAgain` or `notFound` follows.
  void findAgain(std::shared_ptr<const options::Snapshot> snapshot, SameAs when);
  void cancel();
  bool looking() const { return watch_ != nullptr; }

Q_SIGNALS:
  /// `words` say where and when it hung and what the rules say of it now.
  void foundAgain(const hangbook::options::Option& option, const QString& words);
  /// Nothing hung before, it cannot hang here, it was cancelled or went wrong; `why` is for people.
  void notFound(const QString& why);

private:
  Session& session_;
  QWidget* window_;
  Asker asker_;
  std::shared_ptr<Watch> watch_;
};

} // namespace hangbook::desk
