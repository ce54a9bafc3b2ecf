// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/style/colours.h"

#include <algorithm>
#include <cmath>

namespace hangbook::desk {
namespace {

double linear(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

} // namespace

const Colours& lightColours() {
  static const Colours colours{
      .dark = false,
      .ground = QColor(0xf3, 0xf2, 0xee),
      .sheet = QColor(0xfd, 0xfc, 0xfa),
      .raised = QColor(0xe9, 0xe7, 0xe1),
      .text = QColor(0x1f, 0x23, 0x26),
      .quiet = QColor(0x57, 0x5d, 0x61),
      .line = QColor(0xd8, 0xd5, 0xcd),
      .frame = QColor(0x8c, 0x8a, 0x82),
      .accent = QColor(0x17, 0x5a, 0x6b),
      .onAccent = QColor(0xff, 0xff, 0xff),
      .chosen = QColor(0xd9, 0xe7, 0xea),
      .holds = QColor(0x1c, 0x66, 0x3c),
      .tight = QColor(0x7d, 0x52, 0x00),
      .unproven = QColor(0x5b, 0x48, 0x8f),
      .fails = QColor(0xa3, 0x1f, 0x1f),
      .steel = QColor(0x54, 0x5a, 0x5e),
      .cabinet = QColor(0xb9, 0xc2, 0xc4),
      .cover = QColor(0x17, 0x5a, 0x6b, 34),
  };
  return colours;
}

const Colours& darkColours() {
  static const Colours colours{
      .dark = true,
      .ground = QColor(0x1b, 0x1e, 0x20),
      .sheet = QColor(0x22, 0x26, 0x28),
      .raised = QColor(0x2a, 0x2f, 0x32),
      .text = QColor(0xe9, 0xe7, 0xe2),
      .quiet = QColor(0xa8, 0xad, 0xae),
      .line = QColor(0x3a, 0x40, 0x43),
      .frame = QColor(0x78, 0x80, 0x84),
      .accent = QColor(0x6f, 0xb9, 0xc9),
      .onAccent = QColor(0x0e, 0x1d, 0x21),
      .chosen = QColor(0x22, 0x41, 0x4a),
      .holds = QColor(0x7c, 0xce, 0x98),
      .tight = QColor(0xe5, 0xb4, 0x5a),
      .unproven = QColor(0xc3, 0xb1, 0xf0),
      .fails = QColor(0xff, 0x9a, 0x90),
      .steel = QColor(0x9a, 0xa2, 0xa6),
      .cabinet = QColor(0x4c, 0x57, 0x5b),
      .cover = QColor(0x6f, 0xb9, 0xc9, 38),
  };
  return colours;
}

const Colours& coloursOf(const QPalette& palette) {
  const bool dark =
      palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
  return dark ? darkColours() : lightColours();
}

QColor colourOf(options::Verdict verdict, const Colours& colours) {
  switch (verdict) {
  case options::Verdict::holds:
    return colours.holds;
  case options::Verdict::tight:
    return colours.tight;
  case options::Verdict::unproven:
    return colours.unproven;
  case options::Verdict::fails:
    return colours.fails;
  }
  return colours.text;
}

QPalette paletteFrom(const Colours& colours) {
  QPalette palette;
  palette.setColor(QPalette::Window, colours.ground);
  palette.setColor(QPalette::WindowText, colours.text);
  palette.setColor(QPalette::Base, colours.sheet);
  palette.setColor(QPalette::AlternateBase, colours.ground);
  palette.setColor(QPalette::Text, colours.text);
  palette.setColor(QPalette::Button, colours.raised);
  palette.setColor(QPalette::ButtonText, colours.text);
  palette.setColor(QPalette::BrightText, colours.fails);
  palette.setColor(QPalette::ToolTipBase, colours.raised);
  palette.setColor(QPalette::ToolTipText, colours.text);
  palette.setColor(QPalette::PlaceholderText, colours.quiet);
  palette.setColor(QPalette::Highlight, colours.accent);
  palette.setColor(QPalette::HighlightedText, colours.onAccent);
  palette.setColor(QPalette::Link, colours.accent);
  palette.setColor(QPalette::LinkVisited, colours.accent);
  palette.setColor(QPalette::Light, colours.dark ? colours.frame : colours.sheet);
  palette.setColor(QPalette::Midlight, colours.line);
  palette.setColor(QPalette::Mid, colours.frame);
  palette.setColor(QPalette::Dark, colours.frame);
  palette.setColor(QPalette::Shadow, colours.dark ? QColor(Qt::black) : colours.frame);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    palette.setColor(QPalette::Disabled, role, colours.quiet);
  }
  return palette;
}

double contrast(const QColor& one, const QColor& other) {
  const double a = luminance(one);
  const double b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

} // namespace hangbook::desk
