// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/sentence.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {
namespace {

/// Never "-0.00".
QString rounded(double value, int digits) {
  const QString text = QString::number(value, 'f', digits);
  return text.toDouble() == 0.0 ? QString::number(0.0, 'f', digits) : text;
}

std::optional<double> known(double value) {
  return std::isfinite(value) ? std::optional<double>(value) : std::nullopt;
}

QString withSource(const QString& what, const catalogue::Source& source) {
  QString text = what;
  if (!source.text.isEmpty()) {
    text += QStringLiteral(": ") + source.text;
  }
  if (source.date.isValid()) {
    text += QStringLiteral(" (%1)").arg(source.date.toString(Qt::ISODate));
  }
  return text;
}

} // namespace

QString inM(double metres) {
  return rounded(metres, 2) + QStringLiteral(" m");
}

QString inDeg(double deg) {
  return rounded(deg, 1) + QStringLiteral("°");
}

QString venueSource(const venue::Venue& venue) {
  return withSource(QStringLiteral("venue's sheet for %1").arg(venue.name), venue.source);
}

QString makerSource(const QString& name, const catalogue::Source& source) {
  return withSource(QStringLiteral("maker's data for %1").arg(name), source);
}

Verdict worse(Verdict one, Verdict other) {
  return std::max(one, other);
}

Finding findingFor(const char* rule, const Use& use, const char* unit) {
  Finding finding;
  finding.rule = QString::fromLatin1(rule);
  finding.verdict = use.verdict;
  finding.applies = use.applies;
  finding.value = known(use.value);
  finding.limit = known(use.limit);
  finding.unit = QString::fromUtf8(unit);
  return finding;
}

Finding doesNotApply(const char* rule, const QString& why) {
  Finding finding;
  finding.rule = QString::fromLatin1(rule);
  finding.verdict = Verdict::holds;
  finding.applies = false;
  finding.text = QStringLiteral("Does not apply: ") + why;
  return finding;
}

} // namespace hangbook::options
