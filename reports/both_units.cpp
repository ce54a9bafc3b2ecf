// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/both_units.h"

#include "catalogue/both_units.h"

namespace hangbook::reports {
namespace {

class Bracketing {
public:
  explicit Bracketing(const std::vector<std::string>& names) : names_(names) {}

  void operator()(QString& text) const { text = catalogue::inBothUnits(text, names_); }
  void operator()(QStringList& texts) const {
    for (QString& each : texts) {
      (*this)(each);
    }
  }
  void operator()(Text& block) const { (*this)(block.text); }
  void operator()(Table& block) const {
    (*this)(block.title);
    (*this)(block.note);
    for (Table::Row& row : block.rows) {
      (*this)(row.cells);
    }
  }
  void operator()(Big& block) const {
    (*this)(block.caption);
    (*this)(block.beside);
  }
  void operator()(Drawing& block) const {
    (*this)(block.caption);
    for (Drawing::Note& note : block.notes) {
      (*this)(note.text);
    }
  }
  void operator()(Chart& block) const {
    (*this)(block.caption);
    for (Chart::Bar& bar : block.bars) {
      (*this)(bar.text);
    }
  }
  void operator()(NewPage&) const {}

private:
  const std::vector<std::string>& names_;
};

} // namespace

Sheet inBothUnits(Sheet sheet, const std::vector<std::string>& names) {
  const Bracketing bracketing(names);
  bracketing(sheet.about);
  bracketing(sheet.notCleared);
  for (Block& block : sheet.blocks) {
    std::visit(bracketing, block);
  }
  return sheet;
}

} // namespace hangbook::reports
