// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/labels_dialog.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QSpinBox>

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
    : AskDialog(QStringLiteral("labels"), tr("Print labels"), {}, tr("Write it"), parent),
      which_(new QComboBox(this)), sheet_(new QComboBox(this)), skip_(new QSpinBox(this)) {
  if (!selected.isEmpty()) {
    which_->addItem(tr("%1 alone").arg(selected), true);
  }
  which_->addItem(tr("All %1 that the list shows").arg(listed), false);
  for (const reports::LabelSheet& each : reports::labelSheets()) {
    sheet_->addItem(sheetInWords(each), each.name);
  }
  skip_->setSpecialValueText(tr("none: the first sheet is whole"));
  skip_->setSuffix(tr(" labels"));
  addField(tr("&Units"), QStringLiteral("Which"), tr("Which units"), which_);
  addField(tr("&Sheet"), QStringLiteral("Sheet"), tr("Sheet"), sheet_);
  addField(tr("&Leave free"), QStringLiteral("Skip"), tr("Places of the first sheet that are used already"),
           skip_);
  setFileAsker([this] {
    return QFileDialog::getSaveFileName(this, tr("Labels"), QStringLiteral("labels.pdf"), tr("PDF (*.pdf)"));
  });
  file_ = addFile(tr("&PDF"), tr("The PDF to write"), tr("Needed: its name"), tr("Choose the file"));
  setNeeded(file_, true);
  connect(sheet_, &QComboBox::currentIndexChanged, this, &LabelsDialog::fitSheet);
  fitSheet();
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

void LabelsDialog::fitSheet() {
  const reports::LabelSheet& sheet = reports::labelSheet(this->sheet());
  skip_->setMaximum(sheet.columns * sheet.rows - 1);
  skip_->setEnabled(skip_->maximum() > 0);
}

} // namespace hangbook::desk
