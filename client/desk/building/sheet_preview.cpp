// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/sheet_preview.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPageSize>
#include <QPushButton>
#include <QSaveFile>
#include <QScrollArea>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "exchange/csv_write.h"
#include "quantity/error.h"

namespace hangbook::desk {
namespace {

constexpr int dots = 96; // an inch

} // namespace

SheetPreview::SheetPreview(Session& session, reports::Sheet sheet, reports::Stamp stamp, reports::Paper paper,
                           QWidget* parent)
    : QDialog(parent), session_(session), sheet_(std::move(sheet)), stamp_(std::move(stamp)),
      papers_(new QComboBox(this)), scroll_(new QScrollArea(this)) {
  setObjectName(QStringLiteral("sheetPreview"));
  setWindowTitle(QStringLiteral("%1 – %2").arg(sheet_.title, sheet_.show));
  papers_->setObjectName(QStringLiteral("sheetPaper"));
  papers_->addItem(tr("A4"), static_cast<int>(reports::Paper::a4));
  papers_->addItem(tr("US Letter"), static_cast<int>(reports::Paper::letter));
  papers_->setCurrentIndex(papers_->findData(static_cast<int>(paper)));
  auto* label = new QLabel(tr("&Paper"), this);
  label->setBuddy(papers_);
  auto* choose = new QHBoxLayout;
  choose->addWidget(label);
  choose->addWidget(papers_);
  choose->addStretch(1);
  scroll_->setObjectName(QStringLiteral("sheetPages"));
  scroll_->setAlignment(Qt::AlignHCenter);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Save | QDialogButtonBox::Close, this);
  auto* all = new QVBoxLayout(this);
  all->addLayout(choose);
  all->addWidget(scroll_, 1);
  all->addWidget(buttons);
  const int bars = style()->pixelMetric(QStyle::PM_ScrollBarExtent) + 4 * space::wide; // and the margins
  resize(QPageSize(QPageSize::Letter).sizePixels(dots).width() + bars, 900);
  auto* wait = new QLabel(tr("Drawing the pages…"));
  wait->setAlignment(Qt::AlignCenter);
  scroll_->setWidget(wait);
  drawPages();
  connect(papers_, &QComboBox::currentIndexChanged, this, &SheetPreview::drawPages);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(buttons->button(QDialogButtonBox::Save), &QPushButton::clicked, this, &SheetPreview::askWhere);
}

reports::Paper SheetPreview::paper() const {
  return static_cast<reports::Paper>(papers_->currentData().toInt());
}

void SheetPreview::drawPages() {
  if (drawing_) {
    drawing_->cancel();
  }
  drawing_ = session_.work().start(
      this,
      [sheet = sheet_, stamp = stamp_, paper = paper()](Watch&) {
        return reports::picturesOf(sheet, stamp, paper, dots);
      },
      [this](const std::vector<QImage>& pages) { showPages(pages); },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(
            wordsFor(what, tr("The sheet is not shown. Nothing has changed; try again.")));
      });
}

void SheetPreview::showPages(const std::vector<QImage>& pages) {
  auto* all = new QWidget;
  auto* column = new QVBoxLayout(all);
  column->setSpacing(space::wide);
  int number = 0;
  for (const QImage& page : pages) {
    auto* label = new QLabel(all);
    label->setPixmap(QPixmap::fromImage(page));
    label->setFrameShape(QFrame::Box);
    label->setAccessibleName(tr("Page %1 of %2").arg(++number).arg(sheet_.title));
    column->addWidget(label, 0, Qt::AlignHCenter);
  }
  scroll_->setWidget(all); // the pages before go with it
}

void SheetPreview::askWhere() {
  const QString file =
      QFileDialog::getSaveFileName(this, tr("Keep the sheet"), sheet_.kind + QStringLiteral(".pdf"),
                                   tr("PDF (*.pdf);;Spreadsheet (*.csv)"));
  if (file.isEmpty()) {
    return;
  }
  try {
    save(file);
  } catch (const Error& error) {
    QMessageBox::warning(this, windowTitle(),
                         tr("It was not written. %1").arg(QString::fromUtf8(error.what())));
  }
}

void SheetPreview::save(const QString& file) const {
  const QByteArray bytes = file.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)
                               ? exchange::writeCsv(reports::recordsOf(sheet_, stamp_))
                               : reports::pdfOf(sheet_, stamp_, paper());
  QSaveFile target(file);
  if (!target.open(QIODevice::WriteOnly) || target.write(bytes) != bytes.size() || !target.commit()) {
    throw Error(Trouble::badInput, "cannot be written: " + target.errorString().toStdString(),
                file.toStdString());
  }
}

} // namespace hangbook::desk
