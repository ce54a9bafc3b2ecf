// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/names.h"

#include <algorithm>
#include <numeric>
#include <vector>

#include <QSet>

namespace hangbook::terminal {
namespace {

QString plain(const QString& name) {
  return name.normalized(QString::NormalizationForm_C).toCaseFolded();
}

/// Letters to add, drop or change (Levenshtein's distance).
int lettersApart(const QString& one, const QString& other) {
  std::vector<int> row(static_cast<std::size_t>(other.size()) + 1);
  std::iota(row.begin(), row.end(), 0);
  for (qsizetype i = 0; i < one.size(); ++i) {
    int corner = row[0];
    row[0] = static_cast<int>(i) + 1;
    for (std::size_t j = 1; j < row.size(); ++j) {
      const int kept = corner + (one[i] == other[static_cast<qsizetype>(j) - 1] ? 0 : 1);
      corner = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, kept});
    }
  }
  return row.back();
}

/// What begins with or holds the text stands before what is merely spelt like it.
int farness(const QString& name, const QString& known) {
  const QString wanted = plain(name);
  const QString other = plain(known);
  if (!wanted.isEmpty() && other.contains(wanted)) {
    return other.startsWith(wanted) ? 0 : 1;
  }
  return 1 + lettersApart(wanted, other);
}

} // namespace

bool sameName(const QString& one, const QString& other) {
  return one.normalized(QString::NormalizationForm_C) == other.normalized(QString::NormalizationForm_C);
}

QStringList nearest(const QString& name, const QStringList& known, int most) {
  QStringList names = known;
  names.removeDuplicates();
  std::stable_sort(names.begin(), names.end(), [&](const QString& one, const QString& other) {
    return farness(name, one) < farness(name, other);
  });
  return names.mid(0, most);
}

Error unknownName(const QString& name, const QString& what, const QStringList& known) {
  QString line = QStringLiteral("“%1” is not %2; ").arg(name, what);
  if (known.isEmpty()) {
    line += QStringLiteral("there is none yet");
  } else {
    const QStringList named = nearest(name, known);
    const bool all = named.size() == QSet<QString>(known.begin(), known.end()).size();
    line += (all ? QStringLiteral("there are: ") : QStringLiteral("nearest: ")) +
            named.join(QStringLiteral(", "));
  }
  return Error(Trouble::badInput, line.toStdString());
}

} // namespace hangbook::terminal
