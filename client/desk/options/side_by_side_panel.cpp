// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/side_by_side_panel.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

options::CompareWords wordsIn(const Figures& figures) {
  options::CompareWords made;
  made.unitInName = false;
  made.figure = [figures](double value, const QString& unit, int places) {
    return unit == QLatin1String("kg")  ? figures.mass(value, places)
           : unit == QLatin1String("%") ? figures.percent(value, places)
                                        : figures.inUnit(value, unit);
  };
  made.span = [figures](double low, double high) {
    return windowText(low, high, figures) + QLatin1Char(' ') +
           QString::fromUtf8(unitOf<Length>(figures.system()));
  };
  made.rule = &ruleWords;
  return made;
}

std::optional<options::Verdict> verdictFor(const options::CompareRow& row, bool first,
                                           const options::Option& option) {
  if (row.rule.isEmpty()) {
    return first ? std::optional(option.verdict) : std::nullopt;
  }
  const auto found = std::ranges::find(option.findings, row.rule, &options::Finding::rule);
  return found == option.findings.end() || !found->applies ? std::nullopt : std::optional(found->verdict);
}

} // namespace

void CompareModel::setCompared(const std::vector<OptionLine>& compared, const Figures& figures) {
  names_.clear();
  std::vector<const options::Option*> pointers;
  for (const OptionLine& each : compared) {
    names_ << Words::tr("No. %1 · %2%3")
                  .arg(each.rank)
                  .arg(each.stack, each.chosen ? Words::tr(" (chosen)") : QString());
    pointers.push_back(&each.option);
  }
  std::vector<CompareLine> lines;
  const options::CompareWords inWords = wordsIn(figures);
  std::optional<bool> part;
  if (compared.size() > 1) {
    for (const options::CompareRow& row : options::sideBySide(pointers, inWords)) {
      if (part != row.differs) {
        part = row.differs;
        lines.push_back({row.differs ? Words::tr("In what they differ") : Words::tr("In what they are alike"),
                         {},
                         {},
                         true});
      }
      CompareLine line{row.what, row.cells, {}, false};
      for (const options::Option* each : pointers) {
        line.verdicts.push_back(verdictFor(row, row.what == QLatin1String("verdict"), *each));
      }
      lines.push_back(std::move(line));
    }
  }
  setRows(std::move(lines));
  Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

Heading CompareModel::headingOf(CompareColumn column) const {
  if (column == CompareColumn::what) {
    return {.title = Words::tr("What"), .characters = 24};
  }
  const auto place = static_cast<qsizetype>(column) - 1;
  const QString name = names_.value(place);
  return {.title = name, .characters = 26, .toolTip = name};
}

Cell CompareModel::cellOf(const CompareLine& line, CompareColumn column) const {
  if (column == CompareColumn::what) {
    return {.text = line.what, .strong = line.heading};
  }
  const auto place = static_cast<std::size_t>(column) - 1;
  const QString text = line.cells.value(static_cast<qsizetype>(place));
  return {.text = text,
          .verdict = place < line.verdicts.size() ? line.verdicts[place] : std::nullopt,
          .toolTip = text};
}

SideBySidePanel::SideBySidePanel(QWidget* parent)
    : QWidget(parent), table_(new QTableView(this)), head_(new QLabel(this)), toggle_(new QPushButton(this)),
      clear_(new QPushButton(tr("Take all away"), this)) {
  setObjectName(QStringLiteral("sideBySide"));
  table_->setObjectName(QStringLiteral("sideBySideTable"));
  table_->setAccessibleName(tr("Options side by side"));
  table_->setModel(&model_);
  prepareTable(*table_, model_, -1);
  table_->verticalHeader()->setDefaultSectionSize(QFontMetrics(font()).height() + 2);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Interactive);
  table_->horizontalHeader()->setSectionsMovable(false);
  head_->setObjectName(QStringLiteral("sideBySideHead"));
  head_->setWordWrap(true);
  toggle_->setObjectName(QStringLiteral("sideBySideToggle"));
  toggle_->setToolTip(tr("Ctrl+B, also from the list"));
  clear_->setObjectName(QStringLiteral("sideBySideClear"));
  auto* line = new QHBoxLayout;
  line->setSpacing(space::step);
  line->addWidget(head_, 1);
  line->addWidget(toggle_);
  line->addWidget(clear_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addLayout(line);
  all->addWidget(table_, 1);
  connect(toggle_, &QPushButton::clicked, this, &SideBySidePanel::toggle);
  connect(clear_, &QPushButton::clicked, this, &SideBySidePanel::clear);
  tell();
}

bool SideBySidePanel::holds(const QString& id) const {
  return std::ranges::any_of(compared_, [&](const OptionLine& each) { return each.option.id == id; });
}

void SideBySidePanel::setLooked(const std::optional<OptionLine>& looked) {
  looked_ = looked;
  // As it was judged last: its row follows while its setting is changed.
  bool stands = false;
  for (OptionLine& each : compared_) {
    if (looked && each.option.id == looked->option.id) {
      each = *looked;
      stands = true;
    }
  }
  if (stands) {
    model_.setCompared(compared_, figures_);
  }
  tell();
}

void SideBySidePanel::toggle() {
  if (!looked_) {
    return;
  }
  if (holds(looked_->option.id)) {
    std::erase_if(compared_, [&](const OptionLine& each) { return each.option.id == looked_->option.id; });
  } else if (compared_.size() < most) {
    compared_.push_back(*looked_);
  }
  model_.setCompared(compared_, figures_);
  tell();
}

void SideBySidePanel::clear() {
  compared_.clear();
  model_.setCompared(compared_, figures_);
  tell();
}

void SideBySidePanel::follow(const std::vector<OptionLine>& lines) {
  std::vector<OptionLine> still;
  for (const OptionLine& before : compared_) {
    for (const OptionLine& each : lines) {
      if (each.option.id == before.option.id) {
        still.push_back(each);
      }
    }
  }
  compared_ = std::move(still);
  model_.setCompared(compared_, figures_);
  tell();
}

void SideBySidePanel::setFigures(const Figures& figures) {
  figures_ = figures;
  model_.setCompared(compared_, figures_);
}

void SideBySidePanel::tell() {
  for (int column = 1; column < static_cast<int>(CompareColumn::count); ++column) {
    table_->setColumnHidden(column, column > static_cast<int>(compared_.size()));
  }
  const bool in = looked_ && holds(looked_->option.id);
  toggle_->setText(in ? tr("Take the selected one &away") : tr("Put the selected one &beside"));
  toggle_->setEnabled(looked_ && (in || compared_.size() < most));
  clear_->setEnabled(!compared_.empty());
  if (compared_.empty()) {
    head_->setText(
        tr("Put two to four options beside one another: select each in the list and press Ctrl+B."));
  } else if (compared_.size() == 1) {
    head_->setText(
        tr("No. %1 stands alone. Select another one and press Ctrl+B.").arg(compared_.front().rank));
  } else {
    head_->setText(tr("%1 options; what they differ in comes first. A verdict stands at each rule.")
                       .arg(compared_.size()));
  }
}

} // namespace hangbook::desk
