// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/history_store.h"
#include "store/store.h"

/// Use cases: one for each thing that a person does. They are the only writers: each checks, writes facts and
/// plans and the history row in one transaction, and answers what was stored. `by` is the person's name;
/// where it is empty, whoever is at the desk counts; where nobody is, Error (badInput) is thrown.
namespace hangbook::actions {

/// Several use cases as one: all are saved, or none. All of `work` may run again where the engine asks for
/// it.
template <class Work>
auto run(store::Store& store, Work&& work) {
  return store.transact(work);
}

/// Who acts. Throws Error (badInput) where nobody is named and nobody is at the desk.
QString whoActs(store::Store& store, const QString& by);

/// What the history says of a deed.
struct Told {
  const char* action;
  QString subject;
  QString detail = {};
};

/// Runs `work(who)` and writes its history row with it.
template <class Work>
auto withDeed(store::Store& store, const QString& by, const Told& told, Work work) {
  return store.transact([&] {
    const QString who = whoActs(store, by);
    store::Deed deed;
    deed.by = who;
    deed.action = QString::fromUtf8(told.action);
    deed.subject = told.subject;
    deed.detail = told.detail;
    store::append(store, deed);
    return work(who);
  });
}

} // namespace hangbook::actions
