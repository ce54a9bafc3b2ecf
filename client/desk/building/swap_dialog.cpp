// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/swap_dialog.h"

#include <algorithm>

#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QStandardItemModel>
#include <QTableView>

#include "actions/choose.h"
#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_label.h"
#include "desk/words/plain_words.h"
#include "quantity/error.h"

namespace hangbook::desk {
SwapSource& swapOf(Source& source) {
  auto* swapper = dynamic_cast<SwapSource*>(&source);
  if (swapper == nullptr) {
    throw Error(Trouble::notPossible, "units are not swapped here");
  }
  return *swapper;
}

SwapDialog::SwapDialog(Session& session, QWidget* parent)
    : AskDialog(QStringLiteral("swap"), tr("Swap a unit at %1").arg(session.show().show),
                tr("A unit that is dead at load-in gives its place to another of its type. Mass, examination "
                   "and mark are checked again; the dead one is quarantined, the hangs that take such a unit "
                   "are chosen anew, and their sheets come out as a new revision."),
                tr("&Swap them"), parent),
      session_(session), show_(session.show()), dead_(new QComboBox(this)), stand_(new QComboBox(this)),
      verdict_(new VerdictLabel(this)), about_(new QLabel(this)) {
  const Overview& facts = session_.overview();
  for (const fleet::Unit& unit : facts.units) {
    const bool chosen = std::ranges::any_of(facts.choices, [&](const options::Choice& each) {
      return each.tour == show_.tour && each.show == show_.show &&
             actions::takes(facts.catalogue, each.key, unit);
    });
    if (chosen && unit.state != fleet::UnitState::writtenOff) {
      dead_->addItem(tr("%1, %2 at %3, %4").arg(unit.serial, unit.type, unit.place, massOf(unit)),
                     unit.serial);
    }
  }
  dead_->setEditable(true); // typed or scanned
  dead_->setInsertPolicy(QComboBox::NoInsert);
  dead_->completer()->setFilterMode(Qt::MatchContains);
  dead_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  dead_->setCurrentIndex(-1);
  dead_->lineEdit()->setPlaceholderText(tr("Scan its label, or type its serial or type"));
  addField(tr("&Dead"), QStringLiteral("Dead"), tr("The unit that is dead"), dead_);
  addField(tr("Stand-&in"), QStringLiteral("Stand"), tr("What takes its place"), stand_);
  about_->setWordWrap(true);
  addField(tr("Then"), QStringLiteral("Outcome"), tr("What the hangs then are"), verdict_);
  addField({}, QStringLiteral("About"), tr("What the hangs then are, in words"), about_);
  auto* table = new QTableView(this);
  table->setModel(&changes_);
  prepareTable(*table, changes_, static_cast<int>(ChangeColumn::what));
  table->setMinimumHeight(rowHeight(font()) * 7);
  addField(tr("&Changes"), QStringLiteral("Changes"), tr("What changes against the signed settings"), table);
  reason_ = addNeeded(tr("&Reason"), QStringLiteral("Reason"), tr("What is wrong with it"),
                      tr("Needed: what is wrong with the dead one"));
  addBy(tr("Who swaps it"), namesOf(facts.people), facts.atDesk);
  connect(dead_, &QComboBox::currentIndexChanged, this, &SwapDialog::list);
  connect(dead_->lineEdit(), &QLineEdit::editingFinished, this, [this] {
    const QString typed = dead_->currentText().trimmed();
    const int at = dead_->findData(typed, Qt::UserRole, Qt::MatchFixedString);
    if (at >= 0) {
      dead_->setCurrentIndex(at);
    }
  });
  connect(stand_, &QComboBox::currentIndexChanged, this, &SwapDialog::judge);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 92);
  say({});
}

QString SwapDialog::massOf(const fleet::Unit& unit) const {
  return unit.weighed ? session_.figures().mass(inKilograms(*unit.weighed)) : tr("not weighed");
}

SwapWish SwapDialog::wish() const {
  return {show_, dead_->currentData().toString(), stand_->currentData().toString(),
          reason_->text().simplified(), by()};
}

void SwapDialog::say(const QString& words) {
  setReady(false);
  changes_.setRows({});
  verdict_->setVerdict(std::nullopt);
  about_->setText(words);
}

void SwapDialog::list() {
  stand_->clear();
  say({});
  const QString dead = wish().dead;
  if (dead.isEmpty()) {
    return;
  }
  watch_ = session_.work().start(
      this,
      [source = session_.source(), show = show_, dead](Watch&) {
        return swapOf(*source).standInsFor(show, dead);
      },
      [this, dead](const std::vector<actions::StandIn>& standIns) {
        if (dead == wish().dead) {
          fill(standIns);
        }
      },
      [this](const std::exception_ptr& what) { say(wordsFor(what, {})); });
}

void SwapDialog::fill(const std::vector<actions::StandIn>& standIns) {
  const QSignalBlocker quiet(stand_);
  for (const actions::StandIn& each : standIns) {
    const QString examined =
        each.examined
            ? tr("examined %1: %2").arg(dateText(each.examined->date), wordOf(each.examined->result))
            : tr("no examination recorded");
    QString text = tr("%1 at %2, %3, %4").arg(each.unit.serial, each.unit.place, massOf(each.unit), examined);
    if (!each.usable.why.isEmpty()) {
      text += (each.usable.yes ? tr(" – unproven: %1") : tr(" – may not go: %1")).arg(each.usable.why);
    }
    stand_->addItem(text, each.unit.serial);
    auto* items = qobject_cast<QStandardItemModel*>(stand_->model());
    items->item(stand_->count() - 1)->setEnabled(each.usable.yes);
  }
  const bool any = !standIns.empty() && standIns.front().usable.yes; // the usable ones come first
  stand_->setCurrentIndex(any ? 0 : -1);
  if (any) {
    judge();
  } else {
    say(tr("No other unit of its type may stand in: bring one that is ready and examined."));
  }
}

void SwapDialog::judge() {
  say({});
  if (wish().stand.isEmpty()) {
    return;
  }
  about_->setText(tr("Being checked …"));
  watch_ = session_.work().start(
      this, [source = session_.source(), wish = wish()](Watch&) { return swapOf(*source).trySwap(wish); },
      [this](const actions::Swap& swap) {
        if (swap.stand.serial == wish().stand && swap.dead.serial == wish().dead) {
          show(swap);
        }
      },
      [this](const std::exception_ptr& what) { say(wordsFor(what, tr("Nothing was changed."))); });
}

void SwapDialog::show(const actions::Swap& swap) {
  auto worst = swap.unproven.isEmpty() ? options::Verdict::holds : options::Verdict::unproven;
  QStringList about;
  std::vector<build::FlownChange> rows;
  for (const actions::SwappedHang& hang : swap.hangs) {
    worst = std::max(worst, hang.after.verdict);
    const auto& setting = hang.after.setting;
    about << tr("Hang %1: revision %2 follows %3, %4.")
                 .arg(hang.standing.hang)
                 .arg(hang.standing.revision + 1)
                 .arg(hang.standing.revision)
                 .arg(setting && setting->mark ? tr("the mark stays %1").arg(setting->mark.value_or(0))
                                               : tr("no chain"));
    if (hang.after.verdict >= options::Verdict::unproven) {
      about << (hang.after.verdict == options::Verdict::unproven ? tr("NOT CLEARED TO LIFT: %1")
                                                                 : tr("It fails and cannot be chosen: %1"))
                   .arg(session_.figures().sentence(actions::becauseOf(hang.after)));
    }
    for (build::FlownChange change : build::changesBetween(hang.before, hang.after)) {
      change.what.prepend(hang.standing.hang + QStringLiteral(": "));
      rows.push_back(change);
    }
  }
  if (!swap.unproven.isEmpty()) {
    about << tr("NOT CLEARED TO LIFT: %1").arg(swap.unproven);
  }
  about << (rows.empty() ? tr("No figure changes. Print the sheets again, and sign the hold points again.")
                         : tr("Print the sheets again, and sign the hold points again."));
  verdict_->setVerdict(worst);
  about_->setText(about.join(QLatin1Char('\n')));
  changes_.setFigures(session_.figures());
  changes_.setRows(rows);
  setReady(worst != options::Verdict::fails);
}

} // namespace hangbook::desk
