// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/presence.h"

#include <cerrno>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>

namespace hangbook::store {
namespace {

bool lock(int file, int how) {
  int said = 0;
  do {
    said = flock(file, how);
  } while (said != 0 && errno == EINTR);
  return said == 0;
}

/// Whether the open file is still the one of that name: whoever closed the store last removes it.
bool isNamed(int file, const QByteArray& name) {
  struct stat held {};
  struct stat named {};
  return fstat(file, &held) == 0 && stat(name.constData(), &named) == 0 && held.st_dev == named.st_dev &&
         held.st_ino == named.st_ino;
}

} // namespace

QString Presence::fileFor(const QString& store) {
  return store + QStringLiteral("-open");
}

Presence::Presence(const QString& store) : name_(fileFor(store)) {
  constexpr int mostTries = 100; // each means that another program ended at that very moment
  for (int tries = 0; tries < mostTries && !open(); ++tries) {
  }
}

bool Presence::open() {
  const QByteArray name = QFile::encodeName(name_);
  file_ = ::open(name.constData(), O_RDONLY | O_CREAT | O_CLOEXEC, 0666);
  if (file_ < 0) {
    return true;
  }
  // Alone: kept for itself until the store is found sound. Whoever finds it held so knows nothing yet and
  // looks for itself; only a shared lock says that somebody did.
  others_ = !lock(file_, LOCK_EX | LOCK_NB) && lock(file_, LOCK_SH | LOCK_NB);
  if (isNamed(file_, name)) {
    return true;
  }
  ::close(file_);
  file_ = -1;
  others_ = false;
  return false;
}

void Presence::settle() {
  if (file_ >= 0) {
    lock(file_, LOCK_SH);
  }
}

Presence::~Presence() {
  if (file_ < 0) {
    return;
  }
  const QByteArray name = QFile::encodeName(name_);
  if (lock(file_, LOCK_EX | LOCK_NB) && isNamed(file_, name)) {
    unlink(name.constData());
  }
  ::close(file_);
}

} // namespace hangbook::store
