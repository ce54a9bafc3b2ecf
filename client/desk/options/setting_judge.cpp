// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/setting_judge.h"

#include <utility>

namespace hangbook::desk {

SettingJudge::SettingJudge(Session& session, QObject* parent) : QObject(parent), session_(session) {}

void SettingJudge::ask(const Wish& wish) {
  if (watch_) {
    waiting_ = wish;
  } else {
    begin(wish);
  }
}

void SettingJudge::drop() {
  waiting_.reset();
  if (watch_) {
    watch_->cancel();
    watch_.reset();
  }
}

void SettingJudge::begin(const Wish& wish) {
  watch_ = session_.judging().start(
      this,
      [source = session_.source(), wish](Watch&) {
        Answer answer{wish.option, {}, wish.judge};
        if (wish.judge) {
          answer.option = source->judge(*wish.snapshot, wish.option.key, *wish.option.setting);
        }
        answer.scene = source->scene(*wish.snapshot, answer.option);
        return answer;
      },
      [this](const Answer& answer) {
        watch_.reset();
        Q_EMIT answered(answer);
        next();
      },
      [this](const std::exception_ptr& what) {
        watch_.reset();
        Q_EMIT failed(wordsFor(what, tr("What is shown is the last setting that could be judged.")));
        next();
      });
}

void SettingJudge::next() {
  if (waiting_ && !watch_) {
    begin(*std::exchange(waiting_, std::nullopt));
  }
}

} // namespace hangbook::desk
