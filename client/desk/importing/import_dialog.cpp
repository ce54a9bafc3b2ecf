// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/importing/import_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/importing/columns_table.h"
#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/words/ask_dialog.h"
#include "desk/words/name_box.h"

namespace hangbook::desk {
namespace {

QString countsInWords(const ImportLook& look) {
  QStringList words;
  for (const exchange::Count& each : look.counts) {
    words << ImportDialog::tr("%1: %2 new, %3 changed, %4 the same already")
                 .arg(each.sort)
                 .arg(each.added)
                 .arg(each.changed)
                 .arg(each.same);
  }
  return words.join(QStringLiteral(" · "));
}

} // namespace

ImportDialog::ImportDialog(Session& session, QWidget* parent)
    : QDialog(parent), session_(session), file_(new QLineEdit(this)),
      browse_(new QPushButton(tr("&Browse…"), this)), kind_(new QComboBox(this)),
      headingLine_(new QSpinBox(this)), dates_(new QLineEdit(this)), everywhere_(new QLineEdit(this)),
      by_(nameBox(QStringLiteral("importBy"), tr("Who takes it in"), namesOf(session.overview().people),
                  session.overview().atDesk, this)),
      columns_(new ColumnsTable(this)), state_(new QLabel(this)), fileAsker_([this] {
        return QFileDialog::getOpenFileName(this, tr("Spreadsheet"), {},
                                            tr("Spreadsheets as text (*.csv *.tsv *.txt);;All files (*)"));
      }) {
  setObjectName(QStringLiteral("importDialog"));
  setWindowTitle(tr("Take a spreadsheet in"));
  state_->setObjectName(QStringLiteral("importState"));
  state_->setAccessibleName(tr("What the look at the file says"));
  state_->setWordWrap(true);
  auto* list = new QTableView(this);
  list->setObjectName(QStringLiteral("importLines"));
  list->setAccessibleName(tr("What would change, and what cannot be read"));
  list->setModel(&lines_);
  prepareTable(*list, lines_, static_cast<int>(ImportColumn::then));
  auto* both = new QSplitter(Qt::Vertical, this);
  both->setChildrenCollapsible(false);
  both->addWidget(columns_);
  both->addWidget(list);
  both->setStretchFactor(0, 1);
  both->setStretchFactor(1, 1);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(tr("&Take it in"), QDialogButtonBox::AcceptRole);
  accept_->setObjectName(QStringLiteral("importAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(fields());
  all->addWidget(both, 1);
  all->addWidget(state_);
  all->addWidget(buttons);
  resize(QFontMetrics(font()).averageCharWidth() * 180, QFontMetrics(font()).height() * 42);

  connect(buttons, &QDialogButtonBox::accepted, this, &ImportDialog::takeIn);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(browse_, &QPushButton::clicked, this, [this] {
    if (const QString name = fileAsker_(); !name.isEmpty()) {
      setFile(name);
    }
  });
  connect(file_, &QLineEdit::editingFinished, this, [this] {
    if (file_->isModified()) {
      file_->setModified(false);
      look(true);
    }
  });
  connect(kind_, &QComboBox::currentIndexChanged, this, [this] { look(true); });
  connect(headingLine_, &QSpinBox::valueChanged, this, [this] { look(false); });
  for (QLineEdit* each : {dates_, everywhere_}) {
    connect(each, &QLineEdit::editingFinished, this, [this, each] {
      if (each->isModified()) {
        each->setModified(false);
        look(false);
      }
    });
  }
  connect(columns_, &ColumnsTable::changed, this, [this] { look(false); });
  connect(by_, &QComboBox::editTextChanged, this, &ImportDialog::check);
  setState(tr("Name a file to see what it holds. Nothing is written before you take it in."), false);
}

QWidget* ImportDialog::fields() {
  auto* part = new QWidget(this);
  file_->setObjectName(QStringLiteral("importFile"));
  file_->setAccessibleName(tr("File"));
  browse_->setObjectName(QStringLiteral("importBrowse"));
  kind_->setObjectName(QStringLiteral("importKind"));
  kind_->setAccessibleName(tr("What the file holds"));
  for (const exchange::Kind each : exchange::allKinds()) {
    kind_->addItem(exchange::wordFor(each), static_cast<int>(each));
  }
  kind_->setCurrentText(exchange::wordFor(exchange::Kind::units));
  headingLine_->setObjectName(QStringLiteral("importHeadingLine"));
  headingLine_->setAccessibleName(tr("Line of the headings"));
  headingLine_->setRange(0, 1000);
  headingLine_->setSpecialValueText(tr("the first"));
  dates_->setObjectName(QStringLiteral("importDates"));
  dates_->setAccessibleName(tr("How dates are written"));
  dates_->setPlaceholderText(tr("2027-04-02; others such as dd.MM.yyyy; MM/dd/yyyy"));
  everywhere_->setObjectName(QStringLiteral("importEverywhere"));
  everywhere_->setAccessibleName(tr("The same on every line"));
  everywhere_->setPlaceholderText(tr("such as kind=hoist; owner=North Yard"));
  auto* fileLine = new QHBoxLayout;
  fileLine->setSpacing(space::small);
  fileLine->addWidget(file_, 1);
  fileLine->addWidget(browse_);
  auto* fileSays = new QLabel(tr("&File"), part);
  fileSays->setBuddy(file_);
  auto* form = new QFormLayout(part);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(space::small);
  form->addRow(fileSays, fileLine);
  form->addRow(tr("&Holds"), kind_);
  form->addRow(tr("Headings on &line"), headingLine_);
  form->addRow(tr("&Dates as"), dates_);
  form->addRow(tr("On &every line"), everywhere_);
  form->addRow(tr("B&y"), by_);
  return part;
}

void ImportDialog::setFile(const QString& file) {
  file_->setText(file);
  look(true);
}

ImportWish ImportDialog::wish() const {
  ImportWish wish;
  wish.kind = static_cast<exchange::Kind>(kind_->currentData().toInt());
  wish.file = file_->text().trimmed();
  wish.by = by_->currentText().trimmed();
  wish.form.dateFormat = dates_->text().trimmed();
  wish.form.mapping.headingLine = headingLine_->value();
  wish.form.mapping.columns = columns_->columns();
  for (const QString& each : everywhere_->text().split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
    const qsizetype at = each.indexOf(QLatin1Char('='));
    wish.form.mapping.everywhere.push_back(
        {each.left(at).trimmed(), at < 0 ? QString() : each.sliced(at + 1).trimmed()});
  }
  return wish;
}

void ImportDialog::look(bool recall) {
  if (looking_) {
    looking_->cancel();
    looking_.reset();
  }
  if (file_->text().trimmed().isEmpty()) {
    return;
  }
  ImportWish asked = wish();
  asked.recall = recall;
  if (recall) {
    asked.form.mapping = {}; // of another file or kind
    asked.form.mapping.headingLine = headingLine_->value();
  }
  setState(tr("Looking at the file …"), false);
  looking_ = session_.work().start(
      this, [source = session_.source(), asked](Watch&) { return source->importFile(asked); },
      [this, recall](const ImportLook& found) {
        looking_.reset();
        // Other headings than are shown: a new file, or another line of headings.
        show(found, recall || columns_->rowCount() != static_cast<int>(found.headings.size()) ||
                        (columns_->rowCount() > 0 && columns_->item(0, 0)->text() != found.headings.front()));
      },
      [this](const std::exception_ptr& what) {
        looking_.reset();
        lines_.setRows({});
        setState(wordsFor(what, tr("Nothing was written.")), false);
      });
}

void ImportDialog::show(const ImportLook& look, bool columnsToo) {
  if (columnsToo) {
    columns_->setLook(look, static_cast<exchange::Kind>(kind_->currentData().toInt()));
    const QSignalBlocker quietLine(headingLine_);
    headingLine_->setValue(look.form.mapping.headingLine);
    dates_->setText(look.form.dateFormat);
    QStringList everywhere;
    for (const exchange::Mapping::Everywhere& each : look.form.mapping.everywhere) {
      everywhere << each.heading + QLatin1Char('=') + each.value;
    }
    everywhere_->setText(everywhere.join(QStringLiteral("; ")));
  }
  lines_.setLook(look);
  QStringList says;
  if (!look.remembered.isEmpty()) {
    says << tr("Columns as %1 read them.").arg(look.remembered);
  }
  if (look.faults.empty()) {
    says << tr("%1. Read as %2.").arg(countsInWords(look), look.readAs);
  } else {
    says << tr("%1 cannot be read as it stands. Nothing of the file is taken in before it can.")
                .arg(look.faults.size() == 1 ? tr("One thing") : tr("%1 things").arg(look.faults.size()));
  }
  setState(says.join(QLatin1Char(' ')), look.faults.empty());
}

void ImportDialog::takeIn() {
  ImportWish asked = wish();
  asked.write = true;
  setState(tr("Taking it in …"), false);
  session_.work().start(
      this, [source = session_.source(), asked](Watch&) { return source->importFile(asked); },
      [this](const ImportLook& done) {
        if (!done.written) {
          show(done, false); // the store has changed since the last look
          return;
        }
        Q_EMIT session_.saved();
        session_.reload();
        accept();
      },
      [this](const std::exception_ptr& what) {
        setState(wordsFor(what, tr("Nothing of the file was kept.")), true);
      });
}

void ImportDialog::setState(const QString& text, bool ready) {
  state_->setText(text);
  ready_ = ready;
  check();
}

void ImportDialog::check() {
  accept_->setEnabled(ready_ && !by_->currentText().trimmed().isEmpty());
}

} // namespace hangbook::desk
