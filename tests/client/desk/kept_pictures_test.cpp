// SPDX-License-Identifier: GPL-3.0-or-later
// Each place on the demo tour, light and dark, beside a small picture of what it looked like when somebody
// last looked at it and found it good. Whoever changes the look on purpose looks at the pictures that
// tests/pictures makes, and takes the small ones anew: HANGBOOK_KEEP=1 build/tests/desk_test
// --run_test=kept_pictures
#include <array>
#include <cmath>

#include <QApplication>
#include <QFontMetrics>
#include <QImage>

#include "desk/frame/place_names.h"
#include "desk/style/theme.h"
#include "on_demo.h"
#include "where.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::OnDemo;

namespace {

constexpr QSize taken(1440, 900);
constexpr QSize kept(480, 300);
constexpr int tile = 12; // pixels of a kept picture
/// Mean difference of a tile's pixels, of 255, up to which it counts as the same: lines drawn half a pixel
/// beside where they were stay below it, a word that is another does not.
constexpr double sameTile = 10.0;
/// So many of the 1000 tiles may be others: a clock, a figure.
constexpr int othersAllowed = 8;

QImage reduced(const QImage& picture) {
  return picture.convertToFormat(QImage::Format_RGB32)
      .scaled(kept, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
      .convertToFormat(QImage::Format_RGB32);
}

double difference(const QImage& one, const QImage& other, int left, int top) {
  double sum = 0.0;
  for (int y = top; y < top + tile; ++y) {
    for (int x = left; x < left + tile; ++x) {
      const QRgb a = one.pixel(x, y);
      const QRgb b = other.pixel(x, y);
      sum += std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b)) + std::abs(qBlue(a) - qBlue(b));
    }
  }
  return sum / (3.0 * tile * tile);
}

/// Where two pictures differ: "480, 132" of the window, one for each tile.
QStringList others(const QImage& one, const QImage& other) {
  QStringList places;
  for (int y = 0; y < kept.height(); y += tile) {
    for (int x = 0; x < kept.width(); x += tile) {
      if (difference(one, other, x, y) > sameTile) {
        places.append(QStringLiteral("%1, %2")
                          .arg(x * taken.width() / kept.width())
                          .arg(y * taken.height() / kept.height()));
      }
    }
  }
  return places;
}

const QString sample = QStringLiteral("Cabinets, carts, bars, hoists: 11.40 m");

/// Whether text is set here as it was where the pictures were taken: another version of the font library
/// moves every word, which says nothing of the window.
bool sameText() {
  const QFontMetrics metrics(QApplication::font());
  return metrics.horizontalAdvance(sample) == 225 && metrics.height() == 14;
}

void compare(const QImage& now, const QString& name) {
  const QString file = QString::fromUtf8(HANGBOOK_SOURCE_DIR) + QStringLiteral("/tests/client/desk/kept/") +
                       name + QStringLiteral(".png");
  const QImage small = reduced(now);
  if (!qEnvironmentVariableIsEmpty("HANGBOOK_KEEP")) {
    BOOST_TEST(small.save(file));
    return;
  }
  QImage before(file);
  BOOST_TEST_REQUIRE(!before.isNull(), "there is no " << file.toStdString());
  before = before.convertToFormat(QImage::Format_RGB32);
  BOOST_TEST_REQUIRE((before.size() == kept));
  const QStringList places = others(before, small);
  BOOST_TEST(places.size() <= othersAllowed, name.toStdString()
                                                 << " looks otherwise than kept at "
                                                 << places.mid(0, 12).join(QStringLiteral("; ")).toStdString()
                                                 << " (" << places.size() << " tiles)");
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept_pictures)

BOOST_AUTO_TEST_CASE(each_place_looks_as_kept) {
  if (!sameText()) {
    const QFontMetrics metrics(QApplication::font());
    BOOST_TEST_MESSAGE("text is set otherwise here (" << metrics.horizontalAdvance(sample) << " wide, "
                                                      << metrics.height() << " high): not compared");
    return;
  }
  auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
  OnDemo on;
  on.window.resize(taken);
  on.window.wantShow(QStringLiteral("Hallowfen"), QStringLiteral("left"));
  on.settle();
  for (const Theme theme : {Theme::light, Theme::dark}) {
    applyTheme(application, theme);
    for (const QString& name :
         {place::route, place::options, place::build, place::fleet, place::examinations, place::data}) {
      on.window.goTo(name);
      on.settle();
      QCoreApplication::processEvents();
      compare(on.window.grab().toImage(),
              name + (theme == Theme::dark ? QStringLiteral("-dark") : QString()));
    }
  }
  applyTheme(application, Theme::light);
}

/// One that cannot tell a moved button or another word would be of no use.
BOOST_AUTO_TEST_CASE(a_change_that_can_be_seen_is_seen) {
  OnDemo on;
  on.window.resize(taken);
  on.window.goTo(place::data);
  on.settle();
  const QImage whole = on.window.grab().toImage();
  QImage moved = whole;
  for (int y = 300; y < 500; ++y) { // a block of the page, 6 pixels lower
    for (int x = 300; x < 1100; ++x) {
      moved.setPixel(x, y, whole.pixel(x, y - 6));
    }
  }
  BOOST_TEST(others(reduced(whole), reduced(moved)).size() > othersAllowed);
  BOOST_TEST(others(reduced(whole), reduced(whole)).isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
