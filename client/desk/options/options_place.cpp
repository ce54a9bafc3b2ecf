// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/options_place.h"

#include <algorithm>

#include <QComboBox>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QTabWidget>

#include "desk/frame/place_names.h"
#include "desk/lists/column_fitter.h"
#include "desk/options/adjust_panel.h"
#include "desk/options/elevation.h"
#include "desk/options/house_panel.h"
#include "desk/options/scene_drawing.h"
#include "desk/options/setting_map_panel.h"
#include "desk/options/side_by_side_panel.h"
#include "desk/options/would_do_panel.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"

namespace hangbook::desk {

OptionsPlace::OptionsPlace(Session& session, QWidget* parent)
    : Place(place::options, tr("Options"), parent), session_(session), search_(session), judge_(session),
      choosing_(new Choosing(session, this)),
      page_(new ListPage(QStringLiteral("optionList"), tr("Options"), list_,
                         static_cast<int>(OptionColumn::stack), static_cast<int>(OptionColumn::verdict),
                         Qt::AscendingOrder, this)),
      verdicts_(new QComboBox(this)), order_(new QComboBox(this)), elevation_(new Elevation(this)),
      map_(new SettingMapPanel(session, this)), views_(new QTabWidget(this)), adjust_(new AdjustPanel(this)),
      rules_(new QTableView(this)), ruleHead_(new QLabel(this)), sentence_(new QLabel(this)),
      progress_(new QProgressBar(this)), cancel_(new QPushButton(tr("Cancel"), this)),
      parts_(new QTabWidget(this)), wouldDo_(new WouldDoPanel(session, this)),
      beside_(new SideBySidePanel(this)), house_(new HousePanel(session, this)),
      yesterday_(new QPushButton(tr("Same as &yesterday…"), this)),
      hereBefore_(new QPushButton(tr("Same as last time her&e…"), this)) {
  layOut();
  connectAll();
  showStopped({});
}

void OptionsPlace::connectSearch() {
  connect(&search_, &OptionSearch::started, this, [this] {
    setWorking(true);
    page_->setEmptyTexts(tr("Looking at every stack that the makers' tables allow …"), {});
  });
  connect(&search_, &OptionSearch::progressed, progress_, &QProgressBar::setValue);
  connect(&search_, &OptionSearch::ended, this, &OptionsPlace::showFound);
  connect(&search_, &OptionSearch::stopped, this, &OptionsPlace::showStopped);
  connect(&search_, &OptionSearch::reordered, this, [this] {
    const QString kept = looked_ ? looked_->id : QString();
    fillList();
    page_->table().sortByColumn(static_cast<int>(OptionColumn::verdict), Qt::AscendingOrder);
    tellOrder();
    tellCounts();
    if (kept.isEmpty() || !page_->showKey(kept)) {
      page_->table().selectRow(0);
    }
  });
  connect(order_, &QComboBox::activated, this,
          [this](int place) { search_.setOrder(options::allRankings()[static_cast<std::size_t>(place)]); });
}

void OptionsPlace::connectChoosing() {
  connect(adjust_, &AdjustPanel::chooseAsked, this, [this] { choose(); });
  connect(yesterday_, &QPushButton::clicked, this, [this] { findAgain(SameAs::yesterday); });
  connect(hereBefore_, &QPushButton::clicked, this, [this] { findAgain(SameAs::hereBefore); });
  connect(choosing_, &Choosing::foundAgain, this, &OptionsPlace::showAgain);
  connect(choosing_, &Choosing::notFound, this, [this](const QString& why) {
    setWorking(search_.running());
    Q_EMIT session_.trouble(why);
  });
  connect(cancel_, &QPushButton::clicked, this, [this] {
    search_.cancel();
    choosing_->cancel();
  });
  auto* beside = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_B), this);
  beside->setWhatsThis(tr("Put the selected option beside others, or take it away"));
  beside->setContext(Qt::WidgetWithChildrenShortcut);
  connect(beside, &QShortcut::activated, this, [this] {
    beside_->toggle();
    parts_->setCurrentWidget(beside_);
  });
}

void OptionsPlace::connectAll() {
  connectSearch();
  connectChoosing();
  connect(&session_, &Session::showChanged, this, &OptionsPlace::lookIfShown);
  connect(&session_, &Session::overviewChanged, this, &OptionsPlace::lookIfShown);
  connect(&session_, &Session::unitsChanged, this, &OptionsPlace::showFigures);
  connect(verdicts_, &QComboBox::currentIndexChanged, this, [this] {
    const QVariant wanted = verdicts_->currentData();
    page_->proxy().setVerdict(wanted.isValid() ? std::optional(static_cast<options::Verdict>(wanted.toInt()))
                                               : std::nullopt,
                              static_cast<int>(OptionColumn::verdict));
  });
  connect(page_, &ListPage::currentRowChanged, this, &OptionsPlace::showOption);
  connect(adjust_, &AdjustPanel::settingAsked, this, &OptionsPlace::judge);
  connect(elevation_, &Elevation::liftAsked, adjust_, &AdjustPanel::lift);
  connect(map_, &SettingMapPanel::settingAsked, adjust_, &AdjustPanel::ask);
  connect(adjust_, &AdjustPanel::backAsked, this, [this] { showOption(page_->currentRow()); });
  connect(rules_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& index) { showSentence(index.row()); });
  connect(&judge_, &SettingJudge::answered, this, &OptionsPlace::showAnswer);
  connect(&judge_, &SettingJudge::failed, &session_, &Session::trouble);
}

QString OptionsPlace::explanation() const {
  return tr(
      "Every option that makers' data, venue and fleet allow for this hang, each with its verdict at its "
      "best setting. "
      "Select one to see it to scale in the room and to read what each rule says. Change tilt, trim or mark: "
      "everything is judged again while you do. Choosing asks for a name; an option that fails cannot be "
      "chosen, and one that is unproven needs a reason and is NOT CLEARED TO LIFT.\n\nIn the drawing: take "
      "hold of the hang to move it up or down; wheel or + and − zoom, drag or arrow keys move, 0 shows the "
      "room, H the hang, Ctrl+C copies the picture. Beside it the window of settings: at which tilts and "
      "trims "
      "the option stands, which rule ends it where, and at which tilts each link of the chain leaves a trim; "
      "arrow keys move the point, page up and down the mark, and the rules follow.\n\nUnder it: the rules; "
      "what would do where it fails, "
      "or what breaks first and how far away that is; and two to four options side by side (Ctrl+B puts the "
      "selected one there). Same as yesterday, or as last time here, finds what hung then by today's rules "
      "and offers to choose it. House rules say what stands for this show and who set it "
      "where; one that is stated is signed, tightens only where makers, venue or law have a say, and tells "
      "which chosen options change their verdict. The order is remembered; an option that another one beats "
      "in every respect "
      "says by which.");
}

void OptionsPlace::showKey(const QString& key) {
  const QStringList parts = key.split(QLatin1Char('\n'));
  if (parts.size() >= 2) { // the hang may stand behind the show
    session_.setShow({parts[0], parts[1]}, parts.value(2));
  }
}

void OptionsPlace::takeFocus() {
  page_->table().setFocus();
}

void OptionsPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  if (stale_) {
    lookIfShown();
  }
}

/// A search costs; it begins only where somebody looks at its result.
void OptionsPlace::lookIfShown() {
  stale_ = true;
  if (isVisible() && session_.loaded()) {
    stale_ = false;
    list_.setRows({});
    showOption(-1);
    setNote({});
    search_.look();
  }
}

void OptionsPlace::fillList() {
  const Ranked& ranked = search_.ranked();
  const options::Choice* chosen = findChoice(session_.overview(), session_.show(), session_.hang());
  std::vector<OptionLine> lines;
  if (ranked.found != nullptr) {
    int rank = 0;
    for (const options::Option& each : ranked.found->options) {
      lines.push_back(optionLine(each, ++rank, chosen != nullptr && chosen->option == each.id,
                                 search_.snapshot()->catalogue));
    }
    sayBeaten(ranked.beaten, lines);
  }
  beside_->follow(lines);
  house_->setSnapshot(search_.snapshot());
  list_.setRows(std::move(lines));
  hideAlike();
}

/// What is the same for every option says nothing in a list; it stands over the rules of each.
void OptionsPlace::hideAlike() {
  for (const OptionColumn column :
       {OptionColumn::bar, OptionColumn::picks, OptionColumn::hoist, OptionColumn::points}) {
    const int place = static_cast<int>(column);
    bool differs = list_.rowCount() < 2;
    for (int row = 1; row < list_.rowCount() && !differs; ++row) {
      differs = list_.index(row, place).data() != list_.index(0, place).data();
    }
    page_->table().setColumnHidden(place, !differs);
  }
  if (auto* fitter = page_->table().findChild<ColumnFitter*>()) {
    fitter->refit();
  }
}

void OptionsPlace::showFound() {
  setWorking(false);
  page_->setEmptyTexts(
      tr("No option at all: no maker's stacking table, bar and hoist fit the points that this hang may use. "
         "Enter them in Data."),
      tr("No option fits these words and this verdict."));
  fillList();
  tellOrder();
  tellCounts();
  const options::Choice* chosen = findChoice(session_.overview(), session_.show(), session_.hang());
  if (chosen == nullptr || !page_->showKey(chosen->option)) {
    page_->table().selectRow(0);
  }
}

void OptionsPlace::tellOrder() {
  const Ranked& ranked = search_.ranked();
  const auto all = options::allRankings();
  const QSignalBlocker quiet(order_);
  order_->setCurrentIndex(static_cast<int>(std::ranges::find(all, ranked.by) - all.begin()));
  const bool changes = ranked.by == options::RankBy::changes;
  order_->setToolTip(
      !changes ? tr("Order among options of like verdict; it is remembered.")
      : ranked.yesterday
          ? tr("Counted from what was chosen at %1; it is remembered.").arg(ranked.yesterday->show)
          : tr("Nothing was chosen at the show before, so there is nothing to count from: what covers most "
               "comes first."));
}

void OptionsPlace::setWorking(bool working) {
  progress_->setValue(0);
  progress_->setVisible(working);
  cancel_->setVisible(working);
  const bool can = !working && search_.snapshot() != nullptr;
  yesterday_->setEnabled(can);
  hereBefore_->setEnabled(can);
}

void OptionsPlace::tellCounts() {
  const options::HangOptions* found = search_.found();
  if (found == nullptr) {
    setNote({});
    return;
  }
  const auto count = [&](options::Verdict verdict) {
    return std::count_if(found->options.begin(), found->options.end(),
                         [&](const options::Option& each) { return each.verdict == verdict; });
  };
  setNote(tr("%1 options: %2 hold, %3 tight, %4 unproven, %5 fail · %6 settings decided")
              .arg(found->options.size())
              .arg(count(options::Verdict::holds))
              .arg(count(options::Verdict::tight))
              .arg(count(options::Verdict::unproven))
              .arg(count(options::Verdict::fails))
              .arg(found->decided.settings));
}

void OptionsPlace::showStopped(const QString& why) {
  setWorking(false);
  fillList();
  page_->setEmptyTexts(
      why.isEmpty() ? tr("No show with a hang is chosen. Enter a show with its hangs, or import a tour.")
                    : why,
      {});
  showOption(-1);
}

void OptionsPlace::showOption(int row) {
  judge_.drop();
  scene_.reset();
  if (row < 0) {
    looked_.reset();
    setFindings({});
    adjust_->setOption({});
    wouldDo_->setNothing();
    map_->setNothing();
    beside_->setLooked({});
    ruleHead_->setText(tr("Rules"));
    elevation_->setDrawing({});
    elevation_->setEmptyText(tr("Select an option to see it in the room."));
    return;
  }
  looked_ = list_.at(row).option;
  setFindings(looked_->findings);
  adjust_->setOption(looked_);
  wouldDo_->setOption(search_.snapshot(), *looked_, false);
  map_->setOption(search_.snapshot(), *looked_);
  beside_->setLooked(list_.at(row));
  ruleHead_->setText(wordsFor(*looked_));
  judge_.ask({search_.snapshot(), *looked_, false});
}

/// The rule that was looked at stays looked at while its setting is changed.
void OptionsPlace::setFindings(const std::vector<options::Finding>& findings) {
  const QString rule = rules_->currentIndex().data(keyRole).toString();
  sheet_.setFindings(findings);
  for (int row = 0; row < sheet_.rowCount(); ++row) {
    if (sheet_.at(row).rule == rule) {
      rules_->setCurrentIndex(sheet_.index(row, 0));
      return;
    }
  }
  if (sheet_.rowCount() > 0) {
    rules_->setCurrentIndex(sheet_.index(0, 0));
  }
  showSentence(sheet_.rowCount() > 0 ? 0 : -1);
}

void OptionsPlace::showSentence(int row) {
  if (row < 0) {
    sentence_->clear();
    return;
  }
  const options::Finding& finding = sheet_.at(row);
  sentence_->setText(session_.figures().sentence(
      finding.source.isEmpty() ? finding.text : tr("%1 Limit from: %2").arg(finding.text, finding.source)));
}

void OptionsPlace::judge(const options::Setting& setting) {
  if (!looked_ || !search_.snapshot()) {
    return;
  }
  options::Option wanted = *looked_;
  wanted.setting = setting;
  judge_.ask({search_.snapshot(), std::move(wanted), true});
}

void OptionsPlace::showAnswer(const SettingJudge::Answer& answer) {
  if (!looked_) {
    return;
  }
  scene_ = answer.scene;
  elevation_->setDrawing(drawingOf(*scene_, session_.figures()));
  if (answer.judged) {
    looked_ = answer.option;
    setFindings(answer.option.findings);
    adjust_->setJudged(answer.option);
    wouldDo_->setOption(search_.snapshot(), answer.option, true);
    map_->setOption(search_.snapshot(), answer.option);
    if (const int row = page_->currentRow(); row >= 0) {
      OptionLine line = list_.at(row);
      line.option = answer.option;
      beside_->setLooked(line);
    }
    ruleHead_->setText(wordsFor(answer.option));
  }
}

void OptionsPlace::showFigures() {
  list_.setFigures(session_.figures());
  sheet_.setFigures(session_.figures());
  adjust_->setFigures(session_.figures());
  beside_->setFigures(session_.figures());
  elevation_->setUnits(session_.figures().system());
  showSentence(rules_->currentIndex().isValid() ? rules_->currentIndex().row() : -1);
  if (looked_) {
    ruleHead_->setText(wordsFor(*looked_));
  }
  if (scene_) {
    elevation_->setDrawing(drawingOf(*scene_, session_.figures()));
  }
}

QString OptionsPlace::settingWords(const options::Setting& setting) const {
  const Figures& figures = session_.figures();
  const QString words =
      tr("tilt %1, trim %2").arg(figures.angle(setting.tiltDeg), figures.length(setting.trimM));
  return setting.mark ? tr("%1, mark %2").arg(words).arg(*setting.mark) : words;
}

QString OptionsPlace::wordsFor(const options::Option& option) const {
  const Figures& figures = session_.figures();
  QStringList says{stackText(option.key.stack, search_.snapshot()->catalogue), option.key.bar,
                   wordOf(option.key.picks), option.key.hoist,
                   tr("points %1").arg(option.key.points.join(QStringLiteral(", ")))};
  if (option.setting) {
    says << tr("%1 below the hooks").arg(figures.mass(option.massKg, 0));
  }
  return says.join(QStringLiteral("  ·  "));
}

void OptionsPlace::choose(const QString& before) {
  if (looked_ && looked_->setting) {
    QString what = wordsFor(*looked_) + QLatin1Char('\n') + settingWords(*looked_->setting);
    choosing_->choose(*looked_, before.isEmpty() ? what : before + QLatin1Char('\n') + what);
  }
}

void OptionsPlace::findAgain(SameAs when) {
  if (search_.snapshot()) {
    setWorking(true);
    choosing_->findAgain(search_.snapshot(), when);
  }
}

/// It is shown first, so that whoever chooses it sees its rule sheet; where it fails, what would do for it.
void OptionsPlace::showAgain(const options::Option& option, const QString& words) {
  setWorking(false);
  verdicts_->setCurrentIndex(0);
  if (!page_->showKey(option.id)) {
    Q_EMIT session_.trouble(tr("%1 It is not in this list: read the store again with F5.").arg(words));
    return;
  }
  if (looked_->verdict == options::Verdict::fails) {
    parts_->setCurrentWidget(wouldDo_);
    Q_EMIT session_.trouble(
        tr("%1 A failing option cannot be chosen; what would do stands below.").arg(words));
    return;
  }
  choose(words);
}

} // namespace hangbook::desk
