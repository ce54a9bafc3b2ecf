// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <charconv>

#include <QCryptographicHash>

#include "options/option.h"

namespace hangbook::options {

QString wordFor(Verdict verdict) {
  switch (verdict) {
  case Verdict::holds:
    return QStringLiteral("holds");
  case Verdict::tight:
    return QStringLiteral("tight");
  case Verdict::unproven:
    return QStringLiteral("unproven");
  case Verdict::fails:
    break;
  }
  return QStringLiteral("fails");
}

QString wordFor(catalogue::Picks picks) {
  switch (picks) {
  case catalogue::Picks::sidePair:
    return QStringLiteral("side-pair");
  case catalogue::Picks::foreAftPair:
    return QStringLiteral("fore-aft-pair");
  case catalogue::Picks::single:
    break;
  }
  return QStringLiteral("single");
}

namespace {

/// Each text with its length before it, so that no two lists run together into the same bytes.
class Bytes {
public:
  Bytes() { all_.reserve(usual); }
  void add(const QString& text) {
    const QByteArray bytes = text.toUtf8();
    number(bytes.size());
    all_.append(bytes);
  }
  void add(const QStringList& texts) {
    std::array<char, digits> count{};
    const char* const end = std::to_chars(count.begin(), count.end(), texts.size()).ptr;
    number(end - count.data());
    all_.append(count.data(), end - count.data());
    for (const QString& text : texts) {
      add(text);
    }
  }
  const QByteArray& all() const { return all_; }

private:
  static constexpr qsizetype usual = 512;
  static constexpr std::size_t digits = 20; // of any length

  void number(qsizetype length) {
    std::array<char, digits> text{};
    const char* const end = std::to_chars(text.begin(), text.end(), length).ptr;
    all_.append(text.data(), end - text.data());
    all_.append(':');
  }
  QByteArray all_;
};

} // namespace

QString idOf(const OptionKey& key) {
  Bytes bytes;
  bytes.add(key.hang);
  bytes.add(key.stack);
  bytes.add(key.bar);
  bytes.add(wordFor(key.picks));
  bytes.add(key.hoist);
  bytes.add(key.points);
  constexpr qsizetype kept = 8; // bytes: enough to tell all options of a tour apart
  const QByteArray hash = QCryptographicHash::hash(bytes.all(), QCryptographicHash::Sha256);
  return QString::fromLatin1(hash.first(kept).toHex());
}

} // namespace hangbook::options
