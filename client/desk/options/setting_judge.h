// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QObject>

#include "desk/source/session.h"
#include "options/scene.h"

namespace hangbook::desk {

/// Judges one setting after the other, and draws it, off the window's thread. While one is being judged only
/// the newest wish waits, so a spin box that is held down never builds up a queue.
class SettingJudge : public QObject {
  Q_OBJECT
public:
  explicit SettingJudge(Session& session, QObject* parent = nullptr);

  struct Wish {
    std::shared_ptr<const options::Snapshot> snapshot;
    options::Option option; ///< as found, or with a setting of somebody's own
    bool judge = false;     ///< false: as found, and only its scene is wanted
  };
  struct Answer {
    options::Option option;
    options::Scene scene;
    bool judged = false;
  };

  void ask(const Wish& wish);
  /// What is under way is no longer of interest.
  void drop();

Q_SIGNALS:
  void answered(const hangbook::desk::SettingJudge::Answer& answer);
  void failed(const QString& why);

private:
  void begin(const Wish& wish);
  void next();

  Session& session_;
  std::shared_ptr<Watch> watch_;
  std::optional<Wish> waiting_;
};

} // namespace hangbook::desk
