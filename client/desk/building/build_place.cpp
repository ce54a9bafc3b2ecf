// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/build_place.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>

#include "actions/gates.h"
#include "build/gates.h"
#include "desk/building/build_sheet.h"
#include "desk/building/build_steps.h"
#include "desk/building/flown_panel.h"
#include "desk/building/hung_dialog.h"
#include "desk/building/print_button.h"
#include "desk/building/record_form.h"
#include "desk/building/swap_dialog.h"
#include "desk/frame/place_names.h"
#include "desk/options/show_chooser.h"
#include "desk/source/gate_source.h"
#include "desk/style/scale.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

/// What the worker answers: the show with its plan, and its hold points.
struct Planned {
  reports::ShowAsIs show;
  std::vector<marks::GateSigned> gates;
};

} // namespace

BuildPlace::BuildPlace(Session& session, QWidget* parent)
    : Place(place::build, tr("Build"), parent), session_(session), sheet_(new BuildSheet),
      steps_(new BuildSteps), flown_(new FlownPanel(session)), hung_(hungButton()), nothing_(new QLabel),
      left_(new QStackedWidget(this)),
      before_(new ListPage(QStringLiteral("marksList"), tr("Marks used before"), marks_,
                           static_cast<int>(MarkColumn::place), static_cast<int>(MarkColumn::date),
                           Qt::DescendingOrder, this)),
      form_(new RecordForm(this)) {
  nothing_->setObjectName(QStringLiteral("buildNothing"));
  nothing_->setAlignment(Qt::AlignCenter);
  nothing_->setWordWrap(true);
  nothing_->setForegroundRole(QPalette::PlaceholderText);
  nothing_->setText(
      tr("Nothing is chosen for this hang. Go to Options (Ctrl+2) and choose one; what is to be built then "
         "stands here."));
  left_->addWidget(nothing_);
  auto* tabs = new QTabWidget;
  tabs->setObjectName(QStringLiteral("buildTabs"));
  tabs->setAccessibleName(tr("Mark and angles, steps, or once flown"));
  tabs->setDocumentMode(true);
  tabs->addTab(sheet_, tr("Mark and angles"));
  tabs->addTab(steps_, tr("Steps"));
  tabs->addTab(flown_, tr("Once flown"));
  chosenPart_ = tabs;
  left_->addWidget(tabs);
  before_->setEmptyTexts(tr("No mark is recorded for this stack, bar and chain."),
                         tr("No mark contains these words."));
  addToTitle(new ShowChooser(QStringLiteral("build"), session_, this));
  addToTitle(new PrintButton(session_, this));
  addToTitle(swapButton());
  addToTitle(hung_);
  connect(steps_, &BuildSteps::signAsked, this, &BuildPlace::sign);

  auto* beforeHead = new QLabel(tr("Marks used before – records, not verdicts"), this);
  beforeHead->setFont(fontFor(TextSize::heading, font()));
  auto* formHead = new QLabel(tr("What was used today"), this);
  formHead->setFont(fontFor(TextSize::heading, font()));
  auto* right = new QVBoxLayout;
  right->setSpacing(space::step);
  right->addWidget(beforeHead);
  right->addWidget(before_, 1);
  right->addWidget(formHead);
  right->addWidget(form_);
  auto* content = new QWidget(this);
  auto* halves = new QHBoxLayout(content);
  halves->setContentsMargins(0, 0, 0, 0);
  halves->setSpacing(space::broad);
  halves->addWidget(left_, 5);
  halves->addLayout(right, 4);
  setContent(content);

  session_.keepUp(this, [this] { showFacts(); });
  connect(&session_, &Session::showChanged, this, &BuildPlace::showFacts);
  connect(&session_, &Session::unitsChanged, this, [this] {
    if (choice_ && results_) {
      sheet_->setChoice(*choice_, *results_, session_.overview().catalogue, session_.figures());
    }
    flown_->setChoice(choice_);
    plan(); // the words of the steps are in the units, too
  });
  connect(form_, &RecordForm::recordAsked, this, &BuildPlace::record);
  showFacts();
}

QString BuildPlace::explanation() const {
  return tr(
      "What was chosen for this hang, as frozen with the choice: the chain mark and the angles that the "
      "links beside it "
      "would give, trim, tape height, pick loads and what an inclinometer on each cabinet's side must read. "
      "Beside it the marks that were used before with the same stack: they are records, not verdicts. Record "
      "below what was really used; a record is never changed, only corrected by a later one. A mark is never "
      "changed in the air. Once flown tries another aim, trim or wind, lists what changes and in which order "
      "it "
      "is done, and keeps it with a name and a reason. Units by serial records which unit hangs where, "
      "scanned from "
      "the bar down. Print shows a sheet as it will stand on A4 or US "
      "Letter and keeps it as PDF or "
      "CSV: "
      "load sheet, build sheet, prep list, the show's examination register, the tour's summary.");
}

void BuildPlace::showKey(const QString& key) {
  const QStringList parts = key.split(QLatin1Char('\n'));
  if (parts.size() == 2) {
    session_.setShow({parts[0], parts[1]});
  }
}

void BuildPlace::takeFocus() {
  before_->table().setFocus();
}

void BuildPlace::showFacts() {
  if (watch_) {
    watch_->cancel();
    watch_.reset();
  }
  if (planning_) {
    planning_->cancel();
    planning_.reset();
  }
  results_.reset();
  steps_->setPeople(session_.overview().people);
  form_->setPeople(session_.overview().people);
  const options::Choice* choice = findChoice(session_.overview(), session_.show(), session_.hang());
  choice_ = choice == nullptr ? std::nullopt : std::optional(*choice);
  flown_->setChoice(choice_);
  hung_->setEnabled(choice_.has_value());
  if (!choice_) {
    left_->setCurrentWidget(nothing_);
    marks_.setRows({});
    form_->setComputed({});
    return;
  }
  plan();
  marks_.setRows(marksBefore(session_.overview(), choice_->key));
  form_->setComputed(choice_->setting.mark);
  watch_ = session_.judging().start(
      this, [source = session_.source(), frozen = *choice_](Watch&) { return source->frozenResults(frozen); },
      [this](const options::Option& results) {
        watch_.reset();
        showResults(results);
      },
      [this](const std::exception_ptr& what) {
        watch_.reset();
        Q_EMIT session_.trouble(
            wordsFor(what, tr("The choice itself still stands. Choose the option again to freeze it anew.")));
      });
}

void BuildPlace::showSteps(const reports::ShowAsIs& show, const std::vector<marks::GateSigned>& gates) {
  const auto gatesNow = choice_ ? actions::gatesAsTheyStand(gates, session_.hang(), choice_->option,
                                                            {choice_->at, choice_->builtAt},
                                                            build::gatesOf(show.plan, session_.hang()))
                                : std::vector<marks::GateSigned>{};
  steps_->setPlan(show.plan, session_.hang(), gatesNow, session_.figures());
  flown_->setOpenGates(actions::openAmong(gatesNow));
}

void BuildPlace::plan() {
  if (planning_) {
    planning_->cancel();
    planning_.reset();
  }
  if (!choice_) {
    return;
  }
  steps_->setWords(tr("The steps are being computed …"));
  planning_ = session_.work().start(
      this,
      [source = session_.source(), show = session_.show(), units = session_.figures().system()](Watch&) {
        auto* keeper = dynamic_cast<GateSource*>(source.get());
        return Planned{reports::showAsIs(source->snapshot(show),
                                         keeper != nullptr ? keeper->cablingOf(show) : calendar::Cabling{},
                                         units),
                       keeper != nullptr ? keeper->gatesOf(show) : std::vector<marks::GateSigned>{}};
      },
      [this](const Planned& planned) {
        planning_.reset();
        showSteps(planned.show, planned.gates);
      },
      [this](const std::exception_ptr& what) {
        planning_.reset();
        steps_->setWords(wordsFor(what, tr("The steps of this build cannot be computed.")));
      });
}

void BuildPlace::sign(const QString& gate, const QString& by, const QString& skippedBecause) {
  if (!choice_ || gate.isEmpty()) {
    return;
  }
  marks::GateSigned fact;
  fact.tour = choice_->tour;
  fact.show = choice_->show;
  fact.hang = choice_->hang;
  fact.option = choice_->option;
  fact.gate = gate;
  fact.by = by;
  fact.skipped = !skippedBecause.isEmpty();
  fact.reason = skippedBecause;
  QStringList names;
  for (const marks::GateSigned& each : steps_->gates()) {
    names << each.gate;
  }
  session_.work().start(
      this,
      [source = session_.source(), fact, names,
       since = marks::GatesSince{choice_->at, choice_->builtAt}](Watch&) {
        auto* keeper = dynamic_cast<GateSource*>(source.get());
        if (keeper == nullptr) {
          throw Error(Trouble::notPossible, "hold points are not kept here");
        }
        keeper->signGate(fact, names, since);
        return true;
      },
      [this](bool) {
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(
            wordsFor(what, tr("The hold point was not signed; it stands open. Try again.")));
      });
}

QPushButton* BuildPlace::swapButton() {
  auto* button = new QPushButton(tr("Swap &a unit…"), this);
  button->setObjectName(QStringLiteral("buildSwap"));
  button->setToolTip(tr("A unit that is dead at load-in gives its place to another"));
  connect(button, &QPushButton::clicked, this, &BuildPlace::swap);
  return button;
}

void BuildPlace::swap() {
  auto* dialog = new SwapDialog(session_, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] {
    session_.work().start(
        this,
        [source = session_.source(), wish = dialog->wish()](Watch&) {
          swapOf(*source).swapUnit(wish);
          return true;
        },
        [this](bool) {
          Q_EMIT session_.saved();
          session_.reload();
        },
        [this](const std::exception_ptr& what) {
          Q_EMIT session_.trouble(wordsFor(what, tr("Nothing was swapped; all stands as before.")));
        });
  });
  dialog->open();
}

QPushButton* BuildPlace::hungButton() {
  auto* button = new QPushButton(tr("&Units by serial…"), this);
  button->setObjectName(QStringLiteral("buildHung"));
  button->setToolTip(tr("Which unit hangs where in this hang, scanned or typed from the bar down"));
  connect(button, &QPushButton::clicked, this, &BuildPlace::recordHung);
  return button;
}

void BuildPlace::recordHung() {
  auto* dialog = new HungDialog(session_, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] {
    session_.work().start(
        this,
        [source = session_.source(), wish = dialog->wish(), by = dialog->by()](Watch&) {
          hungOf(*source).recordHung(wish, by);
          return true;
        },
        [this](bool) {
          Q_EMIT session_.saved();
          session_.reload();
        },
        [this](const std::exception_ptr& what) {
          Q_EMIT session_.trouble(wordsFor(what, tr("No unit was recorded; all stands as before.")));
        });
  });
  dialog->open();
}

void BuildPlace::showResults(const options::Option& results) {
  results_ = results;
  sheet_->setChoice(*choice_, *results_, session_.overview().catalogue, session_.figures());
  left_->setCurrentWidget(chosenPart_);
}

void BuildPlace::record() {
  if (!choice_) {
    return;
  }
  const calendar::Show* show = findShow(session_.overview(), session_.show());
  const venue::Venue* venue = show == nullptr ? nullptr : findVenue(session_.overview(), show->venue);
  const catalogue::StackingTable* table =
      catalogue::find(session_.overview().catalogue.tables, choice_->key.table);
  marks::MarkUsed used = form_->typed();
  used.stack = choice_->key.stack;
  used.bar = choice_->key.bar;
  used.chain = table == nullptr ? QString() : table->chain;
  used.tilt = degrees(choice_->setting.tiltDeg);
  for (const double hole : choice_->setting.holesDeg) {
    used.holes.push_back(degrees(hole));
  }
  used.tour = choice_->tour;
  used.show = choice_->show;
  used.hang = choice_->hang;
  used.place = venue == nullptr ? QString() : venue->name + QStringLiteral(", ") + venue->town;
  used.date = session_.overview().today;
  session_.work().start(
      this,
      [source = session_.source(), used](Watch&) {
        source->recordMark(used);
        return true;
      },
      [this](bool) {
        form_->clearTyped();
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(
            wordsFor(what, tr("The mark was not recorded; what you typed is still there. Try again.")));
      });
}

} // namespace hangbook::desk
