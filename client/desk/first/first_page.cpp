// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/first/first_page.h"

#include <QFileDialog>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/frame/cautions.h"
#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  return label;
}

} // namespace

FirstPage::FirstPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), demo_(new QPushButton(tr("Open the &demo tour"), this)),
      import_(new QPushButton(tr("&Import spreadsheets…"), this)),
      blank_(new QPushButton(tr("Start &blank"), this)), state_(wrapped({}, this)) {
  setObjectName(QStringLiteral("first"));
  setAccessibleName(tr("How to begin"));
  demo_->setObjectName(QStringLiteral("firstDemo"));
  import_->setObjectName(QStringLiteral("firstImport"));
  blank_->setObjectName(QStringLiteral("firstBlank"));
  state_->setObjectName(QStringLiteral("firstState"));
  demo_->setDefault(true);

  auto* head = new QLabel(tr("This store is empty. How would you like to begin?"), this);
  head->setFont(fontFor(TextSize::title, font()));
  head->setWordWrap(true);
  auto* ways = new QGridLayout;
  ways->setHorizontalSpacing(space::wide);
  ways->setVerticalSpacing(space::wide);
  ways->setColumnStretch(1, 1);
  const auto addWay = [&](int row, QPushButton* button, const QString& text) {
    button->setAccessibleDescription(text);
    button->setMinimumHeight(QFontMetrics(font()).height() * 2);
    ways->addWidget(button, row, 0);
    ways->addWidget(wrapped(text, this), row, 1);
  };
  addWay(0, demo_,
         tr("An invented band on eleven invented stops, with its gear, venues and examinations. Nothing in "
            "it is "
            "real; use it to look around."));
  addWay(1, import_,
         tr("Choose the folder that holds your CSV files. Everything is read, or nothing: a row that cannot "
            "be read is "
            "named with its file and line."));
  addWay(2, blank_, tr("Go straight to the empty lists."));

  auto* cautionHead = new QLabel(tr("Before you rely on it"), this);
  cautionHead->setFont(fontFor(TextSize::heading, font()));
  auto* caution = wrapped(cautionText(), this);
  caution->setObjectName(QStringLiteral("firstCaution"));

  auto* column = new QWidget(this);
  column->setMaximumWidth(QFontMetrics(font()).averageCharWidth() * 92);
  auto* inColumn = new QVBoxLayout(column);
  inColumn->setSpacing(space::wide);
  inColumn->addStretch(2);
  inColumn->addWidget(head);
  inColumn->addSpacing(space::step);
  inColumn->addLayout(ways);
  inColumn->addWidget(state_);
  inColumn->addSpacing(space::broad);
  inColumn->addWidget(cautionHead);
  inColumn->addWidget(caution);
  inColumn->addStretch(3);
  auto* all = new QHBoxLayout(this);
  all->addStretch(1);
  all->addWidget(column, 20);
  all->addStretch(1);

  connect(demo_, &QPushButton::clicked, this, &FirstPage::openDemo);
  connect(blank_, &QPushButton::clicked, this, &FirstPage::startBlank);
  connect(import_, &QPushButton::clicked, this, [this] {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder with CSV files"));
    if (!folder.isEmpty()) {
      importFrom(folder);
    }
  });
}

void FirstPage::openDemo() {
  setBusy(tr("Writing the demo tour into the store …"));
  session_.work().start(
      this,
      [source = session_.source()](Watch&) {
        source->fillWithDemo();
        return true;
      },
      [this](bool) {
        setBusy({});
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        setBusy({});
        Q_EMIT session_.trouble(wordsFor(what, tr("The store is still empty. Try again, or start blank.")));
      });
}

void FirstPage::importFrom(const QString& folder) {
  setBusy(tr("Reading %1 …").arg(folder));
  session_.work().start(
      this, [source = session_.source(), folder](Watch&) { return source->importFolder(folder, {}); },
      [this](const QString& read) {
        setBusy({});
        state_->setText(read);
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& what) {
        setBusy({});
        Q_EMIT session_.trouble(
            wordsFor(what, tr("Nothing of that folder was kept. Mend the file and import again.")));
      });
}

void FirstPage::setBusy(const QString& what) {
  state_->setText(what);
  for (QPushButton* each : {demo_, import_, blank_}) {
    each->setEnabled(what.isEmpty());
  }
}

} // namespace hangbook::desk
