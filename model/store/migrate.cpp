// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migrate.h"

#include <QDateTime>
#include <QFileInfo>

#include "store/backup.h"
#include "store/opening.h"
#include "store/store_error.h"

namespace hangbook::store {

namespace {

/// The same for every program that migrates a PostgreSQL store: they take turns by this lock.
constexpr qint64 migrationLock = 0x48616E67;

const char* const createRegister = "CREATE TABLE IF NOT EXISTS hangbook_migration ("
                                   " number @int NOT NULL PRIMARY KEY,"
                                   " name @text NOT NULL,"
                                   " checksum @text NOT NULL CHECK (length(checksum) = 64),"
                                   " program @text NOT NULL,"
                                   " applied_at @instant NOT NULL"
                                   ") @strict";

QString numberText(int number) {
  return QStringLiteral("%1").arg(number, 4, 10, QLatin1Char('0'));
}

Rows takenSteps(Connection& connection) {
  const QString there =
      connection.engine() == Engine::sqlite
          ? QStringLiteral("SELECT count(*) AS n FROM sqlite_schema WHERE name = 'hangbook_migration'")
          : QStringLiteral("SELECT count(*) AS n FROM information_schema.tables WHERE table_name = "
                           "'hangbook_migration' AND table_schema = current_schema()");
  if (connection.rows(there).at(0).integer("n") == 0) {
    return {};
  }
  return connection.rows(
      QStringLiteral("SELECT number, name, checksum, program FROM hangbook_migration ORDER BY number"));
}

[[noreturn]] void refuse(const Connection& connection, Cause cause, const QString& text) {
  throw StoreError(cause, text.toStdString(), connection.place().shown().toStdString());
}

/// What a taken step differs in from ours; empty = nothing.
QString differenceOf(const Row& taken, const Migration& own) {
  if (taken.text("name") == own.name && taken.text("checksum") == own.checksum()) {
    return {};
  }
  return QStringLiteral("step %1 \"%2\" of the store, taken by Hangbook %3, is not the step \"%4\" of this "
                        "program: one of them was changed afterwards")
      .arg(numberText(own.number), taken.text("name"), taken.text("program"), own.name);
}

/// Refuses a store that is not a beginning of our steps; answers how many it has taken.
int checkTaken(Connection& connection, const std::vector<Migration>& steps, const QString& program) {
  const Rows taken = takenSteps(connection);
  const int own = static_cast<int>(steps.size());
  if (!taken.empty() && taken.back().number("number") > own) {
    refuse(connection, Cause::newer,
           QStringLiteral("the store was written by Hangbook %1 (step %2 \"%3\"); this is Hangbook %4, which "
                          "knows steps up to %5 only. Open it with version %1 or newer; it was left as it is")
               .arg(taken.back().text("program"), numberText(taken.back().number("number")),
                    taken.back().text("name"), program, numberText(own)));
  }
  for (std::size_t i = 0; i < taken.size(); ++i) {
    if (taken[i].number("number") != steps[i].number) {
      refuse(connection, Cause::damaged,
             QStringLiteral("the store lacks its step %1").arg(numberText(steps[i].number)));
    }
    if (const QString difference = differenceOf(taken[i], steps[i]); !difference.isEmpty()) {
      refuse(connection, Cause::other, difference);
    }
  }
  return static_cast<int>(taken.size());
}

void take(Connection& connection, const Migration& step, const QString& program) {
  for (const QString& statement : step.statements(connection.engine())) {
    connection.execute(statement);
  }
  connection.run(
      QStringLiteral("INSERT INTO hangbook_migration (number, name, checksum, program, applied_at) "
                     "VALUES (:number, :name, :checksum, :program, :at)"),
      {{"number", step.number},
       {"name", step.name},
       {"checksum", step.checksum()},
       {"program", program},
       {"at", QDateTime::currentDateTimeUtc()}});
  if (connection.engine() == Engine::sqlite) {
    connection.execute(QStringLiteral("PRAGMA user_version = %1").arg(step.number));
    if (!connection.rows(QStringLiteral("PRAGMA foreign_key_check")).empty()) {
      throw StoreError(Cause::reference, "it would leave rows that name what is not there");
    }
  }
}

void lockForSteps(Connection& connection) {
  if (connection.engine() == Engine::sqlite) {
    connection.begin(QStringLiteral("BEGIN IMMEDIATE"));
    connection.execute(QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
  } else {
    // Not serialisable: its view of the data would be older than the lock that it waits for.
    connection.begin(QStringLiteral("BEGIN"));
    connection.execute(QStringLiteral("SELECT pg_advisory_xact_lock(%1)").arg(migrationLock));
  }
  connection.execute(withTypeWords(QString::fromLatin1(createRegister), connection.engine()));
}

void takeInTransaction(Connection& connection, const std::vector<Migration>& steps, const Migration& step,
                       const QString& program) {
  lockForSteps(connection);
  try {
    // Another program may have taken it while this one waited.
    if (checkTaken(connection, steps, program) < step.number) {
      take(connection, step, program);
    }
  } catch (const StoreError& error) {
    connection.rollback();
    refuse(connection, error.cause(),
           QStringLiteral("step %1 \"%2\" failed, and the store was left as it was before it (%3)")
               .arg(numberText(step.number), step.name, QString::fromUtf8(error.what())));
  } catch (...) {
    connection.rollback();
    throw;
  }
  connection.commit();
  connection.forgetStatements();
}

QString copyName(const QString& file, int number) {
  const QString name = file + QStringLiteral(".before-") + numberText(number);
  return QFileInfo::exists(name)
             ? name + QDateTime::currentDateTimeUtc().toString(QStringLiteral("'-'yyyyMMdd'T'HHmmsszzz"))
             : name;
}

} // namespace

void migrate(Connection& connection, const std::vector<Migration>& steps, const QString& program) {
  const int taken = checkTaken(connection, steps, program);
  if (taken == static_cast<int>(steps.size())) {
    return;
  }
  const bool sqlite = connection.engine() == Engine::sqlite;
  if (sqlite && taken > 0) {
    backUp(connection, copyName(connection.place().file, taken + 1));
  }
  // A step may build a table anew; references are checked as a whole before each commit instead.
  const auto references = [&](const char* state) {
    if (sqlite) {
      connection.execute(QStringLiteral("PRAGMA foreign_keys = ") + QLatin1StringView(state));
    }
  };
  references("OFF");
  try {
    for (std::size_t i = static_cast<std::size_t>(taken); i < steps.size(); ++i) {
      takeInTransaction(connection, steps, steps[i], program);
    }
  } catch (...) {
    references("ON");
    throw;
  }
  settle(connection);
}

QStringList faultsOfSteps(Connection& connection, const std::vector<Migration>& steps) {
  QStringList faults;
  const Rows taken = takenSteps(connection);
  if (taken.size() != steps.size()) {
    faults.append(QStringLiteral("the store has taken %1 of %2 steps").arg(taken.size()).arg(steps.size()));
    return faults;
  }
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (const QString difference = differenceOf(taken[i], steps[i]); !difference.isEmpty()) {
      faults.append(difference);
    }
  }
  return faults;
}

} // namespace hangbook::store
