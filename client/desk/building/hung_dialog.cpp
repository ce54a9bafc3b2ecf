// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/hung_dialog.h"

#include <algorithm>

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "quantity/error.h"

namespace hangbook::desk {

HungSource& hungOf(Source& source) {
  auto* keeper = dynamic_cast<HungSource*>(&source);
  if (keeper == nullptr) {
    throw Error(Trouble::notPossible, "which units hang where is not kept here");
  }
  return *keeper;
}

HungDialog::HungDialog(Session& session, QWidget* parent)
    : AskDialog(
          QStringLiteral("hung"),
          tr("Units by serial: hang %1 at %2").arg(session.hang(), session.show().show),
          tr("Scan or type the serials from the bar down: each goes to the place that is selected, and the "
             "next open one is selected. Nothing is recorded before you say so. The loads stay those of "
             "the types; the sheets then say what each unit weighs and who weighed it."),
          tr("&Record them"), parent),
      session_(session), code_(new QLineEdit(this)), table_(new QTableView(this)), sum_(new QLabel(this)),
      says_(new QLabel(this)), clear_(new QPushButton(tr("&Take this place back"), this)) {
  stored_ = {session.show().tour, session.show().show, session.hang()};
  wish_ = stored_;
  code_->setPlaceholderText(tr("Scan its label, or type its serial and press Enter"));
  addField(tr("&Serial"), QStringLiteral("Code"), tr("The serial of the unit at the selected place"), code_);
  table_->setModel(&model_);
  prepareTable(*table_, model_, static_cast<int>(HungColumn::missing));
  table_->setMinimumHeight(rowHeight(font()) * 9);
  model_.setFigures(session.figures());
  addField(tr("&Places"), QStringLiteral("Places"), tr("Places from the bar down, with their units"), table_);
  auto* under = new QWidget(this);
  auto* lines = new QVBoxLayout(under);
  lines->setContentsMargins(0, 0, 0, 0);
  clear_->setObjectName(QStringLiteral("hungClear"));
  clear_->setAutoDefault(false);
  sum_->setObjectName(QStringLiteral("hungSum"));
  says_->setObjectName(QStringLiteral("hungSays"));
  says_->setWordWrap(true);
  lines->addWidget(clear_, 0, Qt::AlignLeft);
  lines->addWidget(sum_);
  lines->addWidget(says_);
  addField(QString(), QStringLiteral("Outcome"), tr("What is recorded, and what is refused"), under);
  addBy(tr("Who records it"), namesOf(session.overview().people), session.overview().atDesk);
  connect(code_, &QLineEdit::returnPressed, this, [this] { take(code_->text()); });
  connect(clear_, &QPushButton::clicked, this, &HungDialog::clearPlace);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 140);
  setReady(false);
  say(tr("Being read …"));
  watch_ = session_.work().start(
      this, [source = session_.source(), hang = stored_](Watch&) { return hungOf(*source).hungNow(hang); },
      [this](const HungLook& found) {
        stored_ = found.hang;
        say({});
        show(found, -1);
        code_->setFocus();
      },
      [this](const std::exception_ptr& what) { say(wordsFor(what, {})); });
}

/// Enter ends a scan; it must not press the dialog's own button.
void HungDialog::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && (code_->hasFocus() || table_->hasFocus())) {
    event->accept();
    return;
  }
  if (event->key() == Qt::Key_Delete && table_->hasFocus()) {
    clearPlace();
    return;
  }
  AskDialog::keyPressEvent(event);
}

int HungDialog::row() const {
  return table_->currentIndex().row();
}

void HungDialog::say(const QString& words) {
  says_->setText(session_.figures().sentence(words));
}

void HungDialog::take(const QString& code) {
  const QString typed = code.simplified();
  code_->selectAll();
  if (typed.isEmpty() || model_.rowCount() == 0) {
    return;
  }
  if (row() < 0) {
    say(tr("Every place has its unit. Select the one that %1 takes.").arg(typed));
    return;
  }
  const auto& units = session_.overview().units;
  const auto unit = std::ranges::find_if(
      units, [&](const fleet::Unit& each) { return each.serial.compare(typed, Qt::CaseInsensitive) == 0; });
  actions::HungFor wanted = wish_;
  wanted.serials[model_.at(row()).element] = unit == units.end() ? typed : unit->serial;
  look(wanted, row() + 1);
}

void HungDialog::clearPlace() {
  if (row() >= 0 && wish_.serials.contains(model_.at(row()).element)) {
    actions::HungFor wanted = wish_;
    wanted.serials.erase(model_.at(row()).element);
    look(wanted, -1);
  }
}

/// What it would come to; a unit that is refused leaves all as it was.
void HungDialog::look(const actions::HungFor& wanted, int then) {
  setReady(false);
  const int here = row();
  watch_ = session_.work().start(
      this, [source = session_.source(), wanted](Watch&) { return hungOf(*source).tryHung(wanted); },
      [this, then, here](const HungLook& found) {
        say(found.unproven.join(QLatin1Char('\n')));
        code_->clear();
        show(found, then < 0 ? here : then);
      },
      [this](const std::exception_ptr& what) {
        say(wordsFor(what, tr("Nothing was changed.")));
        setReady(!(wish_ == stored_));
      });
}

void HungDialog::show(const HungLook& found, int row) {
  wish_ = found.hang;
  model_.setRows(found.places.places);
  const int open = row < 0 || found.places.recorded == 0 ? model_.openFrom(0)
                   : row < model_.rowCount() && model_.at(row).serial.isEmpty()
                       ? row
                       : model_.openFrom(std::min(row, model_.rowCount() - 1));
  if (open >= 0) {
    table_->selectRow(open);
  } else {
    table_->setCurrentIndex({});
  }
  const Figures& figures = session_.figures();
  const QString recorded = tr("%1 of %2 places recorded.").arg(found.places.recorded).arg(model_.rowCount());
  const QString counted = figures.mass(found.places.countedKg);
  sum_->setText(recorded + QLatin1Char(' ') +
                (found.places.massKg ? tr("Bar and cabinets weigh %1; the loads count %2.")
                                           .arg(figures.mass(found.places.massKg), counted)
                                     : tr("The loads count %1 for bar and cabinets.").arg(counted)));
  setReady(!(wish_ == stored_));
}

} // namespace hangbook::desk
