// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QString>

namespace hangbook::store {

/// Says to other programs that a SQLite store is open here: a lock on an empty file beside it, which the
/// system lets go of when the program ends, however it ends. It tells a log that a crash left from one that a
/// program at work is writing. The file's own locks cannot be asked for that: to open and close the store's
/// files by other ways than SQLite's would drop the locks that this process holds.
class Presence {
public:
  /// "tour.hangbook" → "tour.hangbook-open"
  static QString fileFor(const QString& store);

  explicit Presence(const QString& store);
  /// Removes the file where nobody else has the store open.
  ~Presence();
  Presence(const Presence&) = delete;
  Presence& operator=(const Presence&) = delete;

  /// Whether some program (this one by another connection too) had the store open, and had found it sound,
  /// when this began. False too where that cannot be known.
  bool othersAtWork() const { return others_; }
  /// The store was found sound: from now on others may rely on it.
  void settle();

private:
  bool open();

  QString name_;
  int file_ = -1; ///< -1: the file cannot be had; nothing is said and nothing known
  bool others_ = false;
};

} // namespace hangbook::store
