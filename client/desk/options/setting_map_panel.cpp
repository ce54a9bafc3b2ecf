// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/setting_map_panel.h"

#include <QVBoxLayout>

#include "desk/options/setting_map_view.h"
#include "desk/source/planning_source.h"
#include "desk/style/scale.h"
#include "desk/words/work_line.h"

namespace hangbook::desk {

SettingMapPanel::SettingMapPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session),
      line_(new WorkLine(QStringLiteral("settingMap"), tr("Work it out"), this)),
      view_(new SettingMapView(this)) {
  setObjectName(QStringLiteral("settingMapPanel"));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addWidget(view_, 1);
  all->addWidget(line_);
  connect(view_, &SettingMapView::settingAsked, this, &SettingMapPanel::settingAsked);
  connect(line_, &WorkLine::cancelAsked, this, [this] {
    drop();
    line_->offerAgain(tr("Stopped. Nothing was changed."));
  });
  connect(line_, &WorkLine::againAsked, this, &SettingMapPanel::workOut);
  connect(&session_, &Session::unitsChanged, this, [this] { view_->setFigures(session_.figures()); });
  view_->setFigures(session_.figures());
  setNothing();
}

void SettingMapPanel::setNothing() {
  drop();
  option_.reset();
  snapshot_.reset();
  asked_ = false;
  view_->setMap({}, tr("Select an option to see at which tilts and trims it stands."));
  line_->say({});
}

bool SettingMapPanel::sameMap(const options::Option& option, const options::Snapshot* snapshot) const {
  return option_ && snapshot_.get() == snapshot && option_->id == option.id && option_->setting &&
         option.setting && option_->setting->mark == option.setting->mark &&
         option_->setting->panDeg == option.setting->panDeg &&
         option_->setting->holesDeg == option.setting->holesDeg;
}

void SettingMapPanel::setOption(std::shared_ptr<const options::Snapshot> snapshot,
                                const options::Option& option) {
  const bool same = sameMap(option, snapshot.get());
  option_ = option;
  snapshot_ = std::move(snapshot);
  if (option.setting) {
    view_->setPoint(*option.setting, option.verdict);
  }
  if (same) {
    return;
  }
  drop();
  asked_ = false;
  if (isVisible()) {
    workOut();
  }
}

void SettingMapPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (option_ && !asked_) {
    workOut();
  }
}

void SettingMapPanel::drop() {
  if (watch_) {
    watch_->cancel();
    watch_.reset();
  }
}

void SettingMapPanel::workOut() {
  if (!option_) {
    return;
  }
  drop();
  asked_ = true;
  view_->setMap({}, tr("Running all rules at every tilt and trim …"));
  watch_ = session_.advising().start(
      this,
      [source = session_.source(), snapshot = snapshot_, option = *option_](Watch& watch) {
        return planningOf(*source).settingMap(*snapshot, option, [&watch](double share) {
          watch.setProgress(share);
          return !watch.cancelled();
        });
      },
      [this](options::SettingMap map) {
        watch_.reset();
        showMap(std::move(map));
      },
      [this](const std::exception_ptr& what) {
        watch_.reset();
        view_->setMap({}, tr("There is no map."));
        line_->offerAgain(wordsFor(what, tr("Nothing was changed.")));
      });
  line_->working(tr("Working it out …"), watch_);
}

void SettingMapPanel::showMap(options::SettingMap map) {
  if (!map.impossible.isEmpty()) {
    view_->setMap({}, tr("No setting is possible: %1.").arg(map.impossible));
    line_->say({});
    return;
  }
  const Figures& figures = session_.figures();
  const QString mark = map.mark ? tr("Mark %1: ").arg(*map.mark) : QString();
  line_->say(
      tr("%1each bar is one tilt of the %2 grid, run at every cm of trim (%3 settings). Nothing is said "
         "between bars.")
          .arg(mark, figures.angle(map.tiltStepDeg))
          .arg(map.runs));
  view_->setMap(map, {});
}

} // namespace hangbook::desk
