// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/people_store.h"

#include <QSysInfo>

#include "store/records.h"

namespace hangbook::store {

namespace {

using people::Person;

constexpr auto personColumns = [](auto& io, auto& person) {
  io("name", person.name);
  io("role", person.role);
};

RecordName nameOf(const Person& person) {
  return {"person", QStringLiteral("person \"%1\"").arg(person.name)};
}

} // namespace

std::vector<Person> loadPeople(Store& store) {
  return readRecords<Person>(store, "person", personColumns, QStringLiteral("ORDER BY name"));
}

Person save(Store& store, const Person& person) {
  return store.transact([&] {
    Person saved = person;
    inTermsOf(nameOf(person), [&] { writeByColumns(store, nameOf(person), saved, personColumns); });
    return saved;
  });
}

void remove(Store& store, const Person& person) {
  removeRecord(store, nameOf(person), person.id, person.revision);
}

QString thisDevice() {
  const QString name = QSysInfo::machineHostName();
  return name.isEmpty() ? QStringLiteral("this machine") : name;
}

std::optional<Person> personAtDesk(Store& store) {
  auto found = readRecords<Person>(
      store, "person", personColumns,
      QStringLiteral("WHERE id IN (SELECT person_id FROM at_desk WHERE device = :device)"),
      {{"device", thisDevice()}});
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

void setPersonAtDesk(Store& store, const QString& name) {
  store.transact([&] {
    const auto person =
        store.one(QStringLiteral("SELECT id FROM person WHERE name = :name"), {{"name", name}});
    if (!person) {
      throw Error(Trouble::badInput,
                  "nobody of the name \"" + name.toStdString() + "\" is known; enter them first");
    }
    store.run(QStringLiteral("INSERT INTO at_desk (device, person_id) VALUES (:device, :person) "
                             "ON CONFLICT (device) DO UPDATE SET person_id = excluded.person_id"),
              {{"device", thisDevice()}, {"person", person->uuid("id")}});
  });
}

} // namespace hangbook::store
