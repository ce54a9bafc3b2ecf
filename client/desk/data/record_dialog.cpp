// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/record_dialog.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include "desk/data/type_picture.h"
#include "desk/source/record_source.h"
#include "desk/style/colours.h"
#include "desk/style/scale.h"
#include "desk/words/ask_dialog.h"
#include "desk/words/name_box.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

RecordSource& recordsOf(Source& source) {
  auto* records = dynamic_cast<RecordSource*>(&source);
  if (records == nullptr) {
    throw Error(Trouble::badInput, "what is shown comes from a source whose records cannot be edited");
  }
  return *records;
}

QString faultText(const exchange::RecordFault& fault) {
  return fault.read.isEmpty() || fault.expected.contains(fault.read)
             ? fault.expected
             : RecordDialog::tr("read “%1”, expected %2").arg(fault.read.left(40), fault.expected);
}

QString titleOf(const exchange::RecordField& field) {
  QString title = field.name;
  title[0] = title[0].toUpper();
  return field.unit.isEmpty() ? title : QStringLiteral("%1 (%2)").arg(title, field.unit);
}

} // namespace

RecordDialog::RecordDialog(Session& session, const exchange::RecordName& record, QWidget* parent)
    : QDialog(parent), session_(session), record_(record),
      columns_(exchange::fieldsOf(record.kind, record.sort)), picture_(new TypePicture(this)),
      by_(nameBox(QStringLiteral("entryBy"), tr("Who saves it"), namesOf(session.overview().people),
                  session.overview().atDesk, this)),
      says_(new QLabel(this)), save_(new QPushButton(tr("&Save"), this)) {
  before_.catalogue = session.overview().catalogue;
  before_.people = session.overview().people;
  first_ = exchange::recordText(record_, before_);
  setObjectName(QStringLiteral("recordDialog"));
  setWindowTitle(tr("Edit %1").arg(record_.name));
  layOut();
  picture_->setVisible(record_.sort == QLatin1String("cabinet") || record_.sort == QLatin1String("bar"));
  connect(by_, &QComboBox::editTextChanged, this, &RecordDialog::check);
  connect(save_, &QPushButton::clicked, this, &RecordDialog::save);
  check();
}

QWidget* RecordDialog::fields() {
  auto* page = new QWidget(this);
  auto* grid = new QGridLayout(page);
  grid->setHorizontalSpacing(space::step);
  grid->setVerticalSpacing(space::small);
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const QString title = titleOf(columns_[i]);
    auto* label = new QLabel(title, page);
    auto* field = new QLineEdit(first_.value(static_cast<qsizetype>(i)), page);
    field->setObjectName(QStringLiteral("record_") +
                         QString(columns_[i].name).replace(QLatin1Char(' '), QLatin1Char('_')));
    field->setAccessibleName(title);
    field->setPlaceholderText(tr("not known"));
    field->setReadOnly(columns_[i].own); // another name would be another record
    field->setEnabled(!columns_[i].own);
    field->setCursorPosition(0);
    label->setBuddy(field);
    auto* wrong = new QLabel(page);
    wrong->setObjectName(field->objectName() + QStringLiteral("_wrong"));
    wrong->setWordWrap(true);
    QPalette colours = wrong->palette();
    colours.setColor(QPalette::WindowText, coloursOf(palette()).fails);
    wrong->setPalette(colours);
    wrong->hide(); // takes a row of its own only where something is wrong
    const int row = 2 * static_cast<int>(i);
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
    grid->addWidget(wrong, row + 1, 1);
    connect(field, &QLineEdit::textChanged, this, &RecordDialog::check);
    fields_.push_back(field);
    wrong_.push_back(wrong);
  }
  grid->setColumnStretch(1, 1);
  grid->setRowStretch(2 * static_cast<int>(columns_.size()), 1);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus); // it follows the field that has the keyboard
  scroll->setWidget(page);
  return scroll;
}

void RecordDialog::layOut() {
  says_->setObjectName(QStringLiteral("entrySays"));
  says_->setAccessibleName(tr("What is wrong, or what it changes"));
  says_->setWordWrap(true);
  says_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  save_->setObjectName(QStringLiteral("entrySave"));
  save_->setAutoDefault(false); // Enter in a field must not save
  auto* cancel = new QPushButton(tr("&Cancel"), this);
  cancel->setObjectName(QStringLiteral("entryCancel"));
  cancel->setAutoDefault(false);
  connect(cancel, &QPushButton::clicked, this, &RecordDialog::reject);
  auto* halves = new QSplitter(Qt::Horizontal, this);
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::wide);
  halves->addWidget(fields());
  halves->addWidget(picture_);
  halves->setStretchFactor(0, 3);
  halves->setStretchFactor(1, 2);
  auto* note =
      new QLabel(tr("A figure may be typed with its unit: 92 kg, 203 lb, 310 mm. A place is “x z”, x "
                    "forward and z up, in metres; an outline is its corners, "
                    "“x z; x z; …”. Empty means not known, and leaves the rules that need it unproven."),
                 this);
  note->setWordWrap(true);
  note->setFont(fontFor(TextSize::note, font()));
  auto* line = new QHBoxLayout;
  line->setSpacing(space::step);
  auto* who = new QLabel(tr("Sa&ved by"), this);
  who->setBuddy(by_);
  line->addWidget(who);
  line->addWidget(by_);
  line->addStretch(1);
  line->addWidget(save_);
  line->addWidget(cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(halves, 1);
  all->addWidget(note);
  all->addWidget(says_);
  all->addLayout(line);
  resize(1100, 700);
}

QStringList RecordDialog::typed() const {
  QStringList texts;
  for (const QLineEdit* field : fields_) {
    texts << field->text().trimmed();
  }
  return texts;
}

void RecordDialog::check() {
  if (fields_.size() != columns_.size()) {
    return; // still being put together
  }
  warned_ = false;
  const QStringList texts = typed();
  read_ = exchange::readRecord(record_.kind, record_.sort, texts, before_);
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    QStringList here;
    for (const exchange::RecordFault& fault : read_.faults) {
      if (fault.field == columns_[i].name) {
        here << faultText(fault);
      }
    }
    wrong_[i]->setText(here.join(QLatin1Char('\n')));
    wrong_[i]->setVisible(!here.isEmpty());
    fields_[i]->setAccessibleDescription(wrong_[i]->text());
  }
  const bool other = texts != first_;
  const bool named = !by_->currentText().trimmed().isEmpty();
  save_->setEnabled(read_.faults.empty() && other && named && !sending_);
  if (!read_.faults.empty()) {
    const exchange::RecordFault& first = read_.faults.front();
    says_->setText(tr("Cannot be saved yet. %1: %2. Fields to mend: %3.")
                       .arg(first.field.isEmpty() ? record_.name : first.field, faultText(first))
                       .arg(read_.faults.size()));
  } else {
    says_->setText(!other   ? tr("Nothing is changed yet.")
                   : !named ? tr("To save it, say who does.")
                            : tr("Not saved yet."));
    draw();
  }
}

/// What cannot be read leaves the picture as it was.
void RecordDialog::draw() {
  const catalogue::Catalogue& now = read_.after.catalogue;
  if (const auto* cabinet = catalogue::find(now.cabinets, record_.name);
      cabinet != nullptr && record_.sort == QLatin1String("cabinet")) {
    picture_->setDrawing(drawingOf(*cabinet));
  }
  if (const auto* bar = catalogue::find(now.bars, record_.name);
      bar != nullptr && record_.sort == QLatin1String("bar")) {
    picture_->setDrawing(drawingOf(*bar));
  }
}

void RecordDialog::save() {
  if (sending_ || !read_.faults.empty()) {
    return;
  }
  QStringList changed;
  for (const exchange::Difference& each : read_.differences) {
    changed << tr("%1: %2 → %3")
                   .arg(each.heading, each.was.isEmpty() ? tr("not known") : each.was,
                        each.becomes.isEmpty() ? tr("not known") : each.becomes);
  }
  effect_ = changed.join(QStringLiteral("; "));
  sending_ = true;
  save_->setEnabled(false);
  session_.work().start(
      this,
      [source = session_.source(), record = record_, texts = typed(),
       by = by_->currentText().simplified()](Watch&) {
        recordsOf(*source).saveRecord(record, texts, by);
        return true;
      },
      [this](bool) {
        sending_ = false;
        accept();
      },
      [this](const std::exception_ptr& what) {
        sending_ = false;
        check();
        says_->setText(wordsFor(what, tr("Nothing was saved; what you typed still stands here.")));
      });
}

void RecordDialog::reject() {
  if (!warned_ && typed() != first_) {
    warned_ = true;
    says_->setText(tr("What you changed is not saved. Cancel once more leaves it behind."));
    return;
  }
  QDialog::reject();
}

} // namespace hangbook::desk
