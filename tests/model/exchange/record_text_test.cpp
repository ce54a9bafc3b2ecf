// SPDX-License-Identifier: GPL-3.0-or-later
// Records with their parts as texts: the demo's makers' data.
#include <algorithm>

#include <boost/test/unit_test.hpp>

#include "demo/demo.h"
#include "exchange/record_text.h"

using namespace hangbook;
using namespace hangbook::exchange;

namespace {

const Data& makers() {
  static const Data data = [] {
    Data read;
    for (const demo::File& file : demo::files()) {
      if (kindFrom(file.kind) == Kind::types) {
        read = readFile(Kind::types, file.bytes, read, {QStringLiteral("Ada Fenn"), {}}).after;
      }
    }
    return read;
  }();
  return data;
}

const RecordName marram{Kind::types, QStringLiteral("table"), QStringLiteral("Marram")};

const RecordFault& only(const RecordRead& read) {
  BOOST_TEST_REQUIRE(read.faults.size() == 1u);
  BOOST_TEST((read.after == makers()));
  return read.faults.front();
}

} // namespace

BOOST_AUTO_TEST_SUITE(record_text)

BOOST_AUTO_TEST_CASE(every_record_of_the_demo_reads_back_to_the_bit_with_its_parts) {
  int records = 0;
  int rows = 0;
  const auto each = [&](const char* sort, const auto& list) {
    for (const auto& one : list) {
      const RecordName name{Kind::types, QString::fromLatin1(sort), one.name};
      const RecordText text = recordText(name, makers());
      BOOST_TEST_REQUIRE(!text.none());
      const RecordRead read = readRecord(name, text, makers());
      BOOST_TEST(read.faults.empty(), one.name.toStdString());
      BOOST_TEST((read.after.catalogue == makers().catalogue), one.name.toStdString());
      const auto sameSockets =
          std::ranges::is_permutation(read.after.cabling.sockets, makers().cabling.sockets);
      BOOST_TEST(sameSockets);
      const auto sameEnds = std::ranges::is_permutation(read.after.cabling.ends, makers().cabling.ends);
      BOOST_TEST(sameEnds);
      ++records;
      for (const auto& part : text.parts) {
        rows += static_cast<int>(part.size());
      }
    }
  };
  each("cabinet", makers().catalogue.cabinets);
  each("bar", makers().catalogue.bars);
  each("hoist", makers().catalogue.hoists);
  each("chain", makers().catalogue.chains);
  each("hardware", makers().catalogue.hardware);
  each("cart", makers().catalogue.carts);
  each("table", makers().catalogue.tables);
  each("connector", makers().cabling.connectors);
  BOOST_TEST(records > 20);
  BOOST_TEST(rows > 25);
}

BOOST_AUTO_TEST_CASE(a_joint_that_is_taken_out_is_gone_and_another_count_stands) {
  RecordText text = recordText(marram, makers());
  BOOST_TEST_REQUIRE(text.parts.size() == 2u);
  const std::size_t joints = text.parts[0].size();
  text.parts[0].pop_back();
  text.parts[1][0][2] = QStringLiteral("4");
  const RecordRead read = readRecord(marram, text, makers());
  BOOST_TEST(read.faults.empty());
  const auto* table = catalogue::find(read.after.catalogue.tables, marram.name);
  BOOST_TEST(table->joins.size() == joints - 1);
  BOOST_TEST(table->counts[0].most == 4);
}

BOOST_AUTO_TEST_CASE(faults_of_parts_name_part_row_and_field) {
  RecordText text = recordText(marram, makers());
  text.parts[1][1][1] = QStringLiteral("9"); // more than the most
  RecordFault fault = only(readRecord(marram, text, makers()));
  BOOST_TEST((fault.part == std::optional<std::size_t>(1)));
  BOOST_TEST(fault.row == 1);
  BOOST_TEST(fault.field.toStdString() == "most");

  text = recordText(marram, makers());
  text.parts[0][2][1] = QStringLiteral("Marram thing");
  fault = only(readRecord(marram, text, makers()));
  BOOST_TEST((fault.part == std::optional<std::size_t>(0)));
  BOOST_TEST(fault.row == 2);
  BOOST_TEST(fault.field.toStdString() == "below");

  text = recordText(marram, makers());
  text.parts[0].push_back(text.parts[0].front()); // twice the same
  fault = only(readRecord(marram, text, makers()));
  BOOST_TEST(fault.row == static_cast<int>(text.parts[0].size()) - 1);
  BOOST_TEST(fault.field.isEmpty()); // the row as a whole
  BOOST_TEST(fault.expected.toStdString() == "each join once");
}

BOOST_AUTO_TEST_CASE(a_new_record_needs_a_name_that_is_not_taken) {
  const RecordName fresh{Kind::types, QStringLiteral("table"), {}};
  RecordText text = recordText(marram, makers());
  RecordFault fault = only(readRecord(fresh, text, makers()));
  BOOST_TEST(fault.field.toStdString() == "name");
  BOOST_TEST(fault.read.toStdString() == "Marram");
  text.own[0].clear();
  BOOST_TEST(!readRecord(fresh, text, makers()).faults.empty());
  text.own[0] = QStringLiteral("Marram short");
  const RecordRead read = readRecord(fresh, text, makers());
  BOOST_TEST(read.faults.empty());
  const auto* copy = catalogue::find(read.after.catalogue.tables, QStringLiteral("Marram short"));
  const auto* was = catalogue::find(makers().catalogue.tables, marram.name);
  BOOST_TEST_REQUIRE(copy != nullptr);
  BOOST_TEST((copy->joins == was->joins));
  BOOST_TEST((copy->counts == was->counts));
}

BOOST_AUTO_TEST_CASE(only_a_loom_has_ends) {
  const auto& hardware = makers().catalogue.hardware;
  const auto other = std::ranges::find_if(
      hardware, [](const auto& each) { return each.kind != catalogue::HardwareKind::loom; });
  BOOST_TEST_REQUIRE((other != hardware.end()));
  const RecordName name{Kind::types, QStringLiteral("hardware"), other->name};
  RecordText text = recordText(name, makers());
  text.parts[0].push_back({QStringLiteral("A"), {}, {}, {}, {}, {}});
  const RecordFault fault = only(readRecord(name, text, makers()));
  BOOST_TEST(fault.expected.contains(QStringLiteral("kind loom")), fault.expected.toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
