// SPDX-License-Identifier: GPL-3.0-or-later
// The window on a real store: the demo tour, a search, a choice and a record, and the same store read anew.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <memory>

#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTextBrowser>

#include "desk/building/flown_panel.h"
#include "desk/building/move_dialog.h"
#include "desk/building/print_button.h"
#include "desk/building/sheet_preview.h"
#include "desk/first/first_page.h"
#include "desk/frame/window.h"
#include "desk/importing/import_dialog.h"
#include "desk/lists/table_model.h"
#include "desk/options/choose_dialog.h"
#include "desk/options/elevation.h"
#include "desk/options/options_place.h"
#include "desk/run.h"
#include "desk/source/planning_source.h"
#include "desk/source/store_source.h"
#include "desk/style/verdict_label.h"
#include "shown.h"
#include "where.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::Shown;
using hangbook::testing::waitUntil;

namespace {

struct OnStore : Shown {
  explicit OnStore(const QString& file)
      : Shown(openStoreSource({.store = file, .asOf = QDate(2027, 3, 20)})) {}
};

} // namespace

BOOST_AUTO_TEST_SUITE(journey)

BOOST_AUTO_TEST_CASE(demo_search_choice_record_and_read_anew) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("tour.sqlite"));
  QString chosen;
  int mark = 0;
  {
    OnStore on(file);
    BOOST_TEST(on.child<FirstPage>("first")->isVisible());
    on.child<QPushButton>("firstDemo")->click();
    on.settle();
    BOOST_TEST_REQUIRE(on.window.session().overview().shows.size() == 11u);
    BOOST_TEST(!on.child<FirstPage>("first")->isVisible());

    on.window.wantShow(QStringLiteral("Ostrel"), QStringLiteral("left"));
    on.window.goTo(QStringLiteral("options"));
    on.settle();
    auto* list = on.child<QTableView>("optionListTable");
    BOOST_TEST_REQUIRE(list->model()->rowCount() > 10);
    BOOST_TEST(on.child<QTableView>("ruleSheet")->model()->rowCount() > 15);
    BOOST_TEST(!on.child<Elevation>("elevation")->drawing().shapes.empty());
    BOOST_TEST((on.child<VerdictLabel>("adjustVerdict")->verdict() == options::Verdict::holds));

    on.child<OptionsPlace>("options")->setAsker([](ChooseDialog& dialog) {
      dialog.findChild<QComboBox*>(QStringLiteral("chooseBy"))->setEditText(QStringLiteral("Ide Quarrel"));
      return true;
    });
    on.child<QPushButton>("adjustChoose")->click();
    on.settle();
    BOOST_TEST(!on.child<QWidget>("troubleLine")->isVisible(),
               on.child<QLabel>("troubleText")->text().toStdString());
    const auto* choice =
        findChoice(on.window.session().overview(), on.window.session().show(), QStringLiteral("left"));
    BOOST_TEST_REQUIRE(choice != nullptr);
    chosen = choice->option;
    BOOST_TEST(choice->by.toStdString() == "Ide Quarrel");
    BOOST_TEST(list->currentIndex().data(keyRole).toString().toStdString() == chosen.toStdString());

    on.window.goTo(QStringLiteral("build"));
    on.settle();
    mark = on.child<QLabel>("buildMark")->text().toInt();
    BOOST_TEST(mark == choice->setting.mark.value_or(-1));
    BOOST_TEST(on.child<QTextBrowser>("stepsText")
                   ->toPlainText()
                   .contains(QStringLiteral("Hold point: pins 1. open")));
    on.child<QComboBox>("stepsBy")->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST(on.child<QPushButton>("stepsSign")->isEnabled());
    BOOST_TEST(!on.child<QPushButton>("stepsSkip")->isEnabled()); // it takes a reason
    on.child<QPushButton>("stepsSign")->click();
    on.settle();
    BOOST_TEST(on.child<QTextBrowser>("stepsText")
                   ->toPlainText()
                   .contains(QStringLiteral("Hold point: pins 1. signed by Ide Quarrel")));
    for (const char* kind :
         {"load-sheet", "build-sheet", "prep-list", "examination-register", "tour-summary"}) {
      on.child<QAction>((QByteArray("print ") + kind).constData())->trigger();
      on.settle();
      const std::unique_ptr<SheetPreview> preview(on.child<SheetPreview>("sheetPreview"));
      BOOST_TEST(preview->isVisible());
      const auto pages =
          preview->findChild<QScrollArea*>(QStringLiteral("sheetPages"))->findChildren<QLabel*>();
      BOOST_TEST_REQUIRE(!pages.empty());
      BOOST_TEST(std::ranges::all_of(pages, [](const QLabel* page) { return page->pixmap().width() > 700; }));
      const auto kept = [&](const QString& ending) {
        const QString name = folder.filePath(QString::fromLatin1(kind) + ending);
        preview->save(name);
        QFile saved(name);
        BOOST_TEST_REQUIRE(saved.open(QIODevice::ReadOnly));
        return saved.readAll();
      };
      BOOST_TEST(kept(QStringLiteral(".pdf")).contains("/MediaBox [0 0 595"), kind);
      auto* paper = preview->findChild<QComboBox*>(QStringLiteral("sheetPaper"));
      BOOST_TEST_REQUIRE(paper != nullptr);
      paper->setCurrentIndex(paper->findText(QStringLiteral("US Letter")));
      BOOST_TEST(kept(QStringLiteral("-us.pdf")).contains("/MediaBox [0 0 612"), kind);
      BOOST_TEST(kept(QStringLiteral(".csv")).contains(QByteArray("HANGBOOK1|") + kind + '|'), kind);
    }
    on.child<QComboBox>("recordBy")->setEditText(QStringLiteral("Ide Quarrel"));
    on.child<QPushButton>("recordButton")->click();
    on.settle();
    BOOST_TEST(!on.child<QWidget>("troubleLine")->isVisible(),
               on.child<QLabel>("troubleText")->text().toStdString());
  }
  OnStore again(file);
  BOOST_TEST(!again.child<FirstPage>("first")->isVisible());
  const Overview& overview = again.window.session().overview();
  const auto* choice =
      findChoice(overview, {overview.tours.front().name, QStringLiteral("Ostrel")}, QStringLiteral("left"));
  BOOST_TEST_REQUIRE(choice != nullptr);
  BOOST_TEST(choice->option.toStdString() == chosen.toStdString());
  BOOST_TEST_REQUIRE(!overview.marks.empty());
  BOOST_TEST(overview.marks.front().mark == mark);
  BOOST_TEST(overview.marks.front().by.toStdString() == "Ide Quarrel");
}

BOOST_AUTO_TEST_CASE(a_flown_hang_is_tried_at_another_aim_and_signed_with_a_name_and_a_reason) {
  const QTemporaryDir folder;
  OnStore on(folder.filePath(QStringLiteral("tour.sqlite")));
  on.child<QPushButton>("firstDemo")->click();
  on.settle();
  on.window.wantShow(QStringLiteral("Ostrel"), QStringLiteral("left"));
  on.window.goTo(QStringLiteral("build"));
  on.child<QTabWidget>("buildTabs")->setCurrentWidget(on.child<FlownPanel>("flown"));
  on.settle();
  const auto standing = [&] {
    const auto* choice =
        findChoice(on.window.session().overview(), on.window.session().show(), QStringLiteral("left"));
    BOOST_TEST_REQUIRE(choice != nullptr);
    return *choice;
  };
  const options::Choice before = standing();
  auto* tilt = on.child<QDoubleSpinBox>("flownTilt");
  const QTableView* changes = on.child<QTableView>("flownChanges");
  BOOST_TEST(!on.child<QPushButton>("flownSign")->isEnabled()); // nothing is another one yet
  BOOST_TEST(on.child<QLabel>("flownUp")->isVisible());
  BOOST_TEST(on.child<QLabel>("flownUp")->text().contains(QStringLiteral("pins 1")));
  BOOST_TEST(!on.child<QDoubleSpinBox>("flownWind")->isEnabled());
  tilt->setValue(tilt->value() + 40.0); // beyond the actuator's travel
  on.settle();
  BOOST_TEST(!on.child<QPushButton>("flownSign")->isEnabled());
  BOOST_TEST(on.child<QLabel>("flownAbout")->text().contains(QStringLiteral("possible")));
  on.child<QPushButton>("flownAsSigned")->click();
  on.settle();
  tilt->setValue(tilt->value() + 0.5);
  on.settle();
  BOOST_TEST(changes->model()->rowCount() > 4);
  BOOST_TEST(on.child<QTextBrowser>("flownSteps")->toPlainText().contains(QStringLiteral("Clear below")));
  bool lacked = false;
  bool asked = false;
  on.child<FlownPanel>("flown")->setAsker([&](MoveDialog& dialog) {
    dialog.findChild<QComboBox*>(QStringLiteral("moveBy"))->setEditText(QStringLiteral("Ide Quarrel"));
    asked = dialog.findChild<QLabel*>(QStringLiteral("moveOpenGates")) != nullptr;
    lacked = !dialog.findChild<QPushButton*>(QStringLiteral("moveAccept"))->isEnabled();
    dialog.findChild<QLineEdit*>(QStringLiteral("moveReason"))->setText(QStringLiteral("balcony sold late"));
    return dialog.findChild<QPushButton*>(QStringLiteral("moveAccept"))->isEnabled();
  });
  on.child<QPushButton>("flownSign")->click();
  on.settle();
  BOOST_TEST(asked);  // whether it is up at all
  BOOST_TEST(lacked); // a name alone is not enough
  BOOST_TEST(!on.child<QWidget>("troubleLine")->isVisible(),
             on.child<QLabel>("troubleText")->text().toStdString());
  BOOST_TEST(standing().revision == before.revision + 1);
  BOOST_TEST(standing().movedFrom == before.revision);
  BOOST_TEST(standing().setting.tiltDeg == before.setting.tiltDeg + 0.5, boost::test_tools::tolerance(0.05));
  on.child<QPushButton>("flownBack")->click();
  on.settle();
  BOOST_TEST(tilt->value() == before.setting.tiltDeg, boost::test_tools::tolerance(0.05));
  BOOST_TEST(on.child<QPushButton>("flownSign")->isEnabled());
}

BOOST_AUTO_TEST_CASE(an_offline_copy_is_made_says_what_it_is_and_takes_nothing) {
  const QTemporaryDir folder;
  const QString copy = folder.filePath(QStringLiteral("ostrel.hangbook"));
  {
    OnStore on(folder.filePath(QStringLiteral("tour.sqlite")));
    on.child<QPushButton>("firstDemo")->click();
    on.settle();
    on.window.wantShow(QStringLiteral("Ostrel"), QStringLiteral("left"));
    on.window.goTo(QStringLiteral("build"));
    on.settle();
    on.child<PrintButton>("buildPrint")->copy(copy);
    on.settle();
    BOOST_TEST(!on.child<QWidget>("troubleLine")->isVisible(),
               on.child<QLabel>("troubleText")->text().toStdString());
    on.child<PrintButton>("buildPrint")->copy(copy); // never over a file
    on.settle();
    BOOST_TEST(on.child<QLabel>("troubleText")->text().contains(QStringLiteral("There is no copy")));
  }
  OnStore offline(copy);
  BOOST_TEST(offline.window.session().storeLine().name.startsWith(
      QStringLiteral("offline copy of Ostrel, show r1")));
  offline.window.wantShow(QStringLiteral("Ostrel"), QStringLiteral("left"));
  offline.window.goTo(QStringLiteral("build"));
  offline.settle();
  offline.child<QComboBox>("stepsBy")->setEditText(QStringLiteral("Ide Quarrel"));
  offline.child<QPushButton>("stepsSign")->click();
  offline.settle();
  BOOST_TEST(offline.child<QLabel>("troubleText")->text().contains(QStringLiteral("never written")),
             offline.child<QLabel>("troubleText")->text().toStdString());
}

BOOST_AUTO_TEST_CASE(a_house_rule_is_tried_then_signed_and_one_that_loosens_is_refused) {
  const QTemporaryDir folder;
  OnStore on(folder.filePath(QStringLiteral("tour.sqlite")));
  on.child<QPushButton>("firstDemo")->click();
  on.settle();
  Session& session = on.window.session();
  std::optional<options::HouseEffect> effect;
  QString refused;
  const auto change = [&](double value, bool dryRun) {
    effect.reset();
    refused.clear();
    const HouseWish wish{{options::HousePlace::venue, {}, QStringLiteral("Ostrel Exchange")},
                         QStringLiteral("lean-most"),
                         value,
                         QStringLiteral("the house asks for it"),
                         QStringLiteral("Ide Quarrel"),
                         dryRun};
    session.work().start(
        &session, [source = session.source(), wish](Watch&) { return planningOf(*source).changeHouse(wish); },
        [&](const options::HouseEffect& found) { effect = found; },
        [&](const std::exception_ptr& what) { refused = wordsFor(what, {}); });
    on.settle();
  };
  const auto stated = [&] {
    session.reload();
    on.settle();
    return findVenue(session.overview(), QStringLiteral("Ostrel Exchange"))->house.size();
  };
  const auto before = stated();
  change(3.0, true);
  BOOST_TEST_REQUIRE(effect.has_value(), refused.toStdString());
  BOOST_TEST(effect->judged == 2); // both hangs of its show are chosen
  BOOST_TEST(stated() == before);
  change(3.0, false);
  BOOST_TEST(effect.has_value());
  BOOST_TEST(stated() == before + 1);
  BOOST_TEST(
      findVenue(session.overview(), QStringLiteral("Ostrel Exchange"))->house.back().signedBy.toStdString() ==
      "Ide Quarrel");
  change(8.0, false);
  BOOST_TEST(refused.contains(QStringLiteral("may only be tightened")), refused.toStdString());
  BOOST_TEST(stated() == before + 1);
}

BOOST_AUTO_TEST_CASE(a_folder_without_spreadsheets_is_refused_and_nothing_is_kept) {
  const QTemporaryDir folder;
  OnStore on(folder.filePath(QStringLiteral("tour.sqlite")));
  on.child<FirstPage>("first")->importFrom(folder.path());
  on.settle();
  const std::string text = on.child<QLabel>("troubleText")->text().toStdString();
  BOOST_TEST(text.find("types.csv") != std::string::npos);
  BOOST_TEST(text.find("Nothing of that folder was kept") != std::string::npos);
  BOOST_TEST(on.window.session().overview().empty());
}

BOOST_AUTO_TEST_CASE(a_fault_in_one_file_keeps_nothing_of_the_others) {
  const QTemporaryDir folder;
  QFile good(folder.filePath(QStringLiteral("people.csv")));
  BOOST_TEST_REQUIRE(good.open(QIODevice::WriteOnly));
  const QByteArray people = [] {
    QFile demo(QStringLiteral(HANGBOOK_SOURCE_DIR "/client/demo/people.csv"));
    return demo.open(QIODevice::ReadOnly) ? demo.readAll() : QByteArray();
  }();
  BOOST_TEST_REQUIRE(!people.isEmpty());
  good.write(people);
  good.close();
  QFile bad(folder.filePath(QStringLiteral("units.csv")));
  BOOST_TEST_REQUIRE(bad.open(QIODevice::WriteOnly));
  bad.write("no,such,heading\n1,2,3\n");
  bad.close();
  OnStore on(folder.filePath(QStringLiteral("tour.sqlite")));
  on.child<FirstPage>("first")->importFrom(folder.path());
  on.settle();
  const std::string text = on.child<QLabel>("troubleText")->text().toStdString();
  BOOST_TEST(text.find("units.csv") != std::string::npos, text);
  on.window.session().reload();
  on.settle();
  BOOST_TEST(on.window.session().overview().people.empty());
}

BOOST_AUTO_TEST_CASE(a_list_of_their_own_is_mapped_looked_at_and_taken_in) {
  const QTemporaryDir folder;
  OnStore on(folder.filePath(QStringLiteral("tour.sqlite")));
  on.child<QPushButton>("firstDemo")->click();
  on.settle();
  const QString list = folder.filePath(QStringLiteral("gear.csv"));
  QFile file(list);
  BOOST_TEST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("Gear of the north yard;;;\nNo.;Item;Where;Note\nH2005;Quernstone two;bay 9;\nH9001;Quernstone "
             "two;bay 9;ok\n");
  file.close();
  const auto before = on.window.session().overview().units.size();
  ImportDialog dialog(on.window.session(), &on.window);
  dialog.findChild<QComboBox*>(QStringLiteral("importBy"))->setEditText(QStringLiteral("Ide Quarrel"));
  const auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("importAccept"));
  const auto* state = dialog.findChild<QLabel*>(QStringLiteral("importState"));
  auto* lines = dialog.findChild<QTableView*>(QStringLiteral("importLines"));
  BOOST_TEST(!accept->isEnabled());
  dialog.setFile(list);
  on.settle();
  BOOST_TEST(!accept->isEnabled()); // the title is no line of headings
  BOOST_TEST(lines->model()->rowCount() > 0);
  dialog.findChild<QSpinBox*>(QStringLiteral("importHeadingLine"))->setValue(2);
  on.settle();
  const QStringList ours{QStringLiteral("serial"), QStringLiteral("type"), QStringLiteral("place")};
  for (int column = 0; column < 4; ++column) {
    auto* box = qobject_cast<QComboBox*>(
        dialog.findChild<QTableWidget*>(QStringLiteral("importColumns"))->cellWidget(column, 2));
    BOOST_TEST_REQUIRE(box != nullptr);
    box->setCurrentIndex(column < 3 ? box->findText(ours[column]) : 1);
  }
  auto* everywhere = dialog.findChild<QLineEdit*>(QStringLiteral("importEverywhere"));
  everywhere->setFocus();
  everywhere->setText(QStringLiteral("kind=hoist"));
  everywhere->setModified(true);
  Q_EMIT everywhere->editingFinished();
  on.settle();
  BOOST_TEST(accept->isEnabled(), state->text().toStdString());
  BOOST_TEST(state->text().contains(QStringLiteral("1 new, 1 changed")), state->text().toStdString());
  BOOST_TEST(lines->model()->rowCount() == 1);                       // where H2005 is
  BOOST_TEST(on.window.session().overview().units.size() == before); // looking writes nothing
  dialog.findChild<QPushButton*>(QStringLiteral("importAccept"))->click();
  on.settle();
  BOOST_TEST(dialog.result() == QDialog::Accepted);
  BOOST_TEST(on.window.session().overview().units.size() == before + 1);

  // The next list with these headings is read the same way.
  ImportDialog next(on.window.session(), &on.window);
  next.findChild<QComboBox*>(QStringLiteral("importBy"))->setEditText(QStringLiteral("Ide Quarrel"));
  next.setFile(list);
  on.settle();
  const QString says = next.findChild<QLabel*>(QStringLiteral("importState"))->text();
  BOOST_TEST(says.contains(QStringLiteral("Ide Quarrel")), says.toStdString());
  BOOST_TEST(says.contains(QStringLiteral("0 new, 0 changed, 2 the same")), says.toStdString());
}

BOOST_AUTO_TEST_CASE(a_store_that_cannot_be_opened_is_told_in_the_window) {
  const QTemporaryDir folder;
  Window window(openStoreSource({.store = folder.filePath(QStringLiteral("no/such/folder/tour.sqlite"))}));
  window.show();
  BOOST_TEST(waitUntil([&] { return !window.session().busy(); }));
  BOOST_TEST(!window.session().loaded());
  BOOST_TEST(window.findChild<QWidget*>(QStringLiteral("troubleLine"))->isVisible());
}

BOOST_AUTO_TEST_SUITE_END()
