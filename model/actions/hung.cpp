// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/hung.h"

#include <algorithm>
#include <set>

#include "actions/run.h"
#include "actions/usable.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/choice_store.h"
#include "store/fleet_store.h"
#include "store/hung_store.h"

namespace hangbook::actions {
namespace {

using calendar::Hung;
using calendar::HungSerials;
using fleet::Unit;
using fleet::UnitKind;

QString placeName(int element) {
  return element == 0 ? QStringLiteral("the bar") : QStringLiteral("cabinet %1").arg(element);
}

[[noreturn]] void refuse(Trouble trouble, const HungFor& hang, int element, const QString& why) {
  throw Error(trouble, why.toStdString(),
              QStringLiteral("hang %1, %2").arg(hang.hang, placeName(element)).toStdString());
}

options::OptionKey chosenFor(store::Store& store, const HungFor& hang) {
  for (const options::Choice& each : store::loadChoices(store, hang.tour, hang.show)) {
    if (each.hang == hang.hang) {
      return each.key;
    }
  }
  throw Error(Trouble::notPossible, "nothing is chosen for the hang " + hang.hang.toStdString() +
                                        ", so nobody can say what hangs where");
}

/// Throws where the unit is none that may hang there; answers what is unproven of it.
QString checked(store::Store& store, const HungFor& hang, const calendar::Show& show, int element) {
  const options::OptionKey key = chosenFor(store, hang);
  const QString& serial = hang.serials.at(element);
  if (element < 0 || element > key.stack.size()) {
    refuse(Trouble::badInput, hang, element,
           QStringLiteral("a place from 1 to %1 is expected, or the bar").arg(key.stack.size()));
  }
  const auto unit = store::loadUnit(store, serial);
  if (!unit) {
    refuse(Trouble::badInput, hang, element, QStringLiteral("there is no unit \"%1\"").arg(serial));
  }
  const QString type = element == 0 ? key.bar : key.stack[element - 1];
  if (unit->kind != (element == 0 ? UnitKind::bar : UnitKind::cabinet) || unit->type != type) {
    refuse(Trouble::badInput, hang, element,
           QStringLiteral("a %1 is expected; %2 is a %3").arg(type, serial, unit->type));
  }
  if (unit->pieces) {
    refuse(Trouble::badInput, hang, element,
           QStringLiteral("%1 is a counted batch; one thing with a serial is expected").arg(serial));
  }
  const Usable usable = isUsable(store, *unit, show);
  if (!usable.yes) {
    refuse(Trouble::notPossible, hang, element, usable.why);
  }
  return usable.why;
}

/// A unit hangs at one place of a show.
void mustHangOnce(const std::vector<Hung>& all, const HungFor& wanted) {
  for (auto each = wanted.serials.begin(); each != wanted.serials.end(); ++each) {
    const auto [element, serial] = *each;
    const auto again = std::find_if(std::next(each), wanted.serials.end(),
                                    [&serial = serial](const auto& other) { return other.second == serial; });
    if (again != wanted.serials.end()) {
      refuse(Trouble::badInput, wanted, again->first,
             QStringLiteral("%1 is %2 already").arg(serial, placeName(element)));
    }
    const auto other = std::ranges::find_if(all, [&, &serial = serial](const Hung& hung) {
      return hung.hang != wanted.hang && hung.serial == serial;
    });
    if (other != all.end()) {
      refuse(Trouble::notPossible, wanted, element,
             QStringLiteral("%1 is recorded as %2 of hang %3")
                 .arg(serial, placeName(other->element), other->hang));
    }
  }
}

HungFor ofHang(const std::vector<Hung>& all, HungFor hang) {
  hang.serials.clear();
  for (const Hung& each : all) {
    if (each.hang == hang.hang && !each.serial.isEmpty()) {
      hang.serials[each.element] = each.serial;
    }
  }
  return hang;
}

void write(store::Store& store, const std::vector<Hung>& all, const HungFor& wanted, int element) {
  const auto found = std::ranges::find_if(
      all, [&](const Hung& each) { return each.hang == wanted.hang && each.element == element; });
  Hung hung = found != all.end() ? *found : Hung{{}, wanted.tour, wanted.show, wanted.hang, element, {}};
  const auto serial = wanted.serials.find(element);
  hung.serial = serial == wanted.serials.end() ? QString() : serial->second;
  store::save(store, hung);
}

calendar::Show showOf(store::Store& store, const HungFor& hang) {
  const auto show = store::loadShow(store, hang.tour, hang.show);
  if (!show || std::ranges::count(show->hangs, hang.hang, &calendar::Hang::name) == 0) {
    throw Error(Trouble::badInput, "there is no hang \"" + hang.hang.toStdString() + "\" at that show",
                hang.show.toStdString());
  }
  return *show;
}

/// Places at which the two say another unit, or only one says any.
std::set<int> changedBetween(const HungSerials& before, const HungSerials& after) {
  std::set<int> changed;
  for (const auto& [one, other] : {std::pair(&before, &after), std::pair(&after, &before)}) {
    for (const auto& [element, serial] : *one) {
      const auto there = other->find(element);
      if (there == other->end() || there->second != serial) {
        changed.insert(element);
      }
    }
  }
  return changed;
}

/// Whether both want what they take on one day; a day that is not known might be any.
bool awayTogether(const calendar::Show& one, const calendar::Show& other) {
  const auto before = [](const QDate& ends, const QDate& begins) {
    return ends.isValid() && begins.isValid() && ends < begins;
  };
  return !before(one.awayTo, other.awayFrom) && !before(other.awayTo, one.awayFrom);
}

QString awayText(const calendar::Show& show) {
  const auto text = [](const QDate& day) {
    return day.isValid() ? day.toString(Qt::ISODate) : QStringLiteral("a day not known");
  };
  return QStringLiteral("%1 to %2").arg(text(show.awayFrom), text(show.awayTo));
}

/// Where else the unit is recorded on days on which it is away for the show; empty: nowhere.
QString elsewhere(store::Store& store, const std::vector<Hung>& all, const calendar::Show& show,
                  const QString& serial) {
  QStringList where;
  for (const Hung& each : all) {
    if (each.serial != serial || (each.tour == show.tour && each.show == show.name)) {
      continue;
    }
    const auto other = store::loadShow(store, each.tour, each.show);
    if (other && awayTogether(show, *other)) {
      where << QStringLiteral("at %1 (%2, away %3) as %4 of hang %5")
                   .arg(each.show, each.tour, awayText(*other), placeName(each.element), each.hang);
    }
  }
  return where.isEmpty() ? QString()
                         : QStringLiteral("is recorded %1 too").arg(where.join(QStringLiteral(", ")));
}

/// What a record comes to, before anything is written.
struct Looked {
  std::vector<Hung> all; ///< of the show, as it stands
  std::set<int> changed;
  HungRecorded made;
};

Looked lookedAt(store::Store& store, const HungFor& wanted) {
  const calendar::Show show = showOf(store, wanted);
  Looked looked{store::loadHung(store, wanted.tour, wanted.show), {}, {wanted, {}}};
  mustHangOnce(looked.all, wanted);
  looked.changed = changedBetween(ofHang(looked.all, wanted).serials, wanted.serials);
  std::vector<Hung> everywhere;
  for (const int element : looked.changed) {
    if (!wanted.serials.contains(element)) {
      continue;
    }
    if (everywhere.empty()) {
      everywhere = store::loadHung(store);
    }
    const QString& serial = wanted.serials.at(element);
    looked.made.unproven << checked(store, wanted, show, element);
    if (const QString where = elsewhere(store, everywhere, show, serial); !where.isEmpty()) {
      looked.made.unproven
          << QStringLiteral("hang %1, %2: %3 %4").arg(wanted.hang, placeName(element), serial, where);
    }
  }
  looked.made.unproven.removeAll(QString());
  return looked;
}

QString textOf(const HungSerials& serials) {
  QStringList texts;
  for (const auto& [element, serial] : serials) {
    texts << QStringLiteral("%1: %2").arg(QString::number(element), serial);
  }
  return texts.join(QStringLiteral(", "));
}

} // namespace

HungFor hungNow(store::Store& store, const HungFor& hang) {
  return ofHang(store::loadHung(store, hang.tour, hang.show), hang);
}

std::map<QString, QString> hungElsewhere(store::Store& store, const calendar::Show& show) {
  std::map<QString, QString> found;
  const std::vector<Hung> all = store::loadHung(store);
  for (const Hung& here : all) {
    if (here.tour == show.tour && here.show == show.name && !here.serial.isEmpty()) {
      if (const QString where = elsewhere(store, all, show, here.serial); !where.isEmpty()) {
        found[here.serial] = where;
      }
    }
  }
  return found;
}

HungRecorded tryHung(store::Store& store, const HungFor& wanted) {
  return store.reading([&] { return lookedAt(store, wanted).made; });
}

HungRecorded recordHung(store::Store& store, const HungFor& wanted, const QString& by) {
  const QString subject = QStringLiteral("%1, %2, %3").arg(wanted.tour, wanted.show, wanted.hang);
  return withDeed(store, by, {"units of a hang recorded", subject, textOf(wanted.serials)},
                  [&](const QString&) {
                    const Looked looked = lookedAt(store, wanted);
                    for (const int element : looked.changed) {
                      write(store, looked.all, wanted, element);
                    }
                    return looked.made;
                  });
}

void putInPlaceOf(store::Store& store, const QString& tour, const QString& show, const QString& dead,
                  const QString& stand, const QString& by) {
  for (const Hung& each : store::loadHung(store, tour, show)) {
    if (each.serial == dead) {
      HungFor hang = hungNow(store, {tour, show, each.hang});
      hang.serials[each.element] = stand;
      recordHung(store, hang, by);
    }
  }
}

} // namespace hangbook::actions
