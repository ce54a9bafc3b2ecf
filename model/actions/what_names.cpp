// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "actions/edit_record.h"

namespace hangbook::actions {
namespace {

using exchange::Data;

template <class List>
bool has(const List& names, const QString& name) {
  return std::ranges::count(names, name) > 0;
}

/// Collects what names one record.
class Naming {
public:
  Naming(QString name, const Data& data, const std::vector<options::Choice>& choices)
      : name_(std::move(name)), data_(data), choices_(choices) {}

  template <class List, class Names>
  Naming& each(const List& list, const QString& what, Names names) {
    for (const auto& one : list) {
      if (names(one)) {
        say(QStringLiteral("%1 “%2”").arg(what, one.name));
      }
    }
    return *this;
  }

  Naming& ofType(fleet::UnitKind kind) {
    const auto units = std::ranges::count_if(
        data_.units, [&](const fleet::Unit& unit) { return unit.kind == kind && unit.type == name_; });
    if (units > 0) {
      say(QStringLiteral("units of the fleet: %1").arg(units));
    }
    return each(data_.examinationRules, QStringLiteral("examination rule"),
                [&](const fleet::ExaminationRule& rule) { return rule.kind == kind && rule.type == name_; });
  }

  template <class Names>
  Naming& tables(Names names) {
    return each(data_.catalogue.tables, QStringLiteral("stacking table"), names);
  }

  template <class Names>
  Naming& chosen(Names names) {
    for (const options::Choice& choice : choices_) {
      if (names(choice.key)) {
        say(QStringLiteral("what is chosen for “%1” at “%2”").arg(choice.hang, choice.show));
      }
    }
    return *this;
  }

  template <class Names>
  Naming& marks(Names names) {
    const auto count = std::ranges::count_if(data_.marks, names);
    if (count > 0) {
      say(QStringLiteral("marks of the mark book: %1").arg(count));
    }
    return *this;
  }

  template <class Names>
  Naming& hangs(Names names) {
    for (const calendar::Show& show : data_.shows) {
      for (const calendar::Hang& hang : show.hangs) {
        if (names(hang)) {
          say(QStringLiteral("hang “%1” of show “%2”").arg(hang.name, show.name));
        }
      }
    }
    return *this;
  }

  template <class Names>
  Naming& plugs(Names names) {
    for (const calendar::Plug& plug : data_.cabling.plugs) {
      if (names(plug)) {
        say(QStringLiteral("a plug of hang “%1” of show “%2”").arg(plug.hang, plug.show));
      }
    }
    return *this;
  }

  const QString& name() const { return name_; }
  QStringList take() { return std::move(found_); }

private:
  void say(const QString& words) {
    if (!found_.contains(words)) {
      found_ << words;
    }
  }

  QString name_;
  const Data& data_;
  const std::vector<options::Choice>& choices_;
  QStringList found_;
};

void cabinet(Naming& naming, const Data& data) {
  const QString& name = naming.name();
  naming.ofType(fleet::UnitKind::cabinet)
      .tables([&](const catalogue::StackingTable& table) {
        return has(table.lowest, name) || has(table.held, name) ||
               std::ranges::count(table.counts, name, &catalogue::Count::type) > 0 ||
               std::ranges::any_of(table.joins, [&](const catalogue::Join& join) {
                 return join.above == name || join.below == name;
               });
      })
      .each(data.catalogue.carts, QStringLiteral("cart"),
            [&](const catalogue::CartType& cart) { return cart.carries == name; })
      .plugs([&](const calendar::Plug& plug) { return plug.cabinet == name; })
      .chosen([&](const options::OptionKey& key) { return key.stack.contains(name); })
      .marks([&](const marks::MarkUsed& mark) { return mark.stack.contains(name); });
}

void hardware(Naming& naming, const Data& data) {
  const QString& name = naming.name();
  naming.ofType(fleet::UnitKind::hardware)
      .ofType(fleet::UnitKind::loom)
      .hangs([&](const calendar::Hang& hang) { return has(hang.rigging, name) || has(hang.secondary, name); })
      .each(data.venues, QStringLiteral("venue"),
            [&](const venue::Venue& venue) {
              return std::ranges::any_of(venue.bridles, [&](const venue::Bridle& bridle) {
                return bridle.shackle == name || has(bridle.steels, name);
              });
            })
      .plugs([&](const calendar::Plug& plug) { return plug.loom == name; });
}

void venue(Naming& naming, const Data& data) {
  naming.each(data.shows, QStringLiteral("show"),
              [&](const calendar::Show& show) { return show.venue == naming.name(); });
}

void connector(Naming& naming, const Data& data) {
  const auto takes = [&](const auto& each) { return each.connector == naming.name(); };
  for (const catalogue::Socket& each : data.cabling.sockets) {
    naming.each(std::vector{each}, QStringLiteral("socket of %1").arg(each.cabinet), takes);
  }
  for (const catalogue::LoomEnd& each : data.cabling.ends) {
    naming.each(std::vector{each}, QStringLiteral("end of %1").arg(each.loom), takes);
  }
}

} // namespace

QStringList whatNames(const exchange::RecordName& record, const Data& data,
                      const std::vector<options::Choice>& choices) {
  Naming naming(record.name, data, choices);
  const QString& name = naming.name();
  const QString& sort = record.sort;
  if (sort == QLatin1String("cabinet")) {
    cabinet(naming, data);
  } else if (sort == QLatin1String("bar")) {
    naming.ofType(fleet::UnitKind::bar)
        .tables([&](const catalogue::StackingTable& table) { return has(table.bars, name); })
        .chosen([&](const options::OptionKey& key) { return key.bar == name; })
        .marks([&](const marks::MarkUsed& mark) { return mark.bar == name; });
  } else if (sort == QLatin1String("hoist")) {
    naming.ofType(fleet::UnitKind::hoist).chosen([&](const options::OptionKey& key) {
      return key.hoist == name;
    });
  } else if (sort == QLatin1String("chain")) {
    naming.ofType(fleet::UnitKind::chain)
        .tables([&](const catalogue::StackingTable& table) { return table.chain == name; })
        .marks([&](const marks::MarkUsed& mark) { return mark.chain == name; });
  } else if (sort == QLatin1String("hardware")) {
    hardware(naming, data);
  } else if (sort == QLatin1String("cart")) {
    naming.ofType(fleet::UnitKind::cart);
  } else if (sort == QLatin1String("table")) {
    naming.hangs([&](const calendar::Hang& hang) { return has(hang.tables, name); })
        .chosen([&](const options::OptionKey& key) { return key.table == name; });
  } else if (sort == QLatin1String("connector")) {
    connector(naming, data);
  } else if (sort == QLatin1String("venue")) {
    venue(naming, data);
  }
  return naming.take();
}

} // namespace hangbook::actions
