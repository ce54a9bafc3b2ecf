// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/flown_panel.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "desk/building/move_dialog.h"
#include "desk/lists/list_page.h"
#include "desk/source/apart.h"
#include "desk/source/moved_source.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_label.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

struct Read {
  std::shared_ptr<const options::Snapshot> snapshot;
  std::vector<options::Choice> settings;
};

MovedSource& movedOf(Source& source) {
  auto* keeper = dynamic_cast<MovedSource*>(&source);
  if (keeper == nullptr) {
    throw Error(Trouble::notPossible, "moved hangs are not kept here");
  }
  return *keeper;
}

double perLength(UnitSystem system) {
  return valueIn<Length>(metres(1), system);
}
double perSpeed(UnitSystem system) {
  return valueIn<Speed>(metresPerSecond(1), system);
}

QDoubleSpinBox* box(const QString& name, const QString& says, double least, double most, double step,
                    QWidget* parent) {
  auto* field = new QDoubleSpinBox(parent);
  field->setObjectName(name);
  field->setAccessibleName(says);
  field->setRange(least, most);
  field->setSingleStep(step);
  field->setKeyboardTracking(false);
  return field;
}

} // namespace

FlownPanel::FlownPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session),
      asker_([](MoveDialog& dialog) { return dialog.exec() == QDialog::Accepted; }),
      tilt_(box(QStringLiteral("flownTilt"), tr("Tilt"), -90, 90, 0.5, this)),
      pan_(box(QStringLiteral("flownPan"), tr("Pan, to the left is positive"), -90, 90, 0.5, this)),
      trim_(box(QStringLiteral("flownTrim"), tr("Trim, lowest edge"), -1000, 1000, 0.05, this)),
      wind_(box(QStringLiteral("flownWind"), tr("Wind that it is to stand in"), 0, 200, 1, this)),
      up_(new QLabel(this)), verdict_(new VerdictLabel(this)), about_(new QLabel(this)),
      table_(new QTableView(this)), steps_(new QTextBrowser(this)),
      asSigned_(new QPushButton(tr("As si&gned"), this)),
      back_(new QPushButton(tr("&Undo the last move"), this)), sign_(new QPushButton(tr("&Sign…"), this)) {
  setObjectName(QStringLiteral("flown"));
  tilt_->setDecimals(1);
  tilt_->setSuffix(QStringLiteral("°"));
  pan_->setDecimals(1);
  pan_->setSuffix(QStringLiteral("°"));
  trim_->setDecimals(2);
  wind_->setDecimals(1);
  up_->setObjectName(QStringLiteral("flownUp"));
  up_->setWordWrap(true);
  up_->setFont(fontFor(TextSize::heading, font()));
  up_->hide();
  about_->setObjectName(QStringLiteral("flownAbout"));
  about_->setWordWrap(true);
  verdict_->setObjectName(QStringLiteral("flownVerdict"));
  table_->setObjectName(QStringLiteral("flownChanges"));
  table_->setAccessibleName(tr("What changes against the signed setting"));
  table_->setModel(&changes_);
  prepareTable(*table_, changes_, static_cast<int>(ChangeColumn::what));
  steps_->setObjectName(QStringLiteral("flownSteps"));
  steps_->setAccessibleName(tr("Steps in order, and what was signed before"));
  steps_->setFont(fontFor(TextSize::reading, font()));
  asSigned_->setObjectName(QStringLiteral("flownAsSigned"));
  asSigned_->setToolTip(tr("Back to the signed setting; nothing is kept"));
  back_->setObjectName(QStringLiteral("flownBack"));
  back_->setToolTip(tr("Try the setting that it was moved from; it is signed like any other move"));
  sign_->setObjectName(QStringLiteral("flownSign"));
  auto* fields = new QGridLayout;
  fields->setHorizontalSpacing(space::step);
  fields->setVerticalSpacing(space::small);
  const auto add = [&](int row, int column, const QString& text, QWidget* field) {
    auto* label = new QLabel(text, this);
    label->setBuddy(field);
    fields->addWidget(label, row, column);
    fields->addWidget(field, row, column + 1);
  };
  add(0, 0, tr("T&ilt"), tilt_);
  add(0, 2, tr("&Pan"), pan_);
  add(1, 0, tr("T&rim"), trim_);
  add(1, 2, tr("&Wind"), wind_);
  fields->setColumnStretch(4, 1);
  auto* outcome = new QHBoxLayout;
  outcome->addWidget(verdict_);
  outcome->addWidget(about_, 1);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(asSigned_);
  buttons->addWidget(back_);
  buttons->addStretch(1);
  buttons->addWidget(sign_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::step, 0, 0);
  all->setSpacing(space::step);
  all->addWidget(up_);
  all->addLayout(fields);
  all->addLayout(outcome);
  all->addWidget(table_, 3);
  all->addWidget(steps_, 2);
  all->addLayout(buttons);

  // Only the field that was changed is a wish: what is signed keeps every digit, and the trim follows the
  // tilt.
  connect(tilt_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    wish_.tiltDeg = value;
    ask();
  });
  connect(pan_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    wish_.panDeg = value;
    ask();
  });
  connect(trim_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    wish_.trimM = value / perLength(session_.figures().system());
    ask();
  });
  connect(wind_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    wish_.windMps = value / perSpeed(session_.figures().system());
    ask();
  });
  connect(asSigned_, &QPushButton::clicked, this, [this] {
    wish_ = {};
    ask();
  });
  connect(back_, &QPushButton::clicked, this, &FlownPanel::back);
  connect(sign_, &QPushButton::clicked, this, &FlownPanel::sign);
  showWords({});
}

void FlownPanel::setChoice(const std::optional<options::Choice>& choice) {
  choice_ = choice;
  stale_ = true;
  wish_ = {};
  waiting_ = false;
  for (const auto& watch : {reading_, judging_}) {
    if (watch) {
      watch->cancel();
    }
  }
  reading_.reset();
  judging_.reset();
  snapshot_.reset();
  setOpenGates({});
  showWords({});
  if (isVisible()) {
    begin();
  }
}

void FlownPanel::setOpenGates(const QStringList& gates) {
  openGates_ = gates;
  const bool moved = choice_ && choice_->movedFrom != 0;
  up_->setText((moved
                    ? tr("Not known to be up. Not signed since it was last moved: %1. Sign them under Steps.")
                    : tr("Not known to be up. Hold points not signed yet: %1. Sign them under Steps."))
                   .arg(gates.join(QStringLiteral(", "))));
  up_->setVisible(!gates.isEmpty());
}

void FlownPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  begin();
}

void FlownPanel::begin() {
  if (!choice_ || !stale_) {
    return;
  }
  stale_ = false;
  reading_ = session_.work().start(
      this,
      [source = session_.source(), show = session_.show(), hang = choice_->hang](Watch&) {
        return Read{takenApartElsewhere(source->snapshot(show)), movedOf(*source).signedSettings(show, hang)};
      },
      [this](const Read& read) {
        reading_.reset();
        snapshot_ = read.snapshot;
        signed_ = read.settings;
        ask();
      },
      [this](const std::exception_ptr& what) {
        reading_.reset();
        showWords(wordsFor(what, tr("Nothing can be tried for this hang.")));
      });
}

void FlownPanel::ask() {
  waiting_ = true;
  next();
}

void FlownPanel::next() {
  if (!waiting_ || judging_ || !snapshot_ || !choice_) {
    return;
  }
  waiting_ = false;
  judging_ = session_.judging().start(
      this,
      [snapshot = snapshot_, choice = *choice_, wish = wish_, units = session_.figures().system()](Watch&) {
        return build::flownTo(*snapshot, choice, wish, units);
      },
      [this](const build::Flown& flown) {
        judging_.reset();
        show(flown);
        next();
      },
      [this](const std::exception_ptr& what) {
        judging_.reset();
        showWords(wordsFor(what, tr("The signed setting still stands.")));
        next();
      });
}

void FlownPanel::show(const build::Flown& flown) {
  flown_ = flown;
  fill();
  changes_.setFigures(session_.figures());
  changes_.setRows(flown.changes);
  verdict_->setVerdict(flown.after.verdict);
  const bool another = flown.moves || snapshot_->show.wind != flown.snapshot.show.wind;
  const bool fails = flown.after.verdict == options::Verdict::fails;
  QString about = tr("Signed: revision %1 by %2.").arg(choice_->revision).arg(choice_->by);
  if (!another) {
    about += flown.changes.empty() ? tr(" As signed.") : tr(" As signed; the data have changed since.");
  } else {
    about +=
        fails ? tr(" What is tried fails and cannot be signed.") : tr(" What is tried is not signed yet.");
  }
  about_->setText(about);
  QString html;
  for (const options::Finding& each : flown.after.findings) {
    if (another && each.applies && each.verdict >= options::Verdict::unproven) {
      html += QStringLiteral("<p><b>%1</b> %2</p>")
                  .arg(fails ? tr("Why it fails or is unproven:") : tr("Unproven:"),
                       session_.figures().sentence(each.text).toHtmlEscaped());
    }
  }
  if (another && !fails) {
    html += QStringLiteral("<ol>");
    for (const QString& step : flown.steps) {
      html += QStringLiteral("<li style='margin-bottom: 4px'>%1</li>").arg(step.toHtmlEscaped());
    }
    html += QStringLiteral("</ol>");
  }
  steps_->setHtml(html + history());
  asSigned_->setEnabled(another);
  sign_->setEnabled(another && !fails);
  back_->setEnabled(choice_->movedFrom != 0);
}

QString FlownPanel::history() const {
  QString html = QStringLiteral("<p><b>%1</b></p>").arg(tr("Signed settings, newest first"));
  for (const options::Choice& each : signed_) {
    const QString how = each.movedFrom != 0 ? tr("moved from revision %1").arg(each.movedFrom) : tr("chosen");
    html +=
        QStringLiteral("<p>%1</p>")
            .arg(tr("Revision %1, %2 by %3, %4: tilt %5, trim %6%7")
                     .arg(each.revision)
                     .arg(how, each.by.toHtmlEscaped(),
                          each.at.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")),
                          session_.figures().angle(each.setting.tiltDeg),
                          session_.figures().length(each.setting.trimM),
                          each.reason.isEmpty() ? QString() : tr(" – %1").arg(each.reason.toHtmlEscaped())));
  }
  return html;
}

void FlownPanel::fill() {
  const std::array quiet{QSignalBlocker(tilt_), QSignalBlocker(pan_), QSignalBlocker(trim_),
                         QSignalBlocker(wind_)};
  const UnitSystem system = session_.figures().system();
  const auto unit = [](std::string_view text) {
    return QLatin1Char(' ') + QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  };
  trim_->setSuffix(unit(unitOf<Length>(system)));
  wind_->setSuffix(unit(unitOf<Speed>(system)));
  const bool has = flown_.has_value();
  const bool outdoors = has && flown_->snapshot.venue.outdoors.value_or(false);
  const bool pair = has && flown_->after.key.picks != catalogue::Picks::single;
  tilt_->setEnabled(pair);
  pan_->setEnabled(has);
  trim_->setEnabled(has);
  wind_->setEnabled(outdoors);
  wind_->setToolTip(outdoors || !has ? QString() : tr("Wind counts outdoors alone"));
  if (has) {
    const options::Setting& setting = *flown_->after.setting;
    tilt_->setValue(setting.tiltDeg);
    pan_->setValue(setting.panDeg);
    trim_->setValue(setting.trimM * perLength(system));
    const auto& wind = flown_->snapshot.show.wind;
    wind_->setSpecialValueText(wind ? QString() : QStringLiteral("–"));
    wind_->setValue(wind ? inMetresPerSecond(*wind) * perSpeed(system) : 0);
  }
}

void FlownPanel::showWords(const QString& words) {
  if (words.isEmpty()) {
    flown_.reset();
    fill();
    asSigned_->setEnabled(false);
    back_->setEnabled(false);
  } else {
    asSigned_->setEnabled(true);
  }
  changes_.setRows({});
  verdict_->setVerdict(std::nullopt);
  about_->setText(words);
  steps_->clear();
  sign_->setEnabled(false);
}

void FlownPanel::back() {
  for (const options::Choice& each : signed_) {
    if (choice_ && each.revision == choice_->movedFrom) {
      try {
        wish_ = build::wishBack(*choice_, each);
        ask();
      } catch (const Error& error) {
        showWords(QString::fromUtf8(error.what()));
      }
      return;
    }
  }
}

void FlownPanel::sign() {
  if (!flown_ || !choice_) {
    return;
  }
  QStringList people;
  for (const people::Person& each : session_.overview().people) {
    people << each.name;
  }
  MoveDialog dialog(*flown_, people, openGates_, this);
  if (!asker_(dialog)) {
    return;
  }
  session_.work().start(
      this,
      [source = session_.source(), request = MoveRequest{flown_->snapshot, *choice_, flown_->after,
                                                         dialog.by(), dialog.reason()}](Watch&) {
        movedOf(*source).keepMoved(request);
        return true;
      },
      [this](bool) {
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(wordsFor(
            what, tr("Nothing was signed; the setting before still stands. Read the store again with F5.")));
      });
}

} // namespace hangbook::desk
