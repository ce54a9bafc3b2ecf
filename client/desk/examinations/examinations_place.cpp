// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/examinations_place.h"

#include <algorithm>

#include <QLineEdit>

#include "desk/frame/place_names.h"

namespace hangbook::desk {

ExaminationsPlace::ExaminationsPlace(Session& session, QWidget* parent)
    : Place(place::examinations, tr("Examinations"), parent), session_(session),
      page_(new ListPage(QStringLiteral("dueList"), tr("Examinations"), model_,
                         static_cast<int>(DueColumn::stop), static_cast<int>(DueColumn::due),
                         Qt::AscendingOrder, this)) {
  page_->setEmptyTexts(tr("No unit owes an examination. Enter units and examination rules, or import them."),
                       tr("No line contains these words."));
  setContent(page_);
  connect(&session_, &Session::overviewChanged, this, &ExaminationsPlace::showFacts);
  showFacts();
}

QString ExaminationsPlace::explanation() const {
  return tr(
      "Every unit and every examination that it owes, earliest first. “Stands until” is the last day on "
      "which the "
      "last examination stands: months are counted so that the day is never overshot. “Last stop before” "
      "names the last stop of the route at which it can still be done in time.");
}

void ExaminationsPlace::showKey(const QString& key) {
  page_->showKey(key);
}

void ExaminationsPlace::takeFocus() {
  page_->table().setFocus();
}

void ExaminationsPlace::showFacts() {
  const QDate today = session_.overview().today;
  auto lines = dueLines(session_.overview());
  const auto never =
      std::count_if(lines.begin(), lines.end(), [](const DueLine& each) { return !each.due.last.isValid(); });
  const auto overdue = std::count_if(lines.begin(), lines.end(), [](const DueLine& each) {
    return each.due.last.isValid() && (each.due.overdue || !each.due.due.isValid());
  });
  setNote(tr("%1 overdue · %2 without a record").arg(overdue).arg(never));
  model_.setLines(std::move(lines), today);
}

} // namespace hangbook::desk
