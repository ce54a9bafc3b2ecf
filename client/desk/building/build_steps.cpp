// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/build_steps.h"

#include <algorithm>

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

QString cell(const QString& text, bool figure = false) {
  return QStringLiteral("<td valign='top' %1 style='padding: 4px 8px'>%2</td>")
      .arg(figure ? QStringLiteral("align='right' style='white-space: nowrap'") : QString(), text);
}

QString moveText(const Figures& figures, const std::optional<double>& metres) {
  return !metres ? QString() : (*metres > 0 ? QStringLiteral("+") : QString()) + figures.length(metres);
}

} // namespace

BuildSteps::BuildSteps(QWidget* parent)
    : QWidget(parent), way_(new QComboBox(this)), text_(new QTextBrowser(this)), gate_(new QLabel(this)),
      by_(new QComboBox(this)), reason_(new QLineEdit(this)), sign_(new QPushButton(tr("Sign"), this)),
      skip_(new QPushButton(tr("Skip, with this reason"), this)) {
  setObjectName(QStringLiteral("buildSteps"));
  way_->setObjectName(QStringLiteral("stepsWay"));
  way_->addItem(tr("Up: the build"));
  way_->addItem(tr("Down: the load-out"));
  way_->setAccessibleName(tr("Build or load-out"));
  text_->setObjectName(QStringLiteral("stepsText"));
  text_->setAccessibleName(tr("Steps in order"));
  text_->setFont(fontFor(TextSize::reading, font()));
  gate_->setObjectName(QStringLiteral("stepsGate"));
  gate_->setFont(fontFor(TextSize::heading, font()));
  by_->setObjectName(QStringLiteral("stepsBy"));
  by_->setEditable(true);
  by_->setAccessibleName(tr("Who signs"));
  by_->lineEdit()->setAccessibleName(tr("Who signs"));
  by_->lineEdit()->setPlaceholderText(tr("Name"));
  reason_->setObjectName(QStringLiteral("stepsReason"));
  reason_->setAccessibleName(tr("Reason to skip the hold point"));
  reason_->setPlaceholderText(tr("Reason, to skip it"));
  sign_->setObjectName(QStringLiteral("stepsSign"));
  skip_->setObjectName(QStringLiteral("stepsSkip"));
  auto* sign = new QHBoxLayout;
  sign->addWidget(by_, 2);
  sign->addWidget(sign_);
  sign->addWidget(reason_, 3);
  sign->addWidget(skip_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::step, 0, 0);
  all->setSpacing(space::step);
  all->addWidget(way_);
  all->addWidget(text_, 1);
  all->addWidget(gate_);
  all->addLayout(sign);
  connect(way_, &QComboBox::currentIndexChanged, this, [this] { fill(); });
  connect(by_, &QComboBox::editTextChanged, this, [this] { check(); });
  connect(reason_, &QLineEdit::textChanged, this, [this] { check(); });
  connect(sign_, &QPushButton::clicked, this,
          [this] { Q_EMIT signAsked(next(), by_->currentText().simplified(), {}); });
  connect(skip_, &QPushButton::clicked, this, [this] {
    Q_EMIT signAsked(next(), by_->currentText().simplified(), reason_->text().simplified());
    reason_->clear();
  });
  check();
}

void BuildSteps::setPeople(const std::vector<people::Person>& people) {
  const QString typed = by_->currentText();
  by_->clear();
  for (const people::Person& each : people) {
    by_->addItem(each.name);
  }
  by_->setEditText(typed);
}

void BuildSteps::setPlan(const build::Plan& plan, const QString& hang, const Gates& gates,
                         const Figures& figures) {
  plan_ = plan;
  hang_ = hang;
  gates_ = gates;
  figures_ = figures;
  fill();
  check();
}

void BuildSteps::setWords(const QString& words) {
  plan_ = {};
  gates_.clear();
  text_->setPlainText(words);
  check();
}

QString BuildSteps::next() const {
  const auto open =
      std::ranges::find_if(gates_, [](const marks::GateSigned& gate) { return gate.id.isNull(); });
  return open == gates_.end() ? QString() : open->gate;
}

void BuildSteps::check() {
  const QString gate = next();
  const bool named = !by_->currentText().trimmed().isEmpty();
  gate_->setText(gates_.empty()   ? QString()
                 : gate.isEmpty() ? tr("No hold point stands open.")
                                  : tr("Next hold point: %1").arg(gate));
  sign_->setEnabled(!gate.isEmpty() && named);
  skip_->setEnabled(!gate.isEmpty() && named && !reason_->text().trimmed().isEmpty());
}

void BuildSteps::fill() {
  QString html;
  for (const QString& why : plan_.impossible) {
    html += QStringLiteral("<p><b>%1</b> %2</p>").arg(tr("NOT POSSIBLE:"), why.toHtmlEscaped());
  }
  for (const QString& what : plan_.missing) {
    html += QStringLiteral("<p><b>%1</b> %2</p>").arg(tr("UNPROVEN, not known:"), what.toHtmlEscaped());
  }
  html += QStringLiteral("<p>%1</p><table width='100%'>")
              .arg(tr("Left and right as seen from the stage, looking at the audience. Heights above the "
                      "floor under the "
                      "hang, after the step."));
  html += QStringLiteral("<tr>") + cell(QStringLiteral("<b>%1</b>").arg(tr("No.")), true) +
          cell(QStringLiteral("<b>%1</b>").arg(tr("Step"))) +
          cell(QStringLiteral("<b>%1</b>").arg(tr("Hooks by")), true) +
          cell(QStringLiteral("<b>%1</b>").arg(tr("Hooks at")), true) +
          cell(QStringLiteral("<b>%1</b>").arg(tr("Lowest at")), true) + QStringLiteral("</tr>");
  for (const build::Step& step : way_->currentIndex() == 0 ? plan_.steps : plan_.loadOut) {
    if (step.hang != hang_) {
      continue;
    }
    QString what = step.what.toHtmlEscaped();
    if (step.kind == build::StepKind::raise || step.kind == build::StepKind::setDown) {
      what = QStringLiteral("<b>%1</b>").arg(what);
    }
    if (step.people > 1) {
      what += tr(" (%1 people)").arg(step.people);
    }
    if (step.nobodyBeneath) {
      what += QStringLiteral(" <b>%1</b>").arg(tr("Nobody beneath."));
    }
    if (!step.gate.isEmpty()) {
      const auto found = std::ranges::find(gates_, step.gate, &marks::GateSigned::gate);
      const bool open = found == gates_.end() || found->id.isNull();
      const QString stands =
          open ? tr("open")
          : found->skipped
              ? tr("skipped by %1, %2: %3")
                    .arg(found->by,
                         found->recordedAt.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")),
                         found->reason)
              : tr("signed by %1, %2")
                    .arg(found->by,
                         found->recordedAt.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")));
      what += QStringLiteral("<br><b>%1</b> %2")
                  .arg(tr("Hold point: %1.").arg(step.gate), stands.toHtmlEscaped());
    }
    for (const QString& missing : step.missing) {
      what += QStringLiteral("<br><b>%1</b> %2").arg(tr("Unproven, not known:"), missing.toHtmlEscaped());
    }
    html += QStringLiteral("<tr>") + cell(QString::number(step.number), true) + cell(what) +
            cell(moveText(figures_, step.move), true) +
            cell(step.hooks ? figures_.length(step.hooks) : QString(), true) +
            cell(step.lowest ? figures_.length(step.lowest) : QString(), true) + QStringLiteral("</tr>");
  }
  html += QStringLiteral("</table>");
  for (const QString& caution : plan_.cautions) {
    html += QStringLiteral("<p>– %1</p>").arg(caution.toHtmlEscaped());
  }
  const int at = text_->verticalScrollBar()->value();
  text_->setHtml(html);
  text_->verticalScrollBar()->setValue(at);
}

} // namespace hangbook::desk
