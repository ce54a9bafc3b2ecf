// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/print_button.h"

#include <QFileDialog>
#include <QMenu>

#include "desk/building/build_place.h"
#include "desk/building/sheet_preview.h"
#include "desk/source/offline_source.h"
#include "desk/source/sheet_source.h"
#include "quantity/error.h"

namespace hangbook::desk {

PrintButton::PrintButton(Session& session, QWidget* parent)
    : QPushButton(BuildPlace::tr("Print"), parent), session_(session) {
  setObjectName(QStringLiteral("buildPrint"));
  auto* menu = new QMenu(this);
  const std::vector<std::pair<QString, QString>> sheets{
      {QStringLiteral("load-sheet"), BuildPlace::tr("Load sheet…")},
      {QStringLiteral("build-sheet"), BuildPlace::tr("Build sheet…")},
      {QStringLiteral("prep-list"), BuildPlace::tr("Prep list…")},
      {QStringLiteral("examination-register"), BuildPlace::tr("Examination register…")},
      {QStringLiteral("tour-summary"), BuildPlace::tr("Tour summary…")}};
  for (const auto& [kind, words] : sheets) {
    QAction* action = menu->addAction(words);
    action->setObjectName(QStringLiteral("print ") + kind);
    connect(action, &QAction::triggered, this, [this, kind = kind] { print(kind); });
  }
  menu->addSeparator();
  QAction* copies = menu->addAction(BuildPlace::tr("Offline copy of this show…"));
  copies->setObjectName(QStringLiteral("offlineCopy"));
  connect(copies, &QAction::triggered, this, &PrintButton::askCopy);
  setMenu(menu);
}

void PrintButton::askCopy() {
  const ShowKey& show = session_.show();
  if (show.show.isEmpty()) {
    Q_EMIT session_.trouble(
        BuildPlace::tr("There is nothing to copy yet: no show is chosen at the top of this place."));
    return;
  }
  QString name =
      QStringLiteral("%1-%2.hangbook").arg(show.show, session_.overview().today.toString(Qt::ISODate));
  name.replace(QLatin1Char('/'), QLatin1Char('-'));
  const QString file =
      QFileDialog::getSaveFileName(this, BuildPlace::tr("Offline copy of %1").arg(show.show), name,
                                   BuildPlace::tr("Hangbook store (*.hangbook)"), nullptr,
                                   QFileDialog::DontConfirmOverwrite); // nothing is written over
  if (!file.isEmpty()) {
    copy(file);
  }
}

void PrintButton::copy(const QString& file) {
  session_.work().start(
      this,
      [source = session_.source(), show = session_.show(), file](Watch&) {
        auto* maker = dynamic_cast<OfflineSource*>(source.get());
        if (maker == nullptr) {
          throw Error(Trouble::notPossible, "offline copies are not made here");
        }
        maker->copyShow(show, file);
        return true;
      },
      [this](bool) { Q_EMIT session_.saved(); },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(
            wordsFor(what, BuildPlace::tr("There is no copy. Name another file, or try again.")));
      });
}

void PrintButton::print(const QString& kind) {
  const bool ofTour = kind == QLatin1String("tour-summary");
  if (session_.show().show.isEmpty()) {
    Q_EMIT session_.trouble(
        BuildPlace::tr("There is nothing to print yet: no show is chosen at the top of this place."));
    return;
  }
  const reports::SheetCode code{kind,
                                session_.show().tour,
                                ofTour ? QString() : session_.show().show,
                                session_.figures().system(),
                                session_.overview().today,
                                {}};
  session_.work().start(
      this,
      [source = session_.source(), code](Watch&) {
        auto* printer = dynamic_cast<SheetSource*>(source.get());
        if (printer == nullptr) {
          throw Error(Trouble::notPossible, "sheets are not printed here");
        }
        return printer->sheet(code);
      },
      [this, code](const reports::Sheet& sheet) { preview(sheet, code); },
      [this](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(
            wordsFor(what, BuildPlace::tr("The sheet was not made. Nothing has changed; try again.")));
      });
}

void PrintButton::preview(const reports::Sheet& sheet, reports::SheetCode code) {
  code.checksum = reports::checksumOf(sheet);
  auto* dialog = new SheetPreview(
      session_, sheet,
      {QStringLiteral(HANGBOOK_VERSION), QDateTime::currentDateTimeUtc(), code.checksum,
       reports::textOf(code)},
      code.units == UnitSystem::usCustomary ? reports::Paper::letter : reports::Paper::a4, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

} // namespace hangbook::desk
