// SPDX-License-Identifier: GPL-3.0-or-later
// Each fault with its line and column, on top of the demo's data.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "demo_data.h"

namespace data = boost::unit_test::data;
using namespace hangbook::exchange;

namespace {

struct Wrong {
  const char* what;
  Kind kind;
  const char* file;
  int line;
  const char* column;
  const char* read;
  const char* expected; ///< a part of it
};

std::ostream& operator<<(std::ostream& out, const Wrong& wrong) {
  return out << wrong.what;
}

const std::vector<Wrong> wrongs = {
    {"unknown heading", Kind::units, "serial,type,colour\nX1,Marram bass,red\n", 1, "colour", "colour",
     "a heading of a unit"},
    {"unknown heading beside records", Kind::units, "record,serial,type,colour\nunit,X1,Marram bass,red\n", 1,
     "colour", "colour", "dictionary"},
    {"no such record", Kind::units, "record,serial,type\ncabinet,X1,Marram bass\n", 2, "record", "cabinet",
     "one of: unit, examination rule, place, examination"},
    {"filled cell of another sort", Kind::units, "record,serial,type,months\nunit,X1,Marram bass,6\n", 2,
     "months", "6", "empty cell"},
    {"key heading missing", Kind::units, "type,place\nMarram bass,yard\n", 1, "", "", "a column \"serial\""},
    {"needed heading missing", Kind::units, "serial,place\nX1,yard\n", 2, "type", "", "a column \"type\""},
    {"needed cell empty", Kind::units, "serial,type\nX1,\n", 2, "type", "", "unit needs it"},
    {"type unknown", Kind::units, "serial,type\nX1,Marram middle\n", 2, "type", "Marram middle",
     "in the store"},
    {"kind against type", Kind::units, "serial,type,kind\nX1,Marram bass,hoist\n", 2, "type", "Marram bass",
     "a type of hoist"},
    {"word unknown", Kind::units, "serial,type,state\nX1,Marram bass,lost\n", 2, "state", "lost",
     "one of: ready"},
    {"cart unknown", Kind::units, "serial,type,cart\nX1,Marram bass,BC99\n", 2, "cart", "BC99",
     "serial of a cart"},
    {"cart is no cart", Kind::units, "serial,type,cart\nX1,Marram bass,MB001\n", 2, "cart", "MB001",
     "serial of a cart"},
    {"named twice", Kind::units, "serial,type\nX1,Marram bass\nX2,Marram bass\nX1,Marram bass\n", 4, "serial",
     "X1", "line 2 already"},
    {"mass absurd", Kind::units, "serial,type,weighed [kg]\nX1,Marram bass,92000\n", 2, "weighed [kg]",
     "92000", "0.001 to 5000 kg"},
    {"mass below", Kind::types, "name,mass (g)\nMarram bass,90\n", 2, "mass (g)", "90", "0.1 to 5000 kg"},
    {"bare ton", Kind::venues, "venue,name,x,y,z,capacity\nTallow Hall,P1,0,0,6,1 ton\n", 2, "capacity",
     "1 ton", "ton"},
    {"not a figure", Kind::venues, "venue,name,x,y,z\nTallow Hall,P1,left,0,6\n", 2, "x", "left", ""},
    {"wrong unit in a heading", Kind::venues, "venue,name,x [kg],y,z\nTallow Hall,P1,0,0,6\n", 1, "x [kg]",
     "kg", ""},
    {"unit of a plain number", Kind::venues, "name,time zone,latitude [m]\nV,Europe/London,52\n", 1,
     "latitude [m]", "m", "the unit °"},
    {"zone of time", Kind::venues, "name,time zone\nV,Europe/Tamberwick\n", 2, "time zone",
     "Europe/Tamberwick", "IANA"},
    {"venue unknown", Kind::venues, "venue,name,x,y,z\nNowhere,P1,0,0,6\n", 2, "venue", "Nowhere",
     "a venue that is"},
    {"zone unknown", Kind::venues, "venue,name,x,y,z,zone\nTallow Hall,P1,0,0,6,back truss\n", 2, "zone",
     "back truss", "a zone of this venue"},
    {"profile falls back", Kind::venues, "venue,name,profile\nTallow Hall,floor,4 0; 3 1\n", 2, "profile",
     "4 0; 3 1", "x rising"},
    {"profile of one place", Kind::venues, "venue,name,profile\nTallow Hall,floor,4 0\n", 2, "profile", "4 0",
     "two places"},
    {"part of a front line", Kind::venues,
     "venue,name,profile,front x,front y,width,radius\nTallow Hall,floor,0 0; 3 1,9,0,12,0\n", 2, "bearing",
     "", "a front line needs"},
    {"front line and ends across", Kind::venues,
     "venue,name,profile,front x,front y,bearing,width,radius,y to\nTallow Hall,floor,0 0; 3 "
     "1,9,0,0,12,0,4\n",
     2, "y to", "4", "says how wide"},
    {"rows through the centre", Kind::venues,
     "venue,name,profile,front x,front y,bearing,width,radius\nTallow Hall,floor,0 0; 9 1,9,0,0,12,-8\n", 2,
     "radius", "-8", "a centre that no row reaches"},
    {"more than once round", Kind::venues,
     "venue,name,profile,front x,front y,bearing,width,radius\nTallow Hall,floor,0 0; 9 1,9,0,0,40,6\n", 2,
     "width", "40", "no more than once round"},
    {"place of one figure", Kind::types, "name,next pin\nMarram bass,0.62\n", 2, "next pin", "0.62",
     "x and z"},
    {"travel the wrong way round", Kind::types, "name,tilt travel\nMarram bar,20; -20\n", 2, "tilt travel",
     "20; -20", "the lower first"},
    {"most below least", Kind::types, "table,type,least,most\nMarram,Marram bass,5,2\n", 2, "most", "2",
     "no fewer"},
    {"joins a stranger", Kind::types, "table,above,below,joint\nMarram,Marram bass,Marram middle,pinned\n", 2,
     "below", "Marram middle", "a type of cabinet that is"},
    {"table unknown", Kind::types, "table,above,below,joint\nMorram,,Marram bass,pinned\n", 2, "table",
     "Morram", "a table that is"},
    {"not a date", Kind::shows,
     "tour,name,venue,from,to,away from,away to\n"
     "Lanternfish Parade 2027,X,Tallow Hall,2.4.2027,2027-04-02,2027-04-01,2027-04-03\n",
     2, "from", "2.4.2027", "2027-04-02"},
    {"no such day", Kind::shows,
     "tour,name,venue,from,to,away from,away to\n"
     "Lanternfish Parade 2027,X,Tallow Hall,2027-02-30,2027-04-02,2027-02-01,2027-04-03\n",
     2, "from", "2027-02-30", "a date"},
    {"ends before it begins", Kind::shows,
     "tour,name,venue,from,to,away from,away to\n"
     "Lanternfish Parade 2027,X,Tallow Hall,2027-04-03,2027-04-02,2027-04-01,2027-04-03\n",
     2, "to", "2027-04-02", "no earlier"},
    {"hour skipped", Kind::shows,
     "tour,name,venue,from,to,away from,away to,load-in\n"
     "Lanternfish Parade 2027,X,Tallow Hall,2027-03-28,2027-03-28,2027-03-28,2027-03-28,2027-03-28 01:30\n",
     2, "load-in", "2027-03-28 01:30", "skips"},
    {"hour repeated", Kind::shows,
     "tour,name,venue,from,to,away from,away to,load_in\n"
     "Lanternfish Parade 2027,X,Tallow Hall,2027-10-31,2027-10-31,2027-10-31,2027-10-31,2027-10-31 01:30\n",
     2, "load_in", "2027-10-31 01:30", "repeats"},
    {"tour unknown", Kind::shows,
     "tour,name,venue,from,to,away from,away to\n"
     "No Tour,X,Tallow Hall,2027-04-02,2027-04-02,2027-04-01,2027-04-03\n",
     2, "tour", "No Tour", "a tour that is"},
    {"point unknown", Kind::shows, "tour,show,name,points\nLanternfish Parade 2027,Ostrel,left,L1; L9\n", 2,
     "points", "L9", "a point or bridle of the show's venue"},
    {"point twice", Kind::shows, "tour,show,name,points\nLanternfish Parade 2027,Ostrel,left,L1; L1\n", 2,
     "points", "L1", "once"},
    {"mirrors itself", Kind::shows, "tour,show,name,mirrors\nLanternfish Parade 2027,Ostrel,left,left\n", 2,
     "mirrors", "left", "another hang"},
    {"house figure unknown", Kind::shows, "tour,figure,value\nLanternfish Parade 2027,luck,7\n", 2, "figure",
     "luck", "dynamic-factor"},
    {"chosen by without a choice", Kind::shows,
     "tour,show,name,chosen option,chosen by\nLanternfish Parade 2027,Grenmouth,left,,Orla Tench\n", 2,
     "chosen by", "Orla Tench", "an option"},
    {"examined tomorrow", Kind::units, "serial,type,last examination\nH1001,Quernstone one,2026-11-26\n", 2,
     "last examination", "2026-11-26", "not in the future"},
    {"no rule applies", Kind::units, "serial,type,last examination\nBC01,Bass cart,2026-11-20\n", 2,
     "last examination", "2026-11-20", "an examination rule for a cart"},
    {"certificate of nothing", Kind::units, "serial,type,certificate\nH1001,Quernstone one,QL1\n", 2,
     "certificate", "QL1", "the day"},
    {"corrects nothing", Kind::units,
     "serial,rule,date,corrects\nH1001,hoist yearly,2026-10-01,7b1c8e0e-58a1-4d06-9e5c-0f2f8e2f3a11\n", 2,
     "corrects", "7b1c8e0e-58a1-4d06-9e5c-0f2f8e2f3a11", "an entry that is"},
    {"mark that is no number", Kind::marks,
     "stack,bar,chain,mark,date,by\nMarram bass,Marram bar,Quernstone 22.5,12.5,2026-10-01,Orla Tench\n", 2,
     "mark", "12.5", "a whole number"},
    {"a cabinet has no such socket", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,left,6,out,Marram downfill,Marram loom 25,left 9,F,,\n",
     2, "socket", "out", "a socket of Marram downfill"},
    {"a loom has no such end", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,left,6,in,Marram bass,Marram loom 25,left 9,Z,,\n",
     2, "end", "Z", "an end of Marram loom 25"},
    {"no loom", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,left,6,in,Marram bass,Shackle 19,,A,,\n",
     2, "loom", "Shackle 19", "of the kind loom"},
    {"a connector that does not fit", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,left,6,in,Marram bass,Marram loom 25,left 9,F,,\n",
     2, "end", "F", "a Teasel 8, which Marram bass takes at \"in\"; this one has a Teasel 4"},
    {"an end in two cabinets", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,right,6,in,Marram bass,Marram loom 25,left 1,A,,\n",
     2, "end", "A", "once in a show"},
    {"a channel of no rack", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,left,6,in,Marram bass,Marram loom 25,left 9,A,,3\n",
     2, "rack", "", "whose channel 3"},
    {"a plug of no hang", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,middle,1,in,Marram bass,Marram loom 25,mid 1,A,,\n",
     2, "hang", "middle", "a hang of that show"},
    {"a plug of no cabinet", Kind::shows,
     "record,tour,show,hang,cabinet,socket,type,loom,label,end,rack,channel\nplug,Lanternfish Parade "
     "2027,Ostrel,left,0,in,Marram bass,Marram loom 25,left 9,A,,\n",
     2, "cabinet", "0", "1 to 1000"},
    {"an end of no loom", Kind::types, "record,loom,name,connector\nloom end,Shackle 19,A,Teasel 8\n", 2,
     "loom", "Shackle 19", "of the kind loom"},
    {"an end beyond its loom", Kind::types, "record,loom,name,reach\nloom end,Marram loom 25,A,25.1\n", 2,
     "reach", "25.1", "no more than the loom's length, 25"},
    {"a connector that nobody knows", Kind::types,
     "record,cabinet,name,connector\nsocket,Marram bass,in,Teasel 9\n", 2, "connector", "Teasel 9",
     "a kind of connector that is"},
    {"a shackle as long as a loom", Kind::types, "record,name,kind,length\nhardware,Shackle 19,shackle,25\n",
     2, "length", "25", "only a loom is longer"},
    {"name with a semicolon", Kind::types, "name,mass\n\"a;b\",90\n", 2, "name", "a;b",
     "without a semicolon"},
};

} // namespace

BOOST_AUTO_TEST_SUITE(exchange_faults)

BOOST_DATA_TEST_CASE(names_line_and_column, data::make(wrongs), wrong) {
  const Import import = readFile(wrong.kind, wrong.file, demoData(), somebody());
  BOOST_TEST_REQUIRE(import.faults.size() == 1U, faultsOf(import).toStdString());
  const Fault& fault = import.faults.front();
  BOOST_TEST(fault.line == wrong.line);
  BOOST_TEST(fault.column.toStdString() == wrong.column);
  BOOST_TEST(fault.read.toStdString() == wrong.read);
  BOOST_TEST(fault.expected.contains(QString::fromUtf8(wrong.expected)), fault.expected.toStdString());
  BOOST_TEST((import.after == demoData()));
  BOOST_TEST((import.changes.added == Data{}));
  BOOST_TEST((import.changes.changed == Data{}));
}

BOOST_AUTO_TEST_CASE(all_faults_of_a_file_are_told_at_once) {
  const Import import = readFile(
      Kind::units, "serial,type,weighed\nX1,Marram bass,heavy\nX2,Marram,1\nX3,,2\n", demoData(), somebody());
  BOOST_TEST_REQUIRE(import.faults.size() == 3U, faultsOf(import).toStdString());
  BOOST_TEST(import.faults[0].line == 2);
  BOOST_TEST(import.faults[1].line == 3);
  BOOST_TEST(import.faults[2].line == 4);
}

BOOST_AUTO_TEST_CASE(a_fact_is_not_changed) {
  Data data = demoData();
  auto& fact = data.examinations.front();
  fact.id = QUuid::createUuid();
  const QString file = QStringLiteral("serial,rule,date,result,entry\n%1,%2,%3,fail,%4\n")
                           .arg(fact.serial, fact.rule, fact.date.toString(Qt::ISODate),
                                fact.id.toString(QUuid::WithoutBraces));
  const Import import = readFile(Kind::units, file.toUtf8(), data, somebody());
  BOOST_TEST_REQUIRE(import.faults.size() == 1U, faultsOf(import).toStdString());
  BOOST_TEST(import.faults.front().column.toStdString() == "entry");
}

BOOST_AUTO_TEST_SUITE_END()
