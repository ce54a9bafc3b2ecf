// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/in_parallel.h"

#include <algorithm>
#include <condition_variable>
#include <exception>
#include <iterator>
#include <mutex>
#include <thread>
#include <vector>

namespace hangbook::options {
namespace {

/// Jobs handed out in order.
class Jobs {
public:
  Jobs(std::size_t count, const std::function<void(std::size_t)>& job) : count_(count), job_(job) {}

  void work() {
    for (std::size_t next = begin(); next < count_; next = begin()) {
      std::exception_ptr failure;
      try {
        job_(next);
      } catch (...) {
        failure = std::current_exception();
      }
      const std::lock_guard lock(mutex_);
      ++ended_;
      if (failure && (!failure_ || next < failed_)) {
        failure_ = failure;
        failed_ = next;
        stopped_ = true;
      }
      changed_.notify_all();
    }
  }

  void tellUntilDone(const std::function<void(std::size_t)>& told) {
    std::unique_lock lock(mutex_);
    std::size_t last = 0;
    while (last < count_) { // also of those that ended before anybody listened
      changed_.wait(lock, [&] { return ended_ != last || stopped_; });
      if (stopped_) {
        return;
      }
      last = ended_;
      lock.unlock();
      told(last);
      lock.lock();
    }
  }

  void stop() {
    const std::lock_guard lock(mutex_);
    stopped_ = true;
  }

  void throwFailure() const {
    if (failure_) {
      std::rethrow_exception(failure_);
    }
  }

private:
  std::size_t begin() {
    const std::lock_guard lock(mutex_);
    return stopped_ ? count_ : std::min(next_++, count_);
  }

  const std::size_t count_;
  const std::function<void(std::size_t)>& job_;
  std::mutex mutex_;
  std::condition_variable changed_;
  std::size_t next_{};
  std::size_t ended_{};
  bool stopped_{};
  std::exception_ptr failure_;
  std::size_t failed_{};
};

} // namespace

void inParallel(std::size_t count, int threads, const std::function<void(std::size_t)>& job,
                const std::function<void(std::size_t)>& told) {
  const std::size_t cores = std::thread::hardware_concurrency(); // 0 where that is not known
  const std::size_t hands = std::min(count, threads > 0 ? static_cast<std::size_t>(threads) : cores);
  if (hands < 2) {
    for (std::size_t i = 0; i < count; ++i) {
      job(i);
      told(i + 1);
    }
    return;
  }
  Jobs jobs(count, job);
  {
    std::vector<std::jthread> crew; // joined at the end of this block, whatever is thrown in it
    std::generate_n(std::back_inserter(crew), hands,
                    [&jobs] { return std::jthread([&jobs] { jobs.work(); }); });
    try {
      jobs.tellUntilDone(told);
    } catch (...) {
      jobs.stop();
      throw;
    }
  }
  jobs.throwFailure();
}

} // namespace hangbook::options
