// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/work.h"

#include <QCoreApplication>
#include <QMetaObject>

namespace hangbook::desk {

Work::Work() : thread_([this] { run(); }) {}

Work::~Work() {
  {
    const std::lock_guard lock(mutex_);
    stopping_ = true;
    tasks_.clear();
  }
  wake_.notify_one();
  thread_.join();
}

void Work::add(std::function<void()> task) {
  {
    const std::lock_guard lock(mutex_);
    tasks_.push_back(std::move(task));
  }
  wake_.notify_one();
}

void Work::run() {
  for (;;) {
    std::function<void()> task;
    {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, [this] { return stopping_ || !tasks_.empty(); });
      if (stopping_) {
        lock.unlock();
        if (last_) {
          last_();
        }
        return;
      }
      task = std::move(tasks_.front());
      tasks_.pop_front();
    }
    task();
  }
}

void Work::deliver(const QPointer<QObject>& target, std::function<void()> call) {
  // The receiver may go at any moment on its own thread, so the message is posted to the application, which
  // outlives all work, and the receiver is looked at only there.
  QMetaObject::invokeMethod(
      QCoreApplication::instance(),
      [target, pending = pending_, call = std::move(call)] {
        --*pending;
        if (!target.isNull()) {
          call();
        }
      },
      Qt::QueuedConnection);
}

} // namespace hangbook::desk
