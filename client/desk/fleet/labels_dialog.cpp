// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/labels_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "reports/labels.h"

namespace hangbook::desk {
namespace {

QString sheetInWords(const reports::LabelSheet& sheet) {
  const QString name = sheet.name == u"a4"       ? LabelsDialog::tr("A4")
                       : sheet.name == u"letter" ? LabelsDialog::tr("US Letter")
                       : sheet.name == u"roll"   ? LabelsDialog::tr("Label roll")
                                                 : sheet.name;
  return sheet.columns * sheet.rows > 1
             ? LabelsDialog::tr("%1, %2 × %3 labels").arg(name).arg(sheet.columns).arg(sheet.rows)
             : LabelsDialog::tr("%1, one a page").arg(name);
}

} // namespace

LabelsDialog::LabelsDialog(const QString& selected, int listed, QWidget* parent)
    : QDialog(parent), which_(new QComboBox(this)), sheet_(new QComboBox(this)), skip_(new QSpinBox(this)),
      file_(new QLineEdit(this)), fileAsker_([this] {
        return QFileDialog::getSaveFileName(this, tr("Labels"), QStringLiteral("labels.pdf"),
                                            tr("PDF (*.pdf)"));
      }) {
  setObjectName(QStringLiteral("labelsDialog"));
  setWindowTitle(tr("Print labels"));
  which_->setObjectName(QStringLiteral("labelsWhich"));
  which_->setAccessibleName(tr("Which units"));
  if (!selected.isEmpty()) {
    which_->addItem(tr("%1 alone").arg(selected), true);
  }
  which_->addItem(tr("All %1 that the list shows").arg(listed), false);
  sheet_->setObjectName(QStringLiteral("labelsSheet"));
  sheet_->setAccessibleName(tr("Sheet"));
  for (const reports::LabelSheet& each : reports::labelSheets()) {
    sheet_->addItem(sheetInWords(each), each.name);
  }
  skip_->setObjectName(QStringLiteral("labelsSkip"));
  skip_->setAccessibleName(tr("Places of the first sheet that are used already"));
  file_->setObjectName(QStringLiteral("labelsFile"));
  file_->setAccessibleName(tr("The PDF to write"));
  auto* browse = new QPushButton(tr("…"), this);
  browse->setObjectName(QStringLiteral("labelsBrowse"));
  browse->setAccessibleName(tr("Choose the file"));
  browse->setAutoDefault(false);
  browse->setFixedWidth(browse->fontMetrics().height() * 2);
  auto* fileLine = new QHBoxLayout;
  fileLine->setSpacing(space::small);
  fileLine->addWidget(file_, 1);
  fileLine->addWidget(browse);
  auto* form = new QFormLayout;
  form->addRow(tr("&Units"), which_);
  form->addRow(tr("&Sheet"), sheet_);
  form->addRow(tr("&Leave free"), skip_);
  form->addRow(tr("&PDF"), fileLine);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(tr("Write it"), QDialogButtonBox::AcceptRole);
  accept_->setObjectName(QStringLiteral("labelsAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addLayout(form);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 60);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(browse, &QPushButton::clicked, this, [this] {
    if (const QString name = fileAsker_(); !name.isEmpty()) {
      file_->setText(name);
    }
  });
  connect(sheet_, &QComboBox::currentIndexChanged, this, &LabelsDialog::check);
  connect(file_, &QLineEdit::textChanged, this, &LabelsDialog::check);
  check();
}

bool LabelsDialog::selectedOnly() const {
  return which_->currentData().toBool();
}

QString LabelsDialog::sheet() const {
  return sheet_->currentData().toString();
}

int LabelsDialog::skip() const {
  return skip_->value();
}

QString LabelsDialog::file() const {
  return file_->text().trimmed();
}

void LabelsDialog::check() {
  const reports::LabelSheet& sheet = reports::labelSheet(this->sheet());
  skip_->setMaximum(sheet.columns * sheet.rows - 1);
  skip_->setEnabled(skip_->maximum() > 0);
  accept_->setEnabled(!file().isEmpty());
}

} // namespace hangbook::desk
