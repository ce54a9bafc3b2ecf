// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo of edits of plans, by keyboard, on a real store.
#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include "actions/hung.h"
#include "desk/frame/editing.h"
#include "desk/importing/import_wish.h"
#include "desk/options/withdraw_dialog.h"
#include "desk/source/edit_source.h"
#include "desk/source/planning_source.h"
#include "desk/source/venue_source.h"
#include "on_demo.h"
#include "store/store.h"
#include "store/venue_store.h"

using namespace hangbook;
using namespace hangbook::desk;

namespace {

const QString ide = QStringLiteral("Ide Quarrel");
const QString hall = QStringLiteral("Ostrel Exchange");

struct Undoing : hangbook::testing::OnDemo {
  Undoing() {
    show = {window.session().overview().tours.front().name, QStringLiteral("Ostrel")};
    window.session().setShow(show, QStringLiteral("left"));
  }
  const options::Choice* choice() {
    return findChoice(window.session().overview(), show, QStringLiteral("left"));
  }
  double trim() {
    BOOST_TEST_REQUIRE(choice() != nullptr);
    return choice()->setting.trimM;
  }
  /// Writes as the window's own parts do: on the worker, then reads again.
  template <class Job>
  QString write(Job job) {
    QString refused;
    Session& session = window.session();
    session.work().start(
        &session,
        [source = session.source(), job](Watch&) {
          job(*source);
          return true;
        },
        [](bool) {}, [&](const std::exception_ptr& what) { refused = wordsFor(what, {}); });
    settle();
    session.reload();
    settle();
    return refused;
  }
  QString lower() {
    ChoiceRequest request{show,
                          QStringLiteral("left"),
                          choice()->key,
                          choice()->setting,
                          ide,
                          QStringLiteral("the first row asks for it"),
                          choice()->revision};
    request.setting.trimM -= 0.01;
    return write([request](Source& source) { source.choose(request); });
  }
  void press(const char* action) {
    child<QAction>(action)->trigger();
    settle();
  }
  std::string words(const char* action) { return child<QAction>(action)->text().toStdString(); }
  std::string trouble() { return child<QLabel>("troubleText")->text().toStdString(); }

  ShowKey show;
};

} // namespace

BOOST_AUTO_TEST_SUITE(undo)

BOOST_AUTO_TEST_CASE(nothing_to_undo_at_first_and_the_keys_are_the_usual_ones) {
  Undoing on;
  BOOST_TEST(!on.child<QAction>("undo")->isEnabled());
  BOOST_TEST(!on.child<QAction>("redo")->isEnabled());
  BOOST_TEST(on.child<QAction>("undo")->shortcut().toString().toStdString() == "Ctrl+Z");
  BOOST_TEST(on.child<QAction>("redo")->shortcut().toString().toStdString() == "Ctrl+Shift+Z");
}

BOOST_AUTO_TEST_CASE(another_trim_is_undone_and_done_again_by_name_and_by_keys) {
  Undoing on;
  const double before = on.trim();
  BOOST_TEST_REQUIRE(on.lower().isEmpty());
  const double after = on.trim();
  BOOST_TEST(after < before);
  BOOST_TEST(on.words("undo").find("Undo: trim ") != std::string::npos, on.words("undo"));
  BOOST_TEST(on.words("undo").ends_with(" m for left at Ostrel"), on.words("undo"));
  on.window.activateWindow();
  QTest::keyClick(&on.window, Qt::Key_Z, Qt::ControlModifier);
  on.settle();
  BOOST_TEST(on.trim() == before);
  BOOST_TEST(on.child<QLabel>("savedText")->text().startsWith(QStringLiteral("Undone: trim")));
  BOOST_TEST(!on.child<QAction>("undo")->isEnabled());
  BOOST_TEST(on.words("redo").find("Redo: trim ") != std::string::npos, on.words("redo"));
  QTest::keyClick(&on.window, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  on.settle();
  BOOST_TEST(on.trim() == after);
  BOOST_TEST(!on.child<QAction>("redo")->isEnabled());
}

BOOST_AUTO_TEST_CASE(a_choice_is_taken_back_with_a_reason_and_stands_again_when_that_is_undone) {
  Undoing on;
  const QString chosen = on.choice()->option;
  on.child<Editing>("editing")->setAsker([](WithdrawDialog& dialog) {
    auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("withdrawAccept"));
    BOOST_TEST(!accept->isEnabled());
    dialog.findChild<QLineEdit*>(QStringLiteral("withdrawReason"))->setText(QStringLiteral("no trucks"));
    dialog.findChild<QComboBox*>(QStringLiteral("withdrawBy"))->setEditText(ide);
    BOOST_TEST(accept->isEnabled());
    return true;
  });
  on.press("withdrawChoice");
  BOOST_TEST(on.choice() == nullptr);
  BOOST_TEST(!on.child<QAction>("withdrawChoice")->isEnabled());
  on.press("undo");
  BOOST_TEST_REQUIRE(on.choice() != nullptr, on.trouble());
  BOOST_TEST(on.choice()->option.toStdString() == chosen.toStdString());
  on.press("redo");
  BOOST_TEST(on.choice() == nullptr);
  on.press("undo");
  BOOST_TEST(on.choice() != nullptr, on.trouble());
}

BOOST_AUTO_TEST_CASE(venue_and_house_rule_are_undone_each_for_itself_in_turn) {
  Undoing on;
  const auto venue = [&] { return *findVenue(on.window.session().overview(), hall); };
  const venue::Venue first = venue();
  venue::Venue other = first;
  other.lowSteel = metres(inMetres(*first.lowSteel) - 0.5);
  other.typed.erase(QStringLiteral("low steel"));
  BOOST_TEST_REQUIRE(on.write([other](Source& source) {
                         dynamic_cast<VenueSource&>(source).editVenue({other, ide, false});
                       }).isEmpty());
  const HouseWish wish{{options::HousePlace::venue, {}, hall},
                       QStringLiteral("lean-most"),
                       3.0,
                       QStringLiteral("the house asks for it"),
                       ide,
                       false};
  BOOST_TEST_REQUIRE(on.write([wish](Source& source) { planningOf(source).changeHouse(wish); }).isEmpty());
  BOOST_TEST(on.words("undo") == "&Undo: house rule lean-most of Ostrel Exchange");
  on.press("undo");
  BOOST_TEST(venue().house.size() == first.house.size());
  BOOST_TEST((venue().lowSteel == other.lowSteel));
  BOOST_TEST(on.words("undo") == "&Undo: edit Ostrel Exchange");
  on.press("undo");
  BOOST_TEST((venue().lowSteel == first.lowSteel), on.trouble());
  on.press("redo");
  on.press("redo");
  BOOST_TEST((venue().lowSteel == other.lowSteel));
  BOOST_TEST(venue().house.size() == first.house.size() + 1);
}

BOOST_AUTO_TEST_CASE(what_somebody_else_changed_since_is_left_alone_and_said) {
  Undoing on;
  BOOST_TEST_REQUIRE(on.lower().isEmpty());
  const auto file = on.folder.filePath(QStringLiteral("tour.sqlite"));
  Window second(openStoreSource({.store = file, .asOf = QDate(2027, 3, 20)}));
  BOOST_TEST_REQUIRE(hangbook::testing::waitUntil([&] { return !second.session().busy(); }));
  const options::Choice now = *findChoice(second.session().overview(), on.show, QStringLiteral("left"));
  ChoiceRequest theirs{on.show, now.hang, now.key, now.setting, ide, QStringLiteral("as told"), now.revision};
  theirs.setting.trimM -= 0.01;
  second.session().work().start(
      &second, [source = second.session().source(), theirs](Watch&) { return source->choose(theirs), true; },
      [](bool) {}, [](const std::exception_ptr& what) { BOOST_ERROR(wordsFor(what, {}).toStdString()); });
  BOOST_TEST_REQUIRE(hangbook::testing::waitUntil([&] { return !second.session().busy(); }));
  on.press("undo");
  BOOST_TEST(on.trouble().find("changed again since") != std::string::npos, on.trouble());
  BOOST_TEST(on.trim() == theirs.setting.trimM);
  BOOST_TEST(!on.child<QAction>("undo")->isEnabled());
}

BOOST_AUTO_TEST_CASE(a_dead_unit_is_swapped_once_all_that_changes_is_told_and_swapped_back) {
  Undoing on;
  const auto unit = [&](const QString& serial) {
    for (const fleet::Unit& each : on.window.session().overview().units) {
      if (each.serial == serial) {
        return each;
      }
    }
    return fleet::Unit{};
  };
  on.window.goTo(QStringLiteral("build"));
  on.settle();
  const QString mb001 = QStringLiteral("MB001");
  const int before = on.choice()->revision;
  const fleet::Unit dead = unit(mb001);
  const auto beside = store::Store::open(on.folder.filePath(QStringLiteral("tour.sqlite")));
  actions::HungFor hung{on.show.tour, on.show.show, QStringLiteral("left"), {}};
  const int place = static_cast<int>(on.choice()->key.stack.indexOf(dead.type)) + 1;
  hung.serials[place] = mb001;
  actions::recordHung(*beside, hung, ide);
  const auto hangs = [&] { return actions::hungNow(*beside, hung).serials.at(place); };
  on.child<QPushButton>("buildSwap")->click();
  auto* typed = on.child<QComboBox>("swapDead");
  typed->setFocus();
  typed->lineEdit()->setText(dead.serial); // as a scanner types it
  QTest::keyClick(typed->lineEdit(), Qt::Key_Return);
  Q_EMIT typed->lineEdit()->editingFinished();
  on.settle();
  on.settle();
  const auto* stand = on.child<QComboBox>("swapStand");
  BOOST_TEST_REQUIRE(stand->currentIndex() == 0);
  const QString serial = stand->currentData().toString();
  const QString stood = unit(serial).place;
  BOOST_TEST(on.child<QLabel>("swapAbout")
                 ->text()
                 .contains(QStringLiteral("Hang left: revision %1").arg(before + 1)));
  auto* accept = on.child<QPushButton>("swapAccept");
  on.child<QComboBox>("swapBy")->setEditText(ide);
  BOOST_TEST(!accept->isEnabled()); // no reason
  on.child<QLineEdit>("swapReason")->setText(QStringLiteral("horn rattles"));
  BOOST_TEST_REQUIRE(accept->isEnabled());
  BOOST_TEST(on.choice()->revision == before); // nothing until then
  accept->click();
  on.settle();
  BOOST_TEST((unit(mb001).state == fleet::UnitState::quarantined));
  BOOST_TEST((unit(serial).place == dead.place));
  BOOST_TEST((hangs() == serial)); // it hangs where the dead one was recorded
  BOOST_TEST(on.choice()->revision == before + 1);
  on.press("undo");
  BOOST_TEST((unit(mb001).state == dead.state), on.trouble());
  BOOST_TEST((unit(serial).place == stood));
  BOOST_TEST((hangs() == mb001));
  BOOST_TEST(on.choice()->revision == before + 2); // its sheets are outdated once more
  on.press("redo");
  BOOST_TEST((unit(mb001).state == fleet::UnitState::quarantined), on.trouble());
}

BOOST_AUTO_TEST_CASE(an_import_goes_back_by_name_and_not_over_what_was_changed_since) {
  Undoing on;
  const QString name = on.folder.filePath(QStringLiteral("halls.csv"));
  QFile file(name);
  BOOST_TEST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("record,name,time zone,low steel\n"
             "venue,Ostrel Exchange,Europe/Dublin,12.5\n"
             "venue,Curlew Hall,Europe/London,8\n");
  file.close();
  ImportWish wish;
  wish.kind = exchange::Kind::venues;
  wish.file = name;
  wish.by = ide;
  wish.write = true;
  const auto take = [&] {
    BOOST_TEST(on.write([wish](Source& source) { source.importFile(wish); }).isEmpty());
  };
  const auto venue = [&](const QString& of) { return findVenue(on.window.session().overview(), of); };
  take();
  BOOST_TEST((venue(hall)->lowSteel == metres(12.5)));
  auto* undo = on.child<QAction>("undo");
  BOOST_TEST(undo->text().toStdString() == "&Undo: import of halls.csv");
  undo->trigger();
  on.settle();
  BOOST_TEST((venue(hall)->lowSteel == metres(13.5)));
  BOOST_TEST(venue(QStringLiteral("Curlew Hall")) == nullptr);
  on.child<QAction>("redo")->trigger();
  on.settle();
  BOOST_TEST(venue(QStringLiteral("Curlew Hall")) != nullptr);

  // Somebody else changes what came in.
  const auto other = store::Store::open(on.folder.filePath(QStringLiteral("tour.sqlite")), {});
  venue::Venue changed = *store::loadVenue(*other, QStringLiteral("Curlew Hall"));
  changed.access = QStringLiteral("by boat");
  store::save(*other, changed);
  QString refused;
  Session& session = on.window.session();
  session.work().start(
      &session,
      [source = session.source()](Watch&) {
        editsOf(*source).undo();
        return true;
      },
      [](bool) {}, [&](const std::exception_ptr& what) { refused = wordsFor(what, {}); });
  on.settle();
  BOOST_TEST(refused.contains(QStringLiteral("venue “Curlew Hall”")), refused.toStdString());
  session.reload();
  on.settle();
  BOOST_TEST((venue(hall)->lowSteel == metres(12.5))); // all of the file stays
}

BOOST_AUTO_TEST_SUITE_END()
