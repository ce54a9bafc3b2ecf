// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <condition_variable>
#include <deque>
#include <exception>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>

#include <QObject>
#include <QPointer>

namespace hangbook::desk {

/// Lets a job tell how far it is and learn that it is no longer wanted. Shared between the two threads.
class Watch {
public:
  bool cancelled() const { return cancelled_.load(); }
  void cancel() { cancelled_.store(true); }
  /// 0…1, told by the job.
  double progress() const { return progress_.load(); }
  void setProgress(double share) { progress_.store(share); }

private:
  std::atomic<bool> cancelled_{false};
  std::atomic<double> progress_{0.0};
};

/// One worker thread with a queue. Jobs run there in order; what they answer arrives on the thread of the
/// receiver, by the event queue, and is dropped where the receiver has gone or the job was cancelled.
class Work {
public:
  Work();
  ~Work();
  Work(const Work&) = delete;
  Work& operator=(const Work&) = delete;

  /// `job` runs on the worker and answers a value; `done` gets it on the receiver's thread; `failed` gets
  /// what the job threw. Answers the watch with which the caller may cancel.
  template <class Job, class Done, class Failed>
  std::shared_ptr<Watch> start(QObject* receiver, Job job, Done done, Failed failed) {
    auto watch = std::make_shared<Watch>();
    const QPointer<QObject> target(receiver);
    ++*pending_;
    add([this, watch, target, job = std::move(job), done = std::move(done),
         failed = std::move(failed)]() mutable {
      try {
        if (watch->cancelled()) {
          deliver(target, [] {});
          return;
        }
        auto answer = std::make_shared<decltype(job(*watch))>(job(*watch));
        deliver(target, [watch, answer, done = std::move(done)] {
          if (!watch->cancelled()) {
            done(std::move(*answer));
          }
        });
      } catch (...) {
        deliver(target, [watch, what = std::current_exception(), failed = std::move(failed)] {
          if (!watch->cancelled()) {
            failed(what);
          }
        });
      }
    });
    return watch;
  }

  /// Whether a job is waiting or running or its answer is still on the way. Every job, cancelled or not, ends
  /// with an event on the window's thread.
  bool busy() const { return *pending_ > 0; }

  /// What the worker does at the very end, on its own thread, even where jobs are left over.
  void setLast(std::function<void()> last) { last_ = std::move(last); }

private:
  void add(std::function<void()> task);
  void run();
  void deliver(const QPointer<QObject>& target, std::function<void()> call);

  std::mutex mutex_;
  std::condition_variable wake_;
  std::deque<std::function<void()>> tasks_;
  bool stopping_ = false;
  std::function<void()> last_; ///< set before the first job
  /// Counted on the window's thread alone; shared with messages that may arrive after this has gone.
  std::shared_ptr<int> pending_ = std::make_shared<int>(0);
  std::thread thread_;
};

} // namespace hangbook::desk
