// SPDX-License-Identifier: GPL-3.0-or-later
// Which unit hangs where, recorded in the window by scan and by keys alone, refused with the use case's
// words, undone by name, and told where another show of the same days has the unit too.
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTest>

#include "actions/hung.h"
#include "desk/building/hung_model.h"
#include "on_demo.h"
#include "store/calendar_store.h"
#include "store/store.h"

using namespace hangbook;
using namespace hangbook::desk;

namespace {

struct Hanging : hangbook::testing::OnDemo {
  Hanging() : beside(store::Store::open(folder.filePath(QStringLiteral("tour.sqlite")))) {
    hang = {
        window.session().overview().tours.front().name, QStringLiteral("Ostrel"), QStringLiteral("left"), {}};
    window.session().setShow({hang.tour, hang.show}, hang.hang);
    window.goTo(QStringLiteral("build"));
    settle();
    stack = findChoice(window.session().overview(), {hang.tour, hang.show}, hang.hang)->key.stack;
  }
  calendar::HungSerials recorded() { return actions::hungNow(*beside, hang).serials; }
  /// A ready unit of the type, the n-th.
  QString unitOf(const QString& type, int n = 0) {
    for (const fleet::Unit& each : window.session().overview().units) {
      if (each.type == type && each.state == fleet::UnitState::ready && n-- == 0) {
        return each.serial;
      }
    }
    return {};
  }
  QString barType() {
    return findChoice(window.session().overview(), {hang.tour, hang.show}, hang.hang)->key.bar;
  }
  void open() {
    child<QPushButton>("buildHung")->click();
    settle();
  }
  /// As a scanner types it, into the field that has the focus.
  void scan(const QString& serial) {
    auto* code = child<QLineEdit>("hungCode");
    code->selectAll();
    QTest::keyClicks(code, serial);
    QTest::keyClick(code, Qt::Key_Return);
    settle();
  }
  QString cell(int row, HungColumn column) {
    return child<QTableView>("hungPlaces")->model()->index(row, static_cast<int>(column)).data().toString();
  }
  int selected() { return child<QTableView>("hungPlaces")->currentIndex().row(); }
  std::string says() { return child<QLabel>("hungSays")->text().toStdString(); }
  void accept() {
    child<QComboBox>("hungBy")->setEditText(QStringLiteral("Ide Quarrel"));
    BOOST_TEST_REQUIRE(child<QPushButton>("hungAccept")->isEnabled());
    child<QPushButton>("hungAccept")->click();
    settle();
    settle();
  }

  std::unique_ptr<store::Store> beside;
  actions::HungFor hang;
  QStringList stack;
};

} // namespace

BOOST_AUTO_TEST_SUITE(hung)

BOOST_AUTO_TEST_CASE(units_are_scanned_from_the_bar_down_and_recorded_only_when_it_is_said) {
  Hanging on;
  on.open();
  BOOST_TEST(on.selected() == 0);
  BOOST_TEST(on.cell(0, HungColumn::type).toStdString() == on.barType().toStdString());
  BOOST_TEST(on.cell(1, HungColumn::missing).toStdString() == "not recorded by serial");
  BOOST_TEST(!on.child<QPushButton>("hungAccept")->isEnabled());
  const QString bar = on.unitOf(on.barType());
  const QString first = on.unitOf(on.stack[0]);
  on.scan(bar);
  BOOST_TEST(on.selected() == 1);
  on.scan(first.toLower()); // as somebody types it
  BOOST_TEST(on.selected() == 2);
  BOOST_TEST(on.cell(1, HungColumn::serial).toStdString() == first.toStdString());
  BOOST_TEST(on.cell(1, HungColumn::from).toStdString() == "maker's figure");
  BOOST_TEST(on.cell(1, HungColumn::mass).endsWith(QStringLiteral(" kg")));
  BOOST_TEST(on.child<QLabel>("hungSum")->text().startsWith(
      QStringLiteral("2 of %1 places recorded").arg(on.stack.size() + 1)));
  BOOST_TEST(on.recorded().empty()); // nothing until then
  on.accept();
  BOOST_TEST((on.recorded() == calendar::HungSerials{{0, bar}, {1, first}}));
}

BOOST_AUTO_TEST_CASE(what_may_not_hang_there_is_refused_in_words_and_changes_nothing) {
  Hanging on;
  const QString first = on.unitOf(on.stack[0]);
  on.open();
  on.scan(first);
  BOOST_TEST(on.says().find("the bar: a " + on.barType().toStdString() + " is expected") != std::string::npos,
             on.says());
  BOOST_TEST(on.selected() == 0);
  on.scan(QStringLiteral("nobody"));
  BOOST_TEST(on.says().find("there is no unit") != std::string::npos, on.says());
  on.child<QTableView>("hungPlaces")->selectRow(1);
  on.scan(first);
  on.child<QTableView>("hungPlaces")->selectRow(static_cast<int>(on.stack.lastIndexOf(on.stack[0])) + 1);
  if (on.stack.count(on.stack[0]) > 1) {
    on.scan(first);
    BOOST_TEST(on.says().find("already") != std::string::npos, on.says());
  }
  BOOST_TEST(on.cell(0, HungColumn::serial).toStdString() == "–");
  BOOST_TEST(on.recorded().empty());
}

BOOST_AUTO_TEST_CASE(a_place_is_taken_back_by_keys_and_what_was_recorded_is_undone_by_name) {
  Hanging on;
  const QString bar = on.unitOf(on.barType());
  on.open();
  on.scan(bar);
  auto* places = on.child<QTableView>("hungPlaces");
  places->selectRow(0);
  places->setFocus();
  QTest::keyClick(places, Qt::Key_Delete);
  on.settle();
  BOOST_TEST(on.cell(0, HungColumn::serial).toStdString() == "–");
  BOOST_TEST(!on.child<QPushButton>("hungAccept")->isEnabled()); // as it stands
  on.scan(bar);
  on.accept();
  BOOST_TEST(on.recorded().size() == 1U);
  const auto* undo = on.child<QAction>("undo");
  BOOST_TEST(undo->text().contains(QStringLiteral("units by serial of left at Ostrel")),
             undo->text().toStdString());
  on.child<QAction>("undo")->trigger();
  on.settle();
  BOOST_TEST(on.recorded().empty());
  on.child<QAction>("redo")->trigger();
  on.settle();
  BOOST_TEST(on.recorded().size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_show_of_the_same_days_that_has_the_unit_too_is_named) {
  Hanging on;
  calendar::Show here = *store::loadShow(*on.beside, on.hang.tour, on.hang.show);
  calendar::Show other = *store::loadShow(*on.beside, on.hang.tour, QStringLiteral("Hallowfen"));
  other.awayFrom = here.awayTo; // the same day
  store::save(*on.beside, other);
  const auto choice = findChoice(on.window.session().overview(), {on.hang.tour, other.name}, on.hang.hang);
  BOOST_TEST_REQUIRE(choice != nullptr);
  const QString bar = on.unitOf(choice->key.bar);
  actions::recordHung(*on.beside, {on.hang.tour, other.name, on.hang.hang, {{0, bar}}},
                      QStringLiteral("Ide Quarrel"));
  on.open();
  BOOST_TEST_REQUIRE(on.barType().toStdString() == choice->key.bar.toStdString());
  on.scan(bar);
  BOOST_TEST(on.says().find("is recorded at Hallowfen") != std::string::npos, on.says());
  on.accept();
  on.open();
  BOOST_TEST(on.cell(0, HungColumn::missing).contains(QStringLiteral("is recorded at Hallowfen")));
}

BOOST_AUTO_TEST_SUITE_END()
