// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QWidget>

#include "desk/source/session.h"
#include "options/setting_map.h"

namespace hangbook::desk {

class SettingMapView;
class WorkLine;

/// The window of settings of the option that is looked at, worked out off the window's thread while somebody
/// looks at it, anew where another option, mark, pan or hole is meant.
class SettingMapPanel : public QWidget {
  Q_OBJECT
public:
  explicit SettingMapPanel(Session& session, QWidget* parent = nullptr);

  void setOption(std::shared_ptr<const options::Snapshot> snapshot, const options::Option& option);
  void setNothing();

Q_SIGNALS:
  void settingAsked(const options::Setting& setting);

protected:
  void showEvent(QShowEvent* event) override;

private:
  bool sameMap(const options::Option& option, const options::Snapshot* snapshot) const;
  void workOut();
  void drop();
  void showMap(options::SettingMap map);

  Session& session_;
  WorkLine* line_;
  SettingMapView* view_;
  std::shared_ptr<const options::Snapshot> snapshot_;
  std::optional<options::Option> option_;
  std::shared_ptr<Watch> watch_;
  bool asked_ = false; ///< worked out, being worked out, or stopped by hand
};

} // namespace hangbook::desk
