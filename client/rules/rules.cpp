// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/rules.h"

#include <QFile>

#include "quantity/error.h"

// A resource in a static library is left out by the linker unless somebody asks for it, and the macro that
// asks must stand outside every namespace.
static void bringIn() {
  Q_INIT_RESOURCE(rule_files);
}

namespace hangbook::rules {
namespace {

Set read(const char* name, const char* title) {
  const QString word = QString::fromLatin1(name);
  QFile file(QStringLiteral(":/rules/%1.csv").arg(word));
  if (!file.open(QIODevice::ReadOnly)) {
    throw Error(Trouble::badInput, "the rules are not in this program", name);
  }
  return {word, QString::fromUtf8(title), file.readAll()};
}

} // namespace

const std::vector<Set>& sets() {
  static const std::vector<Set> all = [] {
    bringIn();
    return std::vector<Set>{read("loler", "UK: Lifting Operations and Lifting Equipment Regulations 1998"),
                            read("dguv", "Germany: DGUV Vorschriften 17 and 54, BG Bau"),
                            read("asme", "USA: ASME B30.16, normal service")};
  }();
  return all;
}

const Set& set(const QString& name) {
  std::string names;
  for (const Set& each : sets()) {
    if (each.name.compare(name, Qt::CaseInsensitive) == 0) {
      return each;
    }
    names += (names.empty() ? "" : ", ") + each.name.toStdString();
  }
  throw Error(Trouble::badInput,
              "\"" + name.toStdString() + "\" is not a set of rules; expected is one of " + names);
}

} // namespace hangbook::rules
