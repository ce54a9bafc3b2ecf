// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <array>

#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QImage>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>

#include "desk/style/colours.h"
#include "desk/style/figures.h"
#include "desk/style/theme.h"
#include "desk/style/verdict_mark.h"

using namespace hangbook;
using namespace hangbook::desk;

namespace {
constexpr double leastContrast = 4.5;
constexpr std::array allVerdicts{options::Verdict::holds, options::Verdict::tight, options::Verdict::unproven,
                                 options::Verdict::fails};
} // namespace

BOOST_AUTO_TEST_SUITE(style)

BOOST_AUTO_TEST_CASE(contrast_agrees_with_known_pairs) {
  BOOST_TEST(contrast(Qt::black, Qt::white) == 21.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(contrast(Qt::white, Qt::white) == 1.0, boost::test_tools::tolerance(1e-9));
  // #777777 on white is the textbook case that just misses 4.5 : 1.
  BOOST_TEST(contrast(QColor(0x77, 0x77, 0x77), Qt::white) == 4.48, boost::test_tools::tolerance(0.005));
}

BOOST_DATA_TEST_CASE(every_text_stands_out_from_every_ground, boost::unit_test::data::make({false, true}),
                     dark) {
  const Colours& colours = dark ? darkColours() : lightColours();
  for (const QColor& ground : {colours.ground, colours.sheet, colours.raised, colours.chosen}) {
    BOOST_TEST_CONTEXT("on " << ground.name().toStdString()) {
      BOOST_TEST(contrast(colours.text, ground) >= leastContrast);
      BOOST_TEST(contrast(colours.quiet, ground) >= leastContrast);
    }
  }
  for (const QColor& ground : {colours.ground, colours.sheet, colours.chosen}) {
    for (const auto verdict : allVerdicts) {
      BOOST_TEST_CONTEXT(verdictWord(verdict).toStdString() << " on " << ground.name().toStdString()) {
        BOOST_TEST(contrast(colourOf(verdict, colours), ground) >= leastContrast);
      }
    }
  }
  BOOST_TEST(contrast(colours.onAccent, colours.accent) >= leastContrast);
  BOOST_TEST(contrast(colours.frame, colours.sheet) >= 3.0);
  BOOST_TEST((colours.dark == dark));
}

BOOST_DATA_TEST_CASE(a_palette_leads_back_to_its_colours, boost::unit_test::data::make({false, true}), dark) {
  const Colours& colours = dark ? darkColours() : lightColours();
  BOOST_TEST(&coloursOf(paletteFrom(colours)) == &colours);
}

BOOST_AUTO_TEST_CASE(verdicts_differ_in_outline_without_colour) {
  std::vector<QImage> signs;
  for (const auto verdict : allVerdicts) {
    Colours grey = lightColours();
    grey.holds = grey.tight = grey.unproven = grey.fails = Qt::black;
    QImage image(32, 32, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawVerdict(painter, {2, 2, 28, 28}, verdict, grey);
    painter.end();
    signs.push_back(image);
  }
  for (std::size_t i = 0; i < signs.size(); ++i) {
    for (std::size_t j = i + 1; j < signs.size(); ++j) {
      int unlike = 0;
      for (int y = 0; y < 32; ++y) {
        for (int x = 0; x < 32; ++x) {
          unlike += qAbs(qGray(signs[i].pixel(x, y)) - qGray(signs[j].pixel(x, y))) > 128 ? 1 : 0;
        }
      }
      BOOST_TEST(unlike > 100, "signs " << i << " and " << j << " differ in " << unlike << " of 1024 places");
    }
  }
}

BOOST_AUTO_TEST_CASE(figures_carry_their_unit_and_say_what_is_not_known) {
  const Figures metric;
  const Figures customary(UnitSystem::usCustomary);
  BOOST_TEST(metric.force(3.456).toStdString() == "3.46 kN");
  BOOST_TEST(metric.length(7.5).toStdString() == "7.50 m");
  BOOST_TEST(metric.mass(92.0).toStdString() == "92.0 kg");
  BOOST_TEST(customary.force(4.4482216152605).toStdString() == "1000 lbf");
  BOOST_TEST(metric.force(std::nullopt).toStdString() == "not known");
  BOOST_TEST(metric.inUnit(68.0, QStringLiteral("%")).toStdString() == "68 %");
  BOOST_TEST(metric.inUnit(2.0, {}).toStdString() == "2");
  BOOST_TEST(customary.inUnit(3.048, QStringLiteral("m")).toStdString() == "10.00 ft");
}

/// What takes input has an edge that stands out from the ground and from what it holds (3:1, as for any part
/// of a control).
BOOST_AUTO_TEST_CASE(fields_and_buttons_have_an_edge_in_both_palettes) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    applyTheme(*qApp, theme);
    QWidget sheet;
    QLineEdit line(&sheet);
    QComboBox box(&sheet);
    QComboBox names(&sheet);
    names.setEditable(true);
    QDoubleSpinBox figure(&sheet);
    QPushButton button(QStringLiteral("Save"), &sheet);
    for (QWidget* each : std::initializer_list<QWidget*>{&line, &box, &names, &figure, &button}) {
      each->setFixedSize(120, 24);
      const QImage image = each->grab().toImage();
      const QColor ground = qApp->palette().color(QPalette::Window);
      double best = 0.0;
      for (int x = 0; x < 3; ++x) {
        best = std::max(best, contrast(image.pixelColor(x, image.height() / 2), ground));
      }
      BOOST_TEST(best >= 3.0, each->metaObject()->className()
                                  << " in " << static_cast<int>(theme) << ": " << best);
    }
  }
  applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
