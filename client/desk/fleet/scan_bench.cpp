// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/scan_bench.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "actions/scan.h"
#include "desk/fleet/scan_keys.h"
#include "desk/fleet/scan_task_form.h"
#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_sign.h"

namespace hangbook::desk {
namespace {

using options::Verdict;
using Word = actions::ScanAnswer::Word;

QString inWords(Word word) {
  switch (word) {
  case Word::done:
    return ScanBench::tr("booked");
  case Word::again:
    return ScanBench::tr("there already");
  case Word::unknown:
    return ScanBench::tr("unknown code");
  case Word::wrongPlace:
    return ScanBench::tr("wrong place");
  case Word::refused:
    return ScanBench::tr("refused");
  case Word::undone:
    return ScanBench::tr("taken back");
  }
  return {};
}

Verdict signOf(Word word) {
  switch (word) {
  case Word::done:
    return Verdict::holds;
  case Word::again:
    return Verdict::tight;
  case Word::undone:
    return Verdict::unproven;
  default:
    return Verdict::fails;
  }
}

} // namespace

ScanBench::ScanBench(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), task_(new ScanTaskForm(this)), field_(new QLineEdit(this)),
      sign_(new VerdictSign(this)), word_(new QLabel(this)), text_(new QLabel(this)),
      count_(new QLabel(this)), back_(new QPushButton(tr("Take last &one back"), this)),
      sound_([] { QApplication::beep(); }) {
  setObjectName(QStringLiteral("scanBench"));
  field_->setObjectName(QStringLiteral("scanField"));
  field_->setAccessibleName(tr("Code to be booked"));
  field_->setPlaceholderText(tr("Scan or type a serial"));
  field_->setFont(fontFor(TextSize::reading, font()));
  sign_->setFont(fontFor(TextSize::title, font()));
  word_->setObjectName(QStringLiteral("scanWord"));
  word_->setFont(fontFor(TextSize::title, font()));
  word_->setAccessibleName(tr("Answer to the last scan"));
  text_->setObjectName(QStringLiteral("scanText"));
  text_->setAccessibleName(tr("The answer in words"));
  text_->setWordWrap(true);
  text_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  text_->setFont(fontFor(TextSize::body, font()));
  text_->setMinimumHeight(3 * fontMetrics().lineSpacing());
  count_->setObjectName(QStringLiteral("scanCount"));
  count_->setForegroundRole(QPalette::PlaceholderText);
  back_->setObjectName(QStringLiteral("scanBack"));
  back_->setEnabled(false);
  back_->setToolTip(tr("Each thing of the last booked scan is where it was before."));

  auto* table = new QTableView(this);
  table->setObjectName(QStringLiteral("scanLog"));
  table->setAccessibleName(tr("Scans so far, the newest first"));
  table->setModel(&log_);
  prepareTable(*table, log_, static_cast<int>(ScanColumn::text));

  auto* head = new QLabel(tr("Scanning"), this);
  head->setFont(fontFor(TextSize::heading, font()));
  auto* says = new QHBoxLayout;
  says->setSpacing(space::step);
  says->addWidget(sign_);
  says->addWidget(word_, 1);
  auto* foot = new QHBoxLayout;
  foot->addWidget(count_, 1);
  foot->addWidget(back_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::step);
  all->addWidget(head);
  all->addWidget(task_);
  all->addWidget(field_);
  all->addLayout(says);
  all->addWidget(text_);
  all->addWidget(table, 1);
  all->addLayout(foot);

  connect(field_, &QLineEdit::returnPressed, this, [this] {
    const QString code = field_->text();
    field_->clear();
    scan(code);
  });
  connect(back_, &QPushButton::clicked, this, [this] {
    takeLastBack();
    field_->setFocus();
  });
  connect(new ScanKeys(*field_), &ScanKeys::caught, this, &ScanBench::scan);
  text_->setText(
      tr("Nothing was scanned yet. Whatever a scanner types while this place is open comes here."));
  showFacts();
}

void ScanBench::showFacts() {
  task_->setFacts(session_.overview());
  count_->setText(tr("%1 booked · %2 not").arg(done_).arg(refused_));
}

void ScanBench::scan(const QString& typed) {
  const QString code = typed.trimmed();
  if (code.isEmpty()) {
    return;
  }
  QString lacking;
  const std::optional<actions::ScanTask> task = task_->task(lacking);
  if (!task) {
    refuse(code, lacking);
    return;
  }
  const int number = log_.add(code);
  begin();
  session_.work().start(
      this,
      [source = session_.source(), task = *task, code, by = task_->by()](Watch&) {
        return source->scan(task, code, by);
      },
      [this, number](const actions::ScanAnswer& said) { answered(number, said); },
      [this, number](const std::exception_ptr& what) {
        answer(number, tr("not booked"), wordsFor(what, tr("Nothing was booked. Scan it once more.")),
               Verdict::fails);
        ++refused_;
        end();
      });
}

void ScanBench::takeLastBack() {
  if (undoable_.empty()) {
    return;
  }
  const QUuid last = undoable_.back();
  undoable_.pop_back();
  const int number = log_.add(tr("last one"));
  begin();
  session_.work().start(
      this,
      [source = session_.source(), last, by = task_->by()](Watch&) { return source->takeBack(last, by); },
      [this, number](const actions::ScanAnswer& said) { answered(number, said); },
      [this, number, last](const std::exception_ptr& what) {
        undoable_.push_back(last);
        answer(number, tr("not taken back"), wordsFor(what, tr("What was booked still stands. Try again.")),
               Verdict::fails);
        end();
      });
}

void ScanBench::answered(int number, const actions::ScanAnswer& said) {
  answer(number, inWords(said.word), said.text, signOf(said.word));
  if (said.word == Word::done) {
    undoable_.push_back(said.scan);
    ++done_;
  } else if (said.word == Word::undone) {
    --done_;
  } else {
    ++refused_;
  }
  changed_ = changed_ || said.word == Word::done || said.word == Word::undone;
  end();
}

void ScanBench::answer(int number, const QString& word, const QString& text, Verdict sign) {
  log_.answer(number, word, text, sign);
  sign_->setVerdict(sign);
  word_->setText(word);
  text_->setText(text);
  if (sign == Verdict::fails || sign == Verdict::tight) {
    sound_();
  }
}

void ScanBench::refuse(const QString& code, const QString& why) {
  answer(log_.add(code), tr("not booked"), tr("%1; then scan %2 once more.").arg(why, code), Verdict::fails);
  ++refused_;
  count_->setText(tr("%1 booked · %2 not").arg(done_).arg(refused_));
}

void ScanBench::begin() {
  ++waiting_;
  back_->setEnabled(false);
}

void ScanBench::end() {
  --waiting_;
  count_->setText(tr("%1 booked · %2 not").arg(done_).arg(refused_));
  back_->setEnabled(waiting_ == 0 && !undoable_.empty());
  if (waiting_ == 0 && std::exchange(changed_, false)) {
    Q_EMIT booked();
  }
}

} // namespace hangbook::desk
