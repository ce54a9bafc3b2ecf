// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/adjust_panel.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/style/verdict_label.h"

namespace hangbook::desk {
namespace {

constexpr double metresPerFoot = 0.3048;

double metresPerUnit(UnitSystem system) {
  return system == UnitSystem::metric ? 1.0 : metresPerFoot;
}

} // namespace

AdjustPanel::AdjustPanel(QWidget* parent)
    : QWidget(parent), tilt_(new QDoubleSpinBox(this)), trim_(new QDoubleSpinBox(this)),
      mark_(new QSpinBox(this)), verdict_(new VerdictLabel(this)), about_(new QLabel(this)),
      back_(new QPushButton(tr("As &found"), this)), choose_(new QPushButton(tr("&Choose…"), this)) {
  setObjectName(QStringLiteral("adjust"));
  tilt_->setObjectName(QStringLiteral("adjustTilt"));
  trim_->setObjectName(QStringLiteral("adjustTrim"));
  mark_->setObjectName(QStringLiteral("adjustMark"));
  verdict_->setObjectName(QStringLiteral("adjustVerdict"));
  about_->setObjectName(QStringLiteral("adjustAbout"));
  back_->setObjectName(QStringLiteral("adjustBack"));
  choose_->setObjectName(QStringLiteral("adjustChoose"));
  tilt_->setAccessibleName(tr("Tilt"));
  trim_->setAccessibleName(tr("Trim"));
  mark_->setAccessibleName(tr("Chain mark"));
  back_->setToolTip(tr("Back to the setting that the search found"));
  choose_->setToolTip(tr("Choose this option at this setting, with a name"));
  tilt_->setRange(-90.0, 90.0);
  tilt_->setSingleStep(0.5);
  tilt_->setDecimals(1);
  tilt_->setSuffix(QStringLiteral("°"));
  trim_->setRange(-1000.0, 1000.0);
  trim_->setDecimals(2);
  mark_->setRange(0, 100000);
  about_->setForegroundRole(QPalette::PlaceholderText);

  mark_->setSpecialValueText(QStringLiteral("–"));
  auto* fields = new QHBoxLayout;
  fields->setSpacing(space::small);
  const auto addField = [&](const QString& text, QWidget* field) {
    auto* label = new QLabel(text, this);
    label->setBuddy(field);
    fields->addWidget(label);
    fields->addWidget(field);
    fields->addSpacing(space::step);
  };
  addField(tr("T&ilt"), tilt_);
  addField(tr("T&rim"), trim_);
  addField(tr("&Mark"), mark_);
  fields->addStretch(1);
  auto* outcome = new QHBoxLayout;
  outcome->setSpacing(space::small);
  outcome->addWidget(verdict_);
  outcome->addWidget(about_, 1);
  outcome->addWidget(back_);
  outcome->addWidget(choose_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::small);
  all->addLayout(fields);
  all->addLayout(outcome);

  // Only the field that was changed is taken from its box: what the search found keeps every digit.
  connect(tilt_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    setting_.tiltDeg = value;
    Q_EMIT settingAsked(setting_);
  });
  connect(trim_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    setting_.trimM = value * metresPerUnit(figures_.system());
    Q_EMIT settingAsked(setting_);
  });
  connect(mark_, &QSpinBox::valueChanged, this, [this](int value) {
    setting_.mark = value;
    Q_EMIT settingAsked(setting_);
  });
  connect(back_, &QPushButton::clicked, this, &AdjustPanel::backAsked);
  connect(choose_, &QPushButton::clicked, this, &AdjustPanel::chooseAsked);
  setOption({});
}

options::Setting AdjustPanel::setting() const {
  return setting_;
}

void AdjustPanel::ask(const options::Setting& setting) {
  if (has_) {
    setting_ = setting;
    fill();
    Q_EMIT settingAsked(setting_);
  }
}

void AdjustPanel::lift(double metres) {
  if (trim_->isEnabled()) {
    setting_.trimM += metres; // kept whole, or slow dragging would be lost in the field's rounding
    fill();
    Q_EMIT settingAsked(setting_);
  }
}

void AdjustPanel::setOption(const std::optional<options::Option>& option) {
  has_ = option.has_value() && option->setting.has_value();
  setting_ = has_ ? *option->setting : options::Setting{};
  fill();
  verdict_->setVerdict(option ? std::optional(option->verdict) : std::nullopt);
  if (option) {
    tell(*option);
  } else {
    about_->clear();
    choose_->setEnabled(false);
  }
}

void AdjustPanel::setJudged(const options::Option& option) {
  verdict_->setVerdict(option.verdict);
  tell(option);
}

void AdjustPanel::setFigures(const Figures& figures) {
  figures_ = figures;
  fill();
}

void AdjustPanel::fill() {
  const QSignalBlocker quietTilt(tilt_);
  const QSignalBlocker quietTrim(trim_);
  const QSignalBlocker quietMark(mark_);
  const bool metric = figures_.system() == UnitSystem::metric;
  tilt_->setValue(setting_.tiltDeg);
  trim_->setSuffix(metric ? QStringLiteral(" m") : QStringLiteral(" ft"));
  trim_->setSingleStep(metric ? 0.05 : 0.25);
  trim_->setValue(setting_.trimM / metresPerUnit(figures_.system()));
  mark_->setValue(setting_.mark.value_or(0));
  tilt_->setEnabled(has_);
  trim_->setEnabled(has_);
  mark_->setEnabled(has_ && setting_.mark.has_value());
  back_->setEnabled(has_);
}

void AdjustPanel::tell(const options::Option& option) {
  const bool fails = option.verdict == options::Verdict::fails;
  choose_->setEnabled(has_ && !fails);
  choose_->setToolTip(fails ? tr("A failing option cannot be chosen.")
                            : tr("Choose this option at this setting, with a name"));
  about_->setText(has_ ? QString() : tr("no setting is possible"));
}

} // namespace hangbook::desk
