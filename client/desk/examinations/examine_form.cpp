// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/examine_form.h"

#include <QComboBox>
#include <QDateEdit>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/name_box.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

using fleet::ExaminationResult;

QLineEdit* field(const char* name, const QString& says, const QString& hint, QWidget* parent) {
  auto* edit = new QLineEdit(parent);
  edit->setObjectName(QLatin1String(name));
  edit->setAccessibleName(says);
  edit->setPlaceholderText(hint);
  return edit;
}

} // namespace

ExamineForm::ExamineForm(QWidget* parent)
    : QWidget(parent), subject_(new QLabel(this)), date_(new QDateEdit(this)), result_(new QComboBox(this)),
      examiner_(field("examineExaminer", tr("Who examined it"), tr("Whoever records it"), this)),
      certificate_(field("examineCertificate", tr("Number of the certificate"), tr("May be left out"), this)),
      file_(field("examineFile", tr("File of the certificate"), tr("May be left out"), this)),
      browse_(new QPushButton(tr("…"), this)), remark_(field("examineRemark", tr("Remark"), {}, this)),
      by_(nameBox(QStringLiteral("examineBy"), tr("Who records it"), {}, {}, this)),
      follows_(new QLabel(this)), record_(new QPushButton(tr("&Record it"), this)), told_(new QLabel(this)) {
  setObjectName(QStringLiteral("examineForm"));
  subject_->setObjectName(QStringLiteral("examineSubject"));
  subject_->setWordWrap(true);
  date_->setObjectName(QStringLiteral("examineDate"));
  date_->setAccessibleName(tr("Day of the examination"));
  date_->setCalendarPopup(true);
  date_->setDisplayFormat(QStringLiteral("yyyy-MM-dd")); // as the lists write it
  result_->setObjectName(QStringLiteral("examineResult"));
  result_->setAccessibleName(tr("Result"));
  result_->addItem(tr("choose…"), -1);
  for (const ExaminationResult each :
       {ExaminationResult::pass, ExaminationResult::passWithRemark, ExaminationResult::fail}) {
    result_->addItem(wordOf(each), static_cast<int>(each));
  }
  browse_->setObjectName(QStringLiteral("examineBrowse"));
  browse_->setAccessibleName(tr("Look for the certificate's file"));
  browse_->setFixedWidth(browse_->fontMetrics().height() * 2);
  follows_->setObjectName(QStringLiteral("examineFollows"));
  follows_->setWordWrap(true);
  record_->setObjectName(QStringLiteral("examineRecord"));
  told_->setObjectName(QStringLiteral("examineTold"));
  told_->setAccessibleName(tr("What follows from the last record"));
  told_->setWordWrap(true);

  auto* head = new QLabel(tr("Record an examination"), this);
  head->setFont(fontFor(TextSize::heading, font()));
  auto* fileLine = new QHBoxLayout;
  fileLine->setSpacing(space::small);
  fileLine->addWidget(file_, 1);
  fileLine->addWidget(browse_);
  auto* form = new QFormLayout;
  form->setVerticalSpacing(space::small);
  form->addRow(tr("Da&y"), date_);
  form->addRow(tr("Re&sult"), result_);
  form->addRow(tr("E&xaminer"), examiner_);
  form->addRow(tr("&Certificate"), certificate_);
  auto* fileSays = new QLabel(tr("&File"), this);
  fileSays->setBuddy(file_);
  form->addRow(fileSays, fileLine);
  form->addRow(tr("Re&mark"), remark_);
  form->addRow(tr("&By"), by_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::step);
  all->addWidget(head);
  all->addWidget(subject_);
  all->addLayout(form);
  all->addWidget(follows_);
  all->addWidget(record_, 0, Qt::AlignRight);
  all->addWidget(told_);
  all->addStretch(1);

  connect(browse_, &QPushButton::clicked, this, &ExamineForm::fileAsked);
  connect(record_, &QPushButton::clicked, this, &ExamineForm::recordAsked);
  connect(result_, &QComboBox::currentIndexChanged, this, &ExamineForm::check);
  connect(remark_, &QLineEdit::textChanged, this, &ExamineForm::check);
  connect(by_, &QComboBox::editTextChanged, this, &ExamineForm::check);
  setSubject({});
}

void ExamineForm::setPeople(const std::vector<people::Person>& people, const QString& atDesk, QDate today) {
  const QString typed = by_->currentText();
  by_->clear();
  for (const people::Person& each : people) {
    by_->addItem(each.name);
  }
  by_->setCurrentIndex(-1);
  by_->setEditText(typed.isEmpty() ? atDesk : typed);
  if (date_->maximumDate() != today) {
    date_->setMaximumDate(today);
    date_->setDate(today);
  }
}

void ExamineForm::setSubject(const std::optional<fleet::Due>& due) {
  const bool another = !due_ || !due || due_->serial != due->serial || due_->rule != due->rule;
  due_ = due;
  if (another) {
    result_->setCurrentIndex(0); // never the result of the one before
    told_->clear();
  }
  subject_->setText(due ? tr("%1, %2: %3, at %4").arg(due->serial, due->type, due->rule, due->place)
                        : tr("Select a line to record its examination."));
  for (QWidget* each : std::initializer_list<QWidget*>{date_, result_, examiner_, certificate_, file_,
                                                       browse_, remark_, by_}) {
    each->setEnabled(due.has_value());
  }
  check();
}

ExaminationResult ExamineForm::result() const {
  return static_cast<ExaminationResult>(result_->currentData().toInt());
}

fleet::Examination ExamineForm::typed() const {
  fleet::Examination fact;
  fact.serial = due_ ? due_->serial : QString();
  fact.rule = due_ ? due_->rule : QString();
  fact.date = date_->date();
  fact.result = result();
  fact.by = by_->currentText().trimmed();
  fact.examiner = examiner_->text().trimmed().isEmpty() ? fact.by : examiner_->text().trimmed();
  fact.certificate = certificate_->text().trimmed();
  fact.remark = remark_->text().trimmed();
  return fact;
}

QStringList ExamineForm::files() const {
  const QString name = file_->text().trimmed();
  return name.isEmpty() ? QStringList() : QStringList{name};
}

void ExamineForm::setFile(const QString& name) {
  file_->setText(name);
}

void ExamineForm::clearTyped() {
  result_->setCurrentIndex(0);
  certificate_->clear();
  file_->clear();
  remark_->clear();
}

void ExamineForm::tell(const QString& words) {
  told_->setText(words);
}

void ExamineForm::check() {
  const bool chosen = result_->currentIndex() > 0;
  const bool remarkNeeded = chosen && result() != ExaminationResult::pass;
  remark_->setPlaceholderText(remarkNeeded ? tr("Needed: what was found") : tr("May be left out"));
  follows_->setText(
      chosen && result() == ExaminationResult::fail && due_
          ? tr("%1 is quarantined at once, and the shows that counted on it are named.").arg(due_->serial)
          : QString());
  follows_->setVisible(!follows_->text().isEmpty());
  record_->setEnabled(due_ && chosen && !by_->currentText().trimmed().isEmpty() &&
                      (!remarkNeeded || !remark_->text().trimmed().isEmpty()));
}

} // namespace hangbook::desk
