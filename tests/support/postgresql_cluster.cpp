// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/postgresql_cluster.h"

#include <pwd.h>
#include <signal.h>
#include <unistd.h>

#include <stdexcept>

#include <QDir>

namespace hangbook::testing {

namespace {

constexpr int mostWait = 60000; // ms; a machine that is busy with other tests is slow, not broken

[[noreturn]] void fail(const QString& why) {
  throw std::runtime_error("PostgreSQL for the tests: " + why.toStdString());
}

QString newestBinaries() {
  QDir versions(QStringLiteral("/usr/lib/postgresql"));
  QString best;
  int newest = 0;
  for (const QString& each : versions.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    if (each.toInt() > newest && QFile::exists(versions.filePath(each + QStringLiteral("/bin/initdb")))) {
      newest = each.toInt();
      best = versions.filePath(each + QStringLiteral("/bin"));
    }
  }
  if (best.isEmpty()) {
    fail(QStringLiteral("it is not installed (Debian package postgresql)"));
  }
  return best;
}

} // namespace

PostgresqlCluster& PostgresqlCluster::shared() {
  static PostgresqlCluster cluster;
  return cluster;
}

PostgresqlCluster::PostgresqlCluster()
    : binaries_(newestBinaries()), folder_(std::make_unique<QTemporaryDir>(
                                       QStringLiteral("/tmp/hangbook-pg-XXXXXX"))) { // short: a socket's path
  if (!folder_->isValid()) {
    fail(folder_->errorString());
  }
  asUser_ = {QStringLiteral("setpriv"), QStringLiteral("--pdeathsig"), QStringLiteral("INT")};
  if (geteuid() == 0) { // PostgreSQL refuses to run as root.
    const passwd* user = getpwnam("postgres");
    if (user == nullptr) {
      fail(QStringLiteral("there is no user postgres to run it as"));
    }
    if (chown(QFile::encodeName(folder_->path()).constData(), user->pw_uid, user->pw_gid) != 0) {
      fail(QStringLiteral("its folder cannot be given to the user postgres"));
    }
    asUser_ += {QStringLiteral("--reuid=postgres"), QStringLiteral("--regid=postgres"),
                QStringLiteral("--init-groups")};
  }
  asUser_ += {QStringLiteral("--")};
  const QString data = folder_->filePath(QStringLiteral("data"));
  call(QStringLiteral("initdb"), {QStringLiteral("--pgdata=") + data, QStringLiteral("--username=hangbook"),
                                  QStringLiteral("--auth=trust"), QStringLiteral("--encoding=UTF8"),
                                  QStringLiteral("--locale=C"), QStringLiteral("--no-sync")});

  QStringList words = asUser_.mid(1);
  words << program(QStringLiteral("postgres")) << QStringLiteral("-D") << data << QStringLiteral("-k")
        << folder_->path();
  for (const char* setting : {"listen_addresses=", "fsync=off", "full_page_writes=off",
                              "synchronous_commit=off", "max_connections=40", "shared_buffers=16MB",
                              "max_wal_senders=0", "wal_level=minimal", "autovacuum=off"}) {
    words << QStringLiteral("-c") << QString::fromLatin1(setting);
  }
  server_.setWorkingDirectory(folder_->path());
  server_.setProcessChannelMode(QProcess::MergedChannels);
  server_.start(asUser_.front(), words);
  QByteArray said;
  while (!said.contains("ready to accept connections")) {
    if (!server_.waitForReadyRead(mostWait)) {
      fail(QStringLiteral("it did not start: ") + QString::fromUtf8(said));
    }
    said += server_.readAll();
  }
  // What it says from now on is of no use, and must not fill its pipe.
  server_.closeReadChannel(QProcess::StandardOutput);
}

PostgresqlCluster::~PostgresqlCluster() {
  if (server_.state() != QProcess::NotRunning) {
    kill(static_cast<pid_t>(server_.processId()), SIGINT);
    if (!server_.waitForFinished(mostWait)) {
      server_.kill();
      server_.waitForFinished(mostWait);
    }
  }
}

QString PostgresqlCluster::program(const QString& name) const {
  return binaries_ + u'/' + name;
}

void PostgresqlCluster::call(const QString& name, const QStringList& words) {
  QProcess process;
  process.setWorkingDirectory(folder_->path());
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(asUser_.front(), asUser_.mid(1) + QStringList{program(name)} + words);
  if (!process.waitForFinished(mostWait) || process.exitStatus() != QProcess::NormalExit ||
      process.exitCode() != 0) {
    fail(name + QStringLiteral(" failed: ") + process.errorString() + u' ' +
         QString::fromUtf8(process.readAll()));
  }
}

void PostgresqlCluster::sql(const QString& database, const QString& statement) {
  call(QStringLiteral("psql"),
       {QStringLiteral("--no-psqlrc"), QStringLiteral("--quiet"), QStringLiteral("-h"), folder_->path(),
        QStringLiteral("-U"), QStringLiteral("hangbook"), QStringLiteral("-d"), database,
        QStringLiteral("-v"), QStringLiteral("ON_ERROR_STOP=1"), QStringLiteral("-c"), statement});
}

QString PostgresqlCluster::newDatabase() {
  const QString name = QStringLiteral("t%1").arg(++databases_);
  sql(QStringLiteral("postgres"), QStringLiteral("CREATE DATABASE %1").arg(name));
  return QStringLiteral("postgresql://hangbook@%1/%2")
      .arg(QString(folder_->path()).replace(u'/', QStringLiteral("%2F")), name);
}

QString PostgresqlCluster::databaseOf(const QString& address) {
  return address.section(u'/', -1);
}

} // namespace hangbook::testing
