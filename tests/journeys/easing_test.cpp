// SPDX-License-Identifier: GPL-3.0-or-later
// The demo's venue that is too low and the one that is too weak: what the program says would do is typed into
// the exported spreadsheet by hand, imported, and checked again; so is one step less of it.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>

#include <cmath>

#include "program.h"

namespace data = boost::unit_test::data;
using hangbook::testing::program;
using hangbook::testing::Said;

namespace {

struct Store {
  QTemporaryDir folder;
  QString path = folder.filePath(QStringLiteral("demo.db"));
  Store() { BOOST_TEST_REQUIRE(ask({QStringLiteral("demo")}).status == 0); }
  Said ask(QStringList words, const QByteArray& input = {}) const {
    return program(words << QStringLiteral("--store") << path << QStringLiteral("--by")
                         << QStringLiteral("Casimir Wold") << QStringLiteral("--as-of")
                         << QStringLiteral("2026-11-25"),
                   input);
  }
  /// The first option of the hang that fails by these rules alone, every other one being judged.
  QString failingBy(const QString& show, const QStringList& rules) const {
    const QJsonObject all = ask({QStringLiteral("options"), QStringLiteral("--show"), show,
                                 QStringLiteral("--hang"), QStringLiteral("left"), QStringLiteral("--json")})
                                .json();
    const QJsonArray list = all[QStringLiteral("hangs")][0][QStringLiteral("options")].toArray();
    for (const auto& option : list) {
      bool fits = option[QStringLiteral("verdict")].toString() == QStringLiteral("fails");
      for (const auto& each : option[QStringLiteral("findings")].toArray()) {
        const QString verdict = each[QStringLiteral("verdict")].toString();
        const QString rule = each[QStringLiteral("rule")].toString();
        fits = fits && verdict != QStringLiteral("unproven") &&
               (verdict != QStringLiteral("fails") || rules.contains(rule));
      }
      if (fits) {
        return option[QStringLiteral("id")].toString();
      }
    }
    BOOST_FAIL("no option fails by these rules alone");
    return {};
  }
  QJsonObject option(const QString& show, const QString& id) const {
    const Said said =
        ask({QStringLiteral("options"), QStringLiteral("--show"), show, QStringLiteral("--hang"),
             QStringLiteral("left"), QStringLiteral("--explain"), id, QStringLiteral("--json")});
    return said.json()[QStringLiteral("hangs")][0][QStringLiteral("options")][0].toObject();
  }
};

/// One record of a venues file: a row with its cells; no cell of these rows holds a comma between quotes but
/// the source's, which stands as it is.
QByteArray withFigure(const QByteArray& csv, const QByteArray& record, const QByteArray& name,
                      const QByteArray& venue, int column, double by, double step) {
  QList<QByteArray> lines = csv.split('\n');
  bool found = false;
  for (QByteArray& line : lines) {
    QList<QByteArray> cells;
    bool quoted = false;
    cells.append(QByteArray());
    for (const char letter : line) {
      quoted = letter == '"' ? !quoted : quoted;
      if (letter == ',' && !quoted) {
        cells.append(QByteArray());
      } else {
        cells.last().append(letter);
      }
    }
    const bool ours = cells[0] == record && cells[1] == name && (record == "venue" || line.contains(venue));
    if (!ours) {
      continue;
    }
    found = true;
    const double figure = cells[column].toDouble();
    cells[column] = QByteArray::number(std::round((figure + by) / step) * step, 'f', 2);
    line = cells.join(',');
  }
  BOOST_TEST_REQUIRE(found, name.toStdString());
  return lines.join('\n');
}

int columnOf(const QByteArray& csv, const char* heading) {
  const auto headings = csv.left(csv.indexOf('\n')).trimmed().split(',');
  const auto at = headings.indexOf(heading);
  BOOST_TEST_REQUIRE(at >= 0, heading);
  return static_cast<int>(at);
}

QJsonObject changeOf(const QJsonObject& option, const char* kind) {
  for (const auto& each : option[QStringLiteral("would_do")][QStringLiteral("singles")].toArray()) {
    const QJsonObject change = each[QStringLiteral("changes")][0].toObject();
    if (change[QStringLiteral("kind")].toString() == QLatin1String(kind)) {
      return change;
    }
  }
  BOOST_FAIL("no change of kind " << kind);
  return {};
}

bool stands(const QJsonObject& option) {
  const QString verdict = option[QStringLiteral("verdict")].toString();
  return verdict == QStringLiteral("holds") || verdict == QStringLiteral("tight");
}

/// Writes the venues out, changes them by `edit`, takes them in.
template <class Edit>
void edited(const Store& store, Edit edit) {
  const Said before =
      store.ask({QStringLiteral("export"), QStringLiteral("--kind"), QStringLiteral("venues")});
  BOOST_TEST_REQUIRE(before.status == 0);
  const Said taken = store.ask(
      {QStringLiteral("import"), QStringLiteral("--kind"), QStringLiteral("venues"), QStringLiteral("-")},
      edit(before.out));
  BOOST_TEST_REQUIRE(taken.status == 0, taken.err.toStdString() + taken.out.toStdString());
}

} // namespace

BOOST_AUTO_TEST_SUITE(what_would_do)

BOOST_AUTO_TEST_CASE(the_hall_that_is_too_low) {
  const Store store;
  const QString show = QStringLiteral("Quayle Strand");
  const QString id = store.failingBy(show, {QStringLiteral("headroom")});
  const QJsonObject failing = store.option(show, id);
  BOOST_TEST_REQUIRE(failing[QStringLiteral("verdict")].toString().toStdString() == "fails");
  const QJsonObject figure = changeOf(failing, "roof")[QStringLiteral("figures")][0].toObject();
  const double up = figure[QStringLiteral("to")].toDouble() - figure[QStringLiteral("from")].toDouble();
  BOOST_TEST(std::abs(up - 0.01 * figure[QStringLiteral("steps")].toInt()) < 1e-9);
  const auto raise = [](double by) {
    return [by](QByteArray csv) {
      csv = withFigure(csv, "venue", "Quayle Strand Pavilion", "", columnOf(csv, "low steel [m]"), by, 0.01);
      for (const char* point : {"L1", "L2", "R1", "R2"}) {
        csv = withFigure(csv, "point", point, "Quayle Strand Pavilion", columnOf(csv, "z [m]"), by, 0.01);
      }
      return csv;
    };
  };
  edited(store, raise(up));
  BOOST_TEST(stands(store.option(show, id)));
  edited(store, raise(-0.01));
  BOOST_TEST(!stands(store.option(show, id)));
}

BOOST_AUTO_TEST_CASE(the_hall_that_is_too_weak) {
  const Store store;
  const QString show = QStringLiteral("Grenmouth");
  const QString id = store.failingBy(show, {QStringLiteral("point-load"), QStringLiteral("uneven")});
  const QJsonObject failing = store.option(show, id);
  BOOST_TEST_REQUIRE(failing[QStringLiteral("verdict")].toString().toStdString() == "fails");
  const QJsonObject change = changeOf(failing, "structure");
  BOOST_TEST(change[QStringLiteral("words")].toString().contains(
      QStringLiteral("another point, a lighter stack, or the engineer's written figure")));
  const QJsonArray figures = change[QStringLiteral("figures")].toArray();
  BOOST_TEST_REQUIRE(!figures.isEmpty());
  const auto written = [&](const QJsonObject& figure, double by) {
    return [=](const QByteArray& csv) {
      const QByteArray name = figure[QStringLiteral("what")].toString().mid(6).toUtf8(); // "point L1"
      return withFigure(csv, "point", name, "Grenmouth Ropewalk", columnOf(csv, "capacity [kN]"), by, 0.01);
    };
  };
  for (const auto& each : figures) {
    const QJsonObject figure = each.toObject();
    edited(store, written(figure, figure[QStringLiteral("to")].toDouble() -
                                      figure[QStringLiteral("from")].toDouble()));
  }
  BOOST_TEST(stands(store.option(show, id)));
  for (const auto& each : figures) {
    edited(store, written(each.toObject(), -0.01));
    BOOST_TEST(!stands(store.option(show, id)));
    edited(store, written(each.toObject(), 0.01));
  }
}

/// An option that stands says in the same place how far it is to its first limit.
BOOST_AUTO_TEST_CASE(what_breaks_first) {
  const Store store;
  const QJsonObject option = store.option(QStringLiteral("Pollan Cross"), QStringLiteral("0e23bbcc"));
  BOOST_TEST(stands(option));
  const QJsonArray reserves = option[QStringLiteral("reserve")].toArray();
  BOOST_TEST(reserves.size() >= 5);
  BOOST_TEST(!reserves[0][QStringLiteral("rule")].toString().isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
