// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>
#include <streambuf>
#include <string>
#include <vector>

#include <QString>

/// Answers for readers who have US customary units (--units us): behind each metric quantity the same stands
/// in brackets (quantity/both_units.h). Done where the answer goes out, line by line, so that no word of the
/// terminal has to know of it; a table converts its cells itself, before it is laid out.
namespace hangbook::terminal {

/// Passes text on with the brackets put in. What is left without an end of line goes with `sync`.
class BothUnitsBuffer : public std::streambuf {
public:
  explicit BothUnitsBuffer(std::ostream& to) : to_(to) {}

  /// Names that stay whole, though they hold a quantity.
  void setNames(std::vector<std::string> names) { names_ = std::move(names); }
  const std::vector<std::string>& names() const { return names_; }
  /// The stream behind it, for what is converted already; what was pending goes first.
  std::ostream& behind();

protected:
  int_type overflow(int_type letter) override;
  std::streamsize xsputn(const char* text, std::streamsize size) override;
  int sync() override;

private:
  void pass();

  std::ostream& to_;
  std::string pending_;
  std::vector<std::string> names_;
};

/// Whether readers of that stream have US customary units.
bool inBothUnits(const std::ostream& out);
/// The text as readers of that stream want it; to be written through `asIs`.
QString forReaders(const std::ostream& out, const QString& text);
/// Where text that was converted already is written.
std::ostream& asIs(std::ostream& out);
/// "12.3" of a column in kg: "12.3 (27.1)" for such readers.
QString figureForReaders(const std::ostream& out, const QString& figure, const QString& unit);
/// "kg": "kg (lb)" for such readers.
QString unitForReaders(const std::ostream& out, const QString& unit);

} // namespace hangbook::terminal
