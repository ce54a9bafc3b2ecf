// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader is told: the tree of accessible objects, not that of widgets.
#include <boost/test/unit_test.hpp>

#include <map>
#include <set>

#include <QAccessible>
#include <QCheckBox>
#include <QLineEdit>
#include <QVBoxLayout>

#include "desk/frame/place.h"
#include "every_dialog.h"
#include "opened.h"

using namespace hangbook;
using namespace hangbook::desk;
using namespace hangbook::testing;

namespace {

/// Roles that take input, and lists in which one moves about.
const std::set<QAccessible::Role> takesInput{
    QAccessible::EditableText,   QAccessible::ComboBox, QAccessible::CheckBox,
    QAccessible::RadioButton,    QAccessible::Button,   QAccessible::SpinBox,
    QAccessible::Slider,         QAccessible::Dial,     QAccessible::ButtonMenu,
    QAccessible::ButtonDropDown, QAccessible::PageTab,  QAccessible::Table,
    QAccessible::List,           QAccessible::Tree};
/// Their inside is their own matter: cells, the field of a box, its pop-up list.
const std::set<QAccessible::Role> closed{QAccessible::Table,   QAccessible::List,     QAccessible::Tree,
                                         QAccessible::SpinBox, QAccessible::ComboBox, QAccessible::ScrollBar};

struct Walk {
  int named = 0;
  QStringList wrong{};

  void from(QAccessibleInterface& parent) {
    std::map<std::pair<int, QString>, int> alike;
    for (int i = 0; i < parent.childCount(); ++i) {
      QAccessibleInterface* child = parent.child(i);
      if (child == nullptr || !child->isValid() || child->state().invisible) {
        continue;
      }
      if (takesInput.count(child->role()) > 0) {
        look(*child, alike);
      }
      if (closed.count(child->role()) == 0) {
        from(*child);
      }
    }
  }

private:
  void look(QAccessibleInterface& it, std::map<std::pair<int, QString>, int>& alike) {
    const QString name = it.text(QAccessible::Name).trimmed();
    const QString which =
        QStringLiteral("%1 “%2” (%3)")
            .arg(
                QString::fromLatin1(it.object() != nullptr ? it.object()->metaObject()->className() : "part"),
                name, it.object() != nullptr ? it.object()->objectName() : QString());
    if (name.isEmpty()) {
      wrong.push_back(which + QStringLiteral(" has no name"));
    } else if (++alike[{it.role(), name}] > 1) {
      wrong.push_back(which + QStringLiteral(" is called as its neighbour"));
    }
    ++named;
  }
};

Walk walked(QObject& root) {
  Walk walk;
  QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(&root);
  BOOST_TEST_REQUIRE(interface != nullptr);
  walk.from(*interface);
  return walk;
}

} // namespace

BOOST_AUTO_TEST_SUITE(accessible)

BOOST_AUTO_TEST_CASE(the_walk_finds_what_has_no_name_or_its_neighbours) {
  QWidget sheet;
  auto* in = new QVBoxLayout(&sheet);
  in->addWidget(new QLineEdit);
  in->addWidget(new QCheckBox(QStringLiteral("Steel")));
  in->addWidget(new QCheckBox(QStringLiteral("Steel")));
  sheet.show();
  const Walk walk = walked(sheet);
  BOOST_TEST(walk.named == 3);
  BOOST_TEST(walk.wrong.size() == 2);
}

BOOST_AUTO_TEST_CASE(a_screen_reader_is_told_a_name_for_all_that_takes_input) {
  Opened opened;
  for (Place* place : opened.window.places()) {
    BOOST_TEST_CONTEXT(place->objectName().toStdString()) {
      opened.window.goTo(place->objectName());
      opened.settle();
      const Walk walk = walked(*place);
      BOOST_TEST(walk.named > 0);
      BOOST_TEST(walk.wrong.isEmpty(), walk.wrong.join(QStringLiteral("; ")).toStdString());
    }
  }
  const Walk whole = walked(opened.window);
  BOOST_TEST(whole.wrong.isEmpty(), whole.wrong.join(QStringLiteral("; ")).toStdString());
}

BOOST_AUTO_TEST_CASE(and_so_it_is_in_dialogs) {
  OnDemo on;
  for (const OneDialog& each : everyDialog(on)) {
    BOOST_TEST_CONTEXT(each.name.toStdString()) {
      showFilled(on, each);
      const Walk walk = walked(*each.dialog);
      BOOST_TEST(walk.named > 1);
      BOOST_TEST(walk.wrong.isEmpty(), walk.wrong.join(QStringLiteral("; ")).toStdString());
      each.dialog->hide();
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
