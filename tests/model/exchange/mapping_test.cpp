// SPDX-License-Identifier: GPL-3.0-or-later
// Lists as they really are: a title above, other headings, headings twice or none, mixed forms of dates.
#include <boost/test/unit_test.hpp>

#include "demo_data.h"
#include "exchange/import.h"

using namespace hangbook::exchange;

namespace {

const Importer importer{QStringLiteral("Ide Quarrel"), QDateTime(QDate(2027, 3, 20), QTime(9, 0), Qt::UTC)};

const QByteArray list = "Gear of the north yard;;;;\n"
                        "\n"
                        "Serial No.;Item;Where;Tested;Tested\n"
                        "H9001;Quernstone two;warehouse bay 9;21.05.2026;ok\n"
                        "H9002;Quernstone two;warehouse bay 9;2026-05-22;\n";

CsvForm fitting() {
  CsvForm form;
  form.dateFormat = QStringLiteral("dd.MM.yyyy; yyyy-MM-dd");
  form.mapping = {3,
                  {{QStringLiteral("serial no."), QStringLiteral("serial")},
                   {QStringLiteral("Item"), QStringLiteral("type")},
                   {QStringLiteral("Where"), QStringLiteral("place")},
                   {QStringLiteral("#4"), QStringLiteral("last examination")},
                   {QStringLiteral("#5"), {}}},
                  {{QStringLiteral("kind"), QStringLiteral("hoist")}}};
  return form;
}

std::string firstFault(const QByteArray& bytes, const CsvForm& form) {
  const Import import = readFile(Kind::units, bytes, demoData(), importer, form);
  BOOST_TEST((import.after == demoData())); // nothing is taken over
  return import.faults.empty() ? std::string() : text(import.faults.front()).toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(mapping)

BOOST_AUTO_TEST_CASE(a_list_comes_in_as_it_is) {
  const Import import = readFile(Kind::units, list, demoData(), importer, fitting());
  BOOST_TEST_REQUIRE(import.faults.empty(), faultsOf(import).toStdString());
  BOOST_TEST(import.headings.join(u'|').toStdString() == "Serial No.|Item|Where|Tested|Tested");
  BOOST_TEST_REQUIRE(import.changes.added.units.size() == 2u);
  BOOST_TEST(import.changes.added.units[0].serial.toStdString() == "H9001");
  BOOST_TEST((import.changes.added.units[0].kind == hangbook::fleet::UnitKind::hoist));
  BOOST_TEST_REQUIRE(import.changes.added.examinations.size() >= 2u);
  BOOST_TEST((import.changes.added.examinations[0].date == QDate(2026, 5, 21)));
}

BOOST_AUTO_TEST_CASE(what_becomes_another_figure_is_told_with_its_line) {
  const Import first = readFile(Kind::units, list, demoData(), importer, fitting());
  const Import again = readFile(Kind::units, QByteArray(list).replace("bay 9;2026", "bay 8;2026"),
                                first.after, importer, fitting());
  BOOST_TEST_REQUIRE(again.differences.size() == 1u);
  const Difference expected{5,
                            QStringLiteral("unit"),
                            QStringLiteral("H9002"),
                            QStringLiteral("place"),
                            QStringLiteral("warehouse bay 9"),
                            QStringLiteral("warehouse bay 8")};
  BOOST_TEST((again.differences[0] == expected));
  BOOST_TEST(readFile(Kind::units, list, first.after, importer, fitting()).differences.empty());
}

BOOST_AUTO_TEST_CASE(faults_speak_of_the_file_as_it_is) {
  BOOST_TEST(firstFault(QByteArray(list).replace("21.05.2026", "21/05/2026"), fitting())
                 .find("line 4, column Tested") == 0u);
  CsvForm form = fitting();
  form.mapping.columns[0].from = QStringLiteral("Serial");
  BOOST_TEST(firstFault(list, form).find("line 3: read “Serial”") == 0u, firstFault(list, form));
  form = fitting();
  form.mapping.columns[3].from = QStringLiteral("Tested"); // stands twice
  BOOST_TEST(firstFault(list, form).find("#4") != std::string::npos, firstFault(list, form));
  form = fitting();
  form.mapping.headingLine = 2; // empty
  BOOST_TEST(firstFault(list, form).find("line 2") == 0u, firstFault(list, form));
  form = fitting();
  form.mapping.headingLine = 90; // beyond the end
  BOOST_TEST(!firstFault(list, form).empty());
  form = fitting();
  form.mapping.columns.push_back({QStringLiteral("#1"), QStringLiteral("owner")}); // a column twice
  BOOST_TEST(firstFault(list, form).find("each column once") != std::string::npos);
  form = fitting();
  form.mapping.everywhere.push_back({QStringLiteral("place"), QStringLiteral("bay 1")}); // the file has it
  BOOST_TEST(firstFault(list, form).find("does not have") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_date_that_two_forms_read_unlike_is_refused) {
  CsvForm form = fitting();
  form.dateFormat = QStringLiteral("dd/MM/yyyy;MM/dd/yyyy;dd.MM.yyyy;yyyy-MM-dd");
  const std::string fault = firstFault(QByteArray(list).replace("21.05.2026", "03/04/2026"), form);
  BOOST_TEST(fault.find("2026-04-03 or 2026-03-04") != std::string::npos, fault);
  // One that only one of them can read is clear.
  BOOST_TEST(
      readFile(Kind::units, QByteArray(list).replace("21.05.2026", "21/05/2026"), demoData(), importer, form)
          .faults.empty());
}

BOOST_AUTO_TEST_CASE(a_unit_in_their_heading_stays) {
  CsvForm form;
  form.mapping.columns = {{QStringLiteral("No"), QStringLiteral("serial")},
                          {QStringLiteral("Weight (lb)"), QStringLiteral("weighed")}};
  const Import import =
      readFile(Kind::units, "No,kind,type,place,Weight (lb)\nX1,hoist,Quernstone two,bay,100\n", demoData(),
               importer, form);
  BOOST_TEST_REQUIRE(import.faults.empty(), faultsOf(import).toStdString());
  BOOST_TEST(
      hangbook::inKilograms(*import.changes.added.units.front().weighed) == 45.359237,
      boost::test_tools::tolerance(1e-12)); // 1 lb = 0.45359237 kg, international yard and pound (1959)
}

BOOST_AUTO_TEST_CASE(kept_and_read_again_it_is_the_same) {
  const Mapping mapping = fitting().mapping;
  BOOST_TEST((mappingFrom(mappingText(mapping)) == mapping));
  BOOST_CHECK_THROW(mappingFrom("{}"), hangbook::Error);
  BOOST_CHECK_THROW(mappingFrom("no json"), hangbook::Error);
}

BOOST_AUTO_TEST_SUITE_END()
