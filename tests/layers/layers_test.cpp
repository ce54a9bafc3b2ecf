// SPDX-License-Identifier: GPL-3.0-or-later
// The layers, one way only. CMake's include roots make a forbidden include fail to compile in the module
// that lacks the link; this test also catches a link that was added where it must not be, and includes
// that go round the roots ("../").
#include <boost/test/unit_test.hpp>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "where.h"

namespace fs = std::filesystem;

namespace {

using Names = std::set<std::string>;

// What each layer may include of ours, besides itself.
const std::map<std::string, Names> allowed = {
    {"quantity", {}},
    {"hang", {"quantity"}},
    {"catalogue", {"quantity"}},
    {"venue", {"quantity", "catalogue"}},
    {"people", {"quantity"}},
    {"fleet", {"quantity", "catalogue", "people"}},
    {"calendar", {"quantity", "catalogue", "venue", "people", "fleet"}},
    {"options", {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar"}},
    {"build", {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar", "options"}},
    {"marks", {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar", "options"}},
    {"exchange",
     {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar", "options", "marks"}},
    {"reports",
     {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar", "options", "build", "marks"}},
    {"store", {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar", "options", "marks"}},
    {"actions",
     {"quantity", "hang", "catalogue", "venue", "people", "fleet", "calendar", "options", "marks", "store",
      "exchange"}},
};

// Libraries that only some layers may see. The key is a pattern on the included name.
struct Library {
  std::regex name;
  Names layers;
};

const std::vector<Library> libraries = {
    {std::regex("Q(t?Sql|Sql).*|QtSql/.*|sqlite3.*|libpq.*"), {"store"}},
    {std::regex("Eigen/.*"), {"hang"}},
    {std::regex("QtWidgets/.*|QtCharts/.*|Q(Widget|MainWindow|Dialog|Application|Label|Chart|ChartView)$"),
     {"desk", "client"}},
    {std::regex("QtGui/.*|QPainter|QFont|QColor|QImage|QPixmap|QPdfWriter"), {"reports", "desk", "client"}},
};
const Names noQt = {"quantity", "hang"};

std::string layerOf(const fs::path& relative) {
  auto part = relative.begin();
  const std::string top = part->string();
  if (top == "model") {
    return (++part)->string();
  }
  if (top == "client") {
    return relative.string().starts_with("client/desk/") ? "desk" : "client";
  }
  return top;
}

struct Include {
  std::string place;
  std::string layer;
  std::string name;
};

std::vector<Include> allIncludes() {
  const fs::path top = HANGBOOK_SOURCE_DIR;
  static const std::regex line(R"re(^\s*#\s*include\s*[<"]([^>"]+)[>"])re");
  std::vector<Include> found;
  for (const char* folder : {"model", "reports", "client"}) {
    if (!fs::exists(top / folder)) {
      continue;
    }
    for (const auto& entry : fs::recursive_directory_iterator(top / folder)) {
      const auto extension = entry.path().extension();
      if (extension != ".cpp" && extension != ".h") {
        continue;
      }
      const fs::path relative = fs::relative(entry.path(), top);
      std::ifstream in(entry.path());
      std::string text;
      for (int number = 1; std::getline(in, text); ++number) {
        if (std::smatch match; std::regex_search(text, match, line)) {
          found.push_back({relative.string() + ":" + std::to_string(number), layerOf(relative), match[1]});
        }
      }
    }
  }
  return found;
}

// Empty where the include is allowed, else why not.
std::string complaint(const Include& include) {
  if (include.name.find("..") != std::string::npos) {
    return "goes round the include roots";
  }
  const std::string first = include.name.substr(0, include.name.find('/'));
  const auto layer = allowed.find(include.layer);
  if (allowed.contains(first) && layer != allowed.end() && first != include.layer &&
      !layer->second.contains(first)) {
    return "layer " + include.layer + " may not know " + first;
  }
  if (noQt.contains(include.layer) && include.name.starts_with("Q")) {
    return "layer " + include.layer + " stands on the standard library alone";
  }
  for (const Library& library : libraries) {
    if (std::regex_match(include.name, library.name) && !library.layers.contains(include.layer)) {
      return "layer " + include.layer + " may not use this library";
    }
  }
  return {};
}

} // namespace

BOOST_AUTO_TEST_CASE(includes_follow_the_layers) {
  const auto includes = allIncludes();
  BOOST_TEST(includes.size() > 50U, "the walk found too few includes to mean anything");
  for (const Include& include : includes) {
    const std::string why = complaint(include);
    BOOST_TEST(why.empty(), include.place << " includes " << include.name << ": " << why);
  }
}

BOOST_AUTO_TEST_CASE(a_forbidden_include_is_seen) {
  for (const Include& include : std::vector<Include>{
           {"x", "hang", "store/store.h"},
           {"x", "hang", "QString"},
           {"x", "options", "QSqlQuery"},
           {"x", "options", "QtSql/QSqlQuery"},
           {"x", "reports", "QtWidgets/QLabel"},
           {"x", "store", "QWidget"},
           {"x", "catalogue", "venue/venue.h"},
           {"x", "options", "../store/store.h"},
           {"x", "calendar", "Eigen/Dense"},
       }) {
    BOOST_TEST(!complaint(include).empty(), include.layer << " including " << include.name << " passed");
  }
  BOOST_TEST(complaint({"x", "store", "QSqlQuery"}).empty());
  BOOST_TEST(complaint({"x", "desk", "QWidget"}).empty());
  BOOST_TEST(complaint({"x", "hang", "Eigen/Dense"}).empty());
}

BOOST_AUTO_TEST_CASE(every_module_stands_in_the_table) {
  for (const auto& entry : fs::directory_iterator(fs::path(HANGBOOK_SOURCE_DIR) / "model")) {
    if (entry.is_directory()) {
      BOOST_TEST(allowed.contains(entry.path().filename().string()),
                 entry.path().filename().string() << " has no line in the table of layers");
    }
  }
}
