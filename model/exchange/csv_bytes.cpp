// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv_bytes.h"

#include <optional>

#include <QStringDecoder>

namespace hangbook::exchange {
namespace {

/// A place in the file, for people: both count from 1, bytes from the start of the line.
struct Place {
  int line = 1;
  qsizetype byte = 1;
};

Place placeOf(const QByteArray& bytes, qsizetype offset) {
  Place place;
  for (qsizetype at = 0; at < offset; ++at) {
    const bool pair = bytes[at] == '\r' && at + 1 < bytes.size() && bytes[at + 1] == '\n';
    if ((bytes[at] == '\r' && !pair) || bytes[at] == '\n') {
      ++place.line;
      place.byte = 0;
    }
    ++place.byte;
  }
  return place;
}

unsigned at(const QByteArray& bytes, qsizetype offset) {
  return offset < bytes.size() ? static_cast<unsigned char>(bytes[offset]) : 0U;
}

/// Length of the character there (RFC 3629: no surrogates, nothing overlong, nothing above U+10FFFF); 0
/// where it is none.
int lengthOfCharacter(const QByteArray& bytes, qsizetype offset) {
  const unsigned first = at(bytes, offset);
  if (first < 0x80) {
    return 1;
  }
  const int length = first >= 0xC2 && first < 0xE0   ? 2
                     : first >= 0xE0 && first < 0xF0 ? 3
                     : first >= 0xF0 && first < 0xF5 ? 4
                                                     : 0;
  for (int next = 1; next < length; ++next) {
    if ((at(bytes, offset + next) & 0xC0U) != 0x80U) {
      return 0;
    }
  }
  const unsigned second = at(bytes, offset + 1);
  const bool wrong = (first == 0xE0 && second < 0xA0) || (first == 0xED && second >= 0xA0) ||
                     (first == 0xF0 && second < 0x90) || (first == 0xF4 && second >= 0x90);
  return wrong ? 0 : length;
}

std::optional<qsizetype> firstNotUtf8(const QByteArray& bytes) {
  for (qsizetype offset = 0; offset < bytes.size();) {
    const int length = lengthOfCharacter(bytes, offset);
    if (length == 0) {
      return offset;
    }
    offset += length;
  }
  return std::nullopt;
}

QString decodeUtf16(const QByteArray& bytes, QStringDecoder::Encoding encoding, std::vector<Fault>& faults) {
  QStringDecoder decoder(encoding, QStringDecoder::Flag::Stateless);
  const QString text = decoder(bytes);
  if (decoder.hasError() || bytes.size() % 2 != 0) {
    faults.push_back(
        {0, {}, QStringLiteral("UTF-16 with broken characters"), QStringLiteral("a file saved as UTF-8")});
    return {};
  }
  if (const qsizetype nul = text.indexOf(QChar(u'\0')); nul >= 0) {
    const auto lines = static_cast<int>(text.left(nul).count(QLatin1Char('\n')));
    faults.push_back({lines + 1, {}, QStringLiteral("a NUL character"), QStringLiteral("text only")});
    return {};
  }
  return text;
}

} // namespace

QString decodeCsv(const QByteArray& bytes, std::vector<Fault>& faults) {
  if (bytes.size() > mostCsvBytes) {
    faults.push_back({0,
                      {},
                      QStringLiteral("%1 bytes").arg(bytes.size()),
                      QStringLiteral("at most %1 bytes").arg(mostCsvBytes)});
    return {};
  }
  if (bytes.startsWith("\xFF\xFE")) {
    return decodeUtf16(bytes.mid(2), QStringDecoder::Utf16LE, faults);
  }
  if (bytes.startsWith("\xFE\xFF")) {
    return decodeUtf16(bytes.mid(2), QStringDecoder::Utf16BE, faults);
  }
  if (const qsizetype nul = bytes.indexOf('\0'); nul >= 0) {
    const Place place = placeOf(bytes, nul);
    faults.push_back({place.line,
                      {},
                      QStringLiteral("a NUL at byte %1").arg(place.byte),
                      QStringLiteral("text only; UTF-16 needs its byte order mark")});
    return {};
  }
  if (const std::optional<qsizetype> wrong = firstNotUtf8(bytes)) {
    const Place place = placeOf(bytes, *wrong);
    faults.push_back(
        {place.line,
         {},
         QStringLiteral("0x%1 at byte %2").arg(at(bytes, *wrong), 2, 16, QLatin1Char('0')).arg(place.byte),
         QStringLiteral("UTF-8: save the file as UTF-8 (it may be Windows-1252 or Latin-1)")});
    return {};
  }
  return QString::fromUtf8(bytes.startsWith("\xEF\xBB\xBF") ? bytes.mid(3) : bytes);
}

} // namespace hangbook::exchange
