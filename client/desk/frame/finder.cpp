// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/finder.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <utility>

namespace hangbook::desk {
namespace {

constexpr int mostShown = 40;
constexpr std::size_t mostRecent = 12;
constexpr QChar between(u'\t');

} // namespace

struct Finder::Held {
  std::shared_ptr<const Overview> facts;
  std::optional<FindIndex> index;
};

Finder::Finder(QWidget* parent)
    : QLineEdit(parent), completer_(new QCompleter(&model_, this)), held_(std::make_shared<Held>()) {
  setObjectName(QStringLiteral("finder"));
  setAccessibleName(tr("Find anything by its name"));
  setToolTip(
      tr("Part of a show, venue, point, serial, mark, option, type, examination, person or place; Enter "
         "goes to the first, the arrows choose another (Ctrl+K)"));
  setPlaceholderText(tr("Find  (Ctrl+K)"));
  setClearButtonEnabled(true);
  completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
  completer_->setMaxVisibleItems(16);
  completer_->popup()->setObjectName(QStringLiteral("finderAnswers"));
  completer_->popup()->setAccessibleName(tr("What was found"));
  completer_->popup()->setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 70);
  completer_->setWidget(
      this); // not setCompleter: answers come when they are found, not when a key is pressed
  connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
          [this](const QModelIndex& index) { go(index.row()); });
  connect(this, &QLineEdit::textEdited, this, [this] {
    goOn_ = false;
    look();
  });
  connect(this, &QLineEdit::returnPressed, this, &Finder::goToFirst);
}

void Finder::setFacts(std::shared_ptr<const Overview> facts) {
  facts_ = std::move(facts);
}

void Finder::begin() {
  setFocus(Qt::ShortcutFocusReason);
  selectAll();
  look();
}

void Finder::look() {
  if (watch_) {
    watch_->cancel();
  }
  if (!facts_) {
    return;
  }
  watch_ = work_.start(
      this,
      [facts = facts_, held = held_, recent = recent_, words = text()](Watch& watch) {
        if (held->facts != facts) {
          held->index.emplace(*facts);
          held->facts = facts;
        }
        return held->index->find(words, recent, mostShown, [&watch] { return watch.cancelled(); });
      },
      [this](Found found) { show(std::move(found)); },
      [](const std::exception_ptr&) {}); // nothing to tell: it reads what is in memory
}

void Finder::show(Found found) {
  found_ = std::move(found);
  model_.clear();
  for (const Findable& each : found_.first) {
    auto* item = new QStandardItem(each.text); // the model takes it
    item->setEditable(false);
    model_.appendRow(item);
  }
  if (found_.first.empty() || found_.more > 0) {
    auto* rest =
        new QStandardItem(found_.first.empty() ? tr("Nothing contains these words")
                                               : tr("… and %n more: type more of it", nullptr, found_.more));
    rest->setFlags(Qt::NoItemFlags);
    model_.appendRow(rest);
  }
  if (std::exchange(goOn_, false)) {
    go(0);
  } else if (hasFocus()) {
    completer_->complete();
  }
}

void Finder::goToFirst() {
  if (text().trimmed().isEmpty()) {
    return;
  }
  goOn_ = true;
  look();
}

void Finder::go(int row) {
  if (row < 0 || row >= static_cast<int>(found_.first.size())) {
    return;
  }
  const Findable to = found_.first[static_cast<std::size_t>(row)];
  completer_->popup()->hide();
  std::erase(recent_, to);
  recent_.insert(recent_.begin(), to);
  recent_.resize(std::min(recent_.size(), mostRecent));
  Q_EMIT recentChanged();
  clear();
  Q_EMIT wanted(to.place, to.key, to.part);
}

QStringList Finder::recent() const {
  QStringList lines;
  for (const Findable& each : recent_) {
    lines << QStringList{each.text, each.place, each.key, each.part}.join(between);
  }
  return lines;
}

void Finder::setRecent(const QStringList& lines) {
  recent_.clear();
  for (const QString& line : lines) {
    const QStringList parts = line.split(between);
    if (parts.size() == 4 && recent_.size() < mostRecent) {
      recent_.push_back({parts[0], parts[1], parts[2], parts[3]});
    }
  }
}

} // namespace hangbook::desk
