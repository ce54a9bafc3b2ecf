// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv_records.h"

namespace hangbook::exchange {
namespace {

constexpr QChar quote = u'"';

bool isBreak(QChar c) {
  return c == u'\n' || c == u'\r';
}

class Splitter {
public:
  Splitter(QStringView text, QChar separator, std::vector<Fault>& faults)
      : text_(text), separator_(separator), faults_(faults) {}

  std::vector<CsvRecord> split(int most) {
    std::vector<CsvRecord> records;
    while (at_ < text_.size() && !broken_ && static_cast<int>(records.size()) < most) {
      if (isBreak(text_[at_])) {
        takeBreak();
        continue;
      }
      records.push_back(takeRecord());
    }
    if (at_ < text_.size() && !broken_ && most == mostCsvRecords) {
      fault(line_, {}, QStringLiteral("at most %1 records").arg(mostCsvRecords));
    }
    return records;
  }

private:
  CsvRecord takeRecord() {
    CsvRecord record{line_, {}};
    while (!broken_) {
      record.cells << takeCell();
      if (record.cells.size() > mostCsvColumns) {
        fault(record.line, {}, QStringLiteral("at most %1 columns").arg(mostCsvColumns));
        broken_ = true;
      }
      if (at_ >= text_.size()) {
        break;
      }
      if (isBreak(text_[at_])) {
        takeBreak();
        break;
      }
      ++at_; // the separator
    }
    return record;
  }

  /// Up to the separator or line break.
  QString takeCell() {
    if (at_ < text_.size() && text_[at_] == quote) {
      return takeQuoted();
    }
    const qsizetype from = at_;
    toEndOfCell();
    const QStringView cell = text_.sliced(from, at_ - from);
    if (cell.trimmed().startsWith(quote)) {
      fault(line_, cell, QStringLiteral("no space before an opening quotation mark"));
    }
    return cell.toString();
  }

  QString takeQuoted() {
    const int opened = line_;
    const qsizetype start = at_++;
    QString cell;
    while (true) {
      const qsizetype from = at_;
      while (at_ < text_.size() && text_[at_] != quote && !isBreak(text_[at_])) {
        ++at_;
      }
      cell += text_.sliced(from, at_ - from);
      if (at_ >= text_.size()) {
        fault(opened, text_.sliced(start, qMin<qsizetype>(40, text_.size() - start)),
              QStringLiteral("a closing quotation mark"));
        broken_ = true;
        return cell;
      }
      if (isBreak(text_[at_])) {
        const qsizetype before = at_;
        takeBreak();
        cell += text_.sliced(before, at_ - before);
      } else if (at_ + 1 < text_.size() && text_[at_ + 1] == quote) {
        cell += quote;
        at_ += 2;
      } else {
        ++at_;
        break;
      }
    }
    const qsizetype after = at_;
    toEndOfCell();
    if (at_ > after) {
      fault(line_, text_.sliced(after, at_ - after),
            QStringLiteral("a separator or the end of the line after a closing quotation mark; inside quotes "
                           "a quotation mark is doubled"));
    }
    return cell;
  }

  void toEndOfCell() {
    while (at_ < text_.size() && text_[at_] != separator_ && !isBreak(text_[at_])) {
      ++at_;
    }
  }

  void takeBreak() {
    at_ += text_.sliced(at_).startsWith(QLatin1String("\r\n")) ? 2 : 1;
    ++line_;
  }

  void fault(int line, QStringView read, const QString& expected) {
    faults_.push_back({line, {}, read.toString(), expected});
  }

  QStringView text_;
  QChar separator_;
  std::vector<Fault>& faults_;
  qsizetype at_ = 0;
  int line_ = 1;
  bool broken_ = false;
};

} // namespace

std::vector<CsvRecord> splitCsv(QStringView text, QChar separator, std::vector<Fault>& faults, int most) {
  return Splitter(text, separator, faults).split(most);
}

} // namespace hangbook::exchange
