// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/build_loads.h"
#include "hang/changes.h"
#include "hang/doubt.h"
#include "hang/layout.h"
#include "hang/settle.h"
#include "kept/kept.h"
#include "quantity/error.h"

/// Every figure of what the physics answers, one after another.
namespace hangbook::testing {

void add(Line& line, const hang::Statics& statics);
void add(Line& line, const hang::Settled& settled);
void add(Line& line, const hang::BuildStep& step);
void add(Line& line, const hang::BuildWorst& worst);
void add(Line& line, const hang::Unfavourable& worst);
void add(Line& line, const hang::Layout& layout);
void add(Line& line, const hang::Change& change);
void add(Line& line, hang::Vec2 place);
void add(Line& line, hang::Vec3 place);
void add(Line& line, hang::Span span);

/// Fills a line by `figures(line)`; where that throws one of our errors, its words stand in the line.
template <class Figures>
Line lineOf(std::string name, Figures figures) {
  Line line(std::move(name));
  try {
    figures(line);
  } catch (const Error& error) {
    line.plain("!");
    line.word(error.what());
    line.word(error.place());
  }
  return line;
}

} // namespace hangbook::testing
