// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/both_units.h"

#include "quantity/both_units.h"

namespace hangbook::terminal {
namespace {

BothUnitsBuffer* bufferOf(const std::ostream& out) {
  return dynamic_cast<BothUnitsBuffer*>(out.rdbuf());
}

} // namespace

void BothUnitsBuffer::pass() {
  to_ << hangbook::inBothUnits(pending_, names_);
  pending_.clear();
}

std::ostream& BothUnitsBuffer::behind() {
  pass();
  return to_;
}

BothUnitsBuffer::int_type BothUnitsBuffer::overflow(int_type letter) {
  if (traits_type::eq_int_type(letter, traits_type::eof())) {
    return traits_type::not_eof(letter);
  }
  const char one = traits_type::to_char_type(letter);
  return xsputn(&one, 1) == 1 ? letter : traits_type::eof();
}

std::streamsize BothUnitsBuffer::xsputn(const char* text, std::streamsize size) {
  for (std::streamsize at = 0; at < size; ++at) {
    pending_ += text[at];
    if (text[at] == '\n') {
      pass();
    }
  }
  return to_ ? size : 0;
}

int BothUnitsBuffer::sync() {
  behind().flush();
  return to_ ? 0 : -1;
}

bool inBothUnits(const std::ostream& out) {
  return bufferOf(out) != nullptr;
}

QString forReaders(const std::ostream& out, const QString& text) {
  const BothUnitsBuffer* buffer = bufferOf(out);
  return buffer == nullptr
             ? text
             : QString::fromStdString(hangbook::inBothUnits(text.toStdString(), buffer->names()));
}

std::ostream& asIs(std::ostream& out) {
  BothUnitsBuffer* buffer = bufferOf(out);
  return buffer == nullptr ? out : buffer->behind();
}

QString figureForReaders(const std::ostream& out, const QString& figure, const QString& unit) {
  const auto other = inBothUnits(out) ? customaryOf(figure.toStdString(), unit.toStdString()) : std::nullopt;
  return other ? QStringLiteral("%1 (%2)").arg(figure, QString::fromStdString(other->figure)) : figure;
}

QString unitForReaders(const std::ostream& out, const QString& unit) {
  const std::string other = inBothUnits(out) ? customaryUnit(unit.toStdString()) : std::string();
  return other.empty() ? unit : QStringLiteral("%1 (%2)").arg(unit, QString::fromStdString(other));
}

} // namespace hangbook::terminal
