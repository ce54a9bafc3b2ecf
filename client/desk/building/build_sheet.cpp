// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/build_sheet.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_label.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"

namespace hangbook::desk {
namespace {

QString neighbourText(const std::vector<options::MarkAngle>& marks, const Figures& figures) {
  QStringList lines;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    const QString angle =
        marks[i].angleDeg ? figures.angle(marks[i].angleDeg, 2) : BuildSheet::tr("out of travel");
    lines << (i == 0 ? BuildSheet::tr("At this mark the joint stands at %1").arg(angle)
                     : BuildSheet::tr("Mark %1: %2").arg(marks[i].mark).arg(angle));
  }
  return lines.join(QLatin1Char('\n'));
}

} // namespace

Heading AimModel::headingOf(AimColumn column) const {
  switch (column) {
  case AimColumn::element:
    return {.title = BuildSheet::tr("No."), .figure = true, .characters = 4};
  case AimColumn::type:
    return {.title = BuildSheet::tr("Cabinet, from the bar down"), .characters = 26};
  case AimColumn::aim:
    return {.title = BuildSheet::tr("Inclinometer"),
            .figure = true,
            .characters = 14,
            .toolTip = BuildSheet::tr("What an inclinometer on its side reads; negative looks down")};
  case AimColumn::count:
    break;
  }
  return {};
}

Cell AimModel::cellOf(const AimLine& line, AimColumn column) const {
  switch (column) {
  case AimColumn::element:
    return {.text = QString::number(line.element), .number = static_cast<double>(line.element)};
  case AimColumn::type:
    return {.text = line.type};
  case AimColumn::aim:
    return {
        .text = Figures().angle(line.aimDeg), .number = line.aimDeg, .missing = !line.aimDeg, .strong = true};
  case AimColumn::count:
    break;
  }
  return {};
}

BuildSheet::BuildSheet(QWidget* parent)
    : QWidget(parent), notCleared_(new QLabel(tr("NOT CLEARED TO LIFT"), this)),
      verdict_(new VerdictLabel(this)), chosen_(new QLabel(this)), mark_(new QLabel(this)),
      caption_(new QLabel(tr("Chain mark"), this)), neighbours_(new QLabel(this)), facts_(new QFormLayout),
      aimTable_(new QTableView(this)) {
  setObjectName(QStringLiteral("buildSheet"));
  notCleared_->setObjectName(QStringLiteral("buildNotCleared"));
  QFont loud = fontFor(TextSize::title, font());
  loud.setBold(true);
  notCleared_->setFont(loud);
  notCleared_->setMargin(space::step);
  notCleared_->setFrameShape(QFrame::Box);
  mark_->setObjectName(QStringLiteral("buildMark"));
  mark_->setFont(fontFor(TextSize::figure, font()));
  neighbours_->setObjectName(QStringLiteral("buildNeighbours"));
  neighbours_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  neighbours_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  neighbours_->setFont(fontFor(TextSize::reading, font()));
  chosen_->setObjectName(QStringLiteral("buildChosen"));
  chosen_->setWordWrap(true);
  chosen_->setForegroundRole(QPalette::PlaceholderText);
  caption_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  caption_->setFont(fontFor(TextSize::heading, font()));
  aimTable_->setObjectName(QStringLiteral("buildAims"));
  aimTable_->setAccessibleName(tr("Cabinets and their angles"));
  aimTable_->setFont(fontFor(TextSize::reading, font()));
  aimTable_->setModel(&aims_);
  prepareTable(*aimTable_, aims_, static_cast<int>(AimColumn::type));

  auto* status = new QHBoxLayout;
  status->addWidget(verdict_);
  status->addWidget(chosen_, 1);
  auto* beside = new QVBoxLayout;
  beside->addStretch(1);
  beside->addWidget(caption_);
  beside->addWidget(neighbours_);
  beside->addStretch(1);
  auto* markLine = new QHBoxLayout;
  markLine->setSpacing(space::broad);
  markLine->addWidget(mark_);
  markLine->addLayout(beside, 1);
  facts_->setHorizontalSpacing(space::wide);
  facts_->setVerticalSpacing(space::small);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::step);
  all->addWidget(notCleared_);
  all->addLayout(status);
  all->addLayout(markLine);
  all->addLayout(facts_);
  all->addWidget(aimTable_, 1);
}

void BuildSheet::addFact(const QString& what, const QString& text) {
  auto* value = new QLabel(text, this);
  value->setWordWrap(true);
  value->setFont(fontFor(TextSize::reading, font()));
  auto* label = new QLabel(what, this);
  label->setForegroundRole(QPalette::PlaceholderText);
  facts_->addRow(label, value);
}

void BuildSheet::setChoice(const options::Choice& choice, const options::Option& results,
                           const catalogue::Catalogue& catalogue, const Figures& figures) {
  const bool unproven = choice.verdict == options::Verdict::unproven;
  notCleared_->setVisible(unproven);
  verdict_->setVerdict(choice.verdict);
  QString chosen = tr("Chosen by %1 on %2")
                       .arg(choice.by, choice.at.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")));
  if (!choice.reason.isEmpty()) {
    chosen += tr(" – %1").arg(choice.reason);
  }
  chosen_->setText(chosen);
  const auto& mark = choice.setting.mark;
  mark_->setText(mark ? QString::number(*mark) : QString());
  mark_->setVisible(mark.has_value());
  caption_->setVisible(mark.has_value());
  mark_->setAccessibleName(mark ? tr("Chain mark %1").arg(*mark) : tr("No chain in this stack"));
  neighbours_->setText(mark ? neighbourText(results.marks, figures) : tr("No chain in this stack"));

  while (facts_->rowCount() > 0) {
    facts_->removeRow(0);
  }
  addFact(tr("Stack"), stackText(choice.key.stack, catalogue));
  addFact(tr("Bar and picks"), choice.key.bar + QStringLiteral(", ") + wordOf(choice.key.picks));
  addFact(tr("Hoists and points"),
          tr("%1 on %2").arg(choice.key.hoist, choice.key.points.join(QStringLiteral(", "))));
  addFact(tr("Tilt and pan"), figures.angle(choice.setting.tiltDeg) + QStringLiteral(", ") +
                                  figures.angle(choice.setting.panDeg));
  addFact(tr("Trim, lowest edge"), figures.length(choice.setting.trimM));
  addFact(tr("Tape to the bar's datum"), figures.length(results.datumHeightM));
  QStringList loads;
  for (const options::PickLoad& each : results.pickLoads) {
    loads << each.name + QLatin1Char(' ') + figures.force(each.loadKn);
  }
  addFact(tr("Pick loads, at rest"), loads.isEmpty() ? notKnownText() : loads.join(QStringLiteral(", ")));

  std::vector<AimLine> lines;
  for (int i = 0; i < choice.key.stack.size(); ++i) {
    AimLine line{i + 1, choice.key.stack[i], {}};
    for (const options::Aim& each : results.aims) {
      if (each.element == i + 1) {
        line.aimDeg = each.aimDeg;
      }
    }
    lines.push_back(line);
  }
  aims_.setRows(std::move(lines));
}

} // namespace hangbook::desk
