// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Everything that comes out of many cases, folded into a few short lines each, and held against a file that
/// is kept in the tree. A fence around what was proved elsewhere: it proves nothing by itself, but nothing
/// moves without being seen.
namespace hangbook::testing {

/// One line of the file: how many figures, their weighted sum, the words.
///
/// Each figure enters as asinh(x), so that a change by a part in 10⁹ of a large figure weighs as much as
/// 10⁻⁹ of a small one, times a weight of its own between ½ and 1½, so that two that change places show.
class Line {
public:
  explicit Line(std::string name) : name_(std::move(name)) {}

  void number(double value);
  void number(const std::optional<double>& value);
  /// Counts exactly: names, verdicts, sentences.
  void word(std::string_view text);
  /// Stands in the file as it is.
  void plain(std::string_view text) { plain_ += text; }

  /// Figures from here on count so many times as large: those that are small by nature weigh as much as
  /// others.
  void magnify(double times) { times_ = times; }

  const std::string& name() const { return name_; }
  std::string written() const;
  /// Whether a written line says the same: figures within a part in 10⁹, words exactly.
  bool same(const std::string& written) const;

private:
  std::string name_;
  std::string plain_;
  std::size_t count_ = 0;
  double sum_ = 0.0;
  double times_ = 1.0;
  std::uint64_t words_ = 14695981039346656037ULL; // FNV-1a, 64 bits
};

/// Whether case number `number` is looked at: every third, or all of them where HANGBOOK_KEPT is `all` or the
/// files are written.
bool looksAt(std::uint64_t number);

/// The file of one part of a test that is cut into some, so that whoever changes one thing after another need
/// not wait for all of it.
std::string partFile(const char* name, std::uint64_t part);

/// Holds lines against those of the same names in the kept file, or writes it anew where HANGBOOK_KEEP is
/// set. Tells the first line that differs.
void compareWithKept(const std::vector<Line>& lines, const std::string& file);

} // namespace hangbook::testing
