// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/keys_dialog.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QShortcut>
#include <QStyle>
#include <QTableWidget>
#include <QVBoxLayout>

#include "desk/frame/place.h"
#include "desk/lists/flat_header.h"
#include "desk/lists/list_page.h"
#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

QString whereOf(const QObject* of) {
  for (; of != nullptr; of = of->parent()) {
    if (const auto* place = qobject_cast<const Place*>(of)) {
      return place->title();
    }
  }
  return {};
}

QString written(const QList<QKeySequence>& keys) {
  QStringList texts;
  for (const QKeySequence& each : keys) {
    texts << each.toString(QKeySequence::NativeText);
  }
  return texts.join(QObject::tr(" or "));
}

} // namespace

std::vector<KeyLine> keysOf(const QWidget& window) {
  std::vector<KeyLine> all;
  for (const QShortcut* each : window.findChildren<QShortcut*>()) {
    all.push_back({written({each->key()}), each->whatsThis(), whereOf(each)});
  }
  for (const QAction* each : window.findChildren<QAction*>()) {
    if (!each->shortcut().isEmpty() && !each->text().isEmpty()) {
      all.push_back({written(each->shortcuts()), each->text().remove(QLatin1Char('&')), whereOf(each)});
    }
  }
  const auto also = [&all](const QString& keys, const QString& what) { all.push_back({keys, what, {}}); };
  also(KeysDialog::tr("Tab, Shift+Tab"), KeysDialog::tr("Next and previous field or list"));
  also(KeysDialog::tr("Up, Down, Page Up, Page Down, Home, End"), KeysDialog::tr("Move in a list"));
  also(KeysDialog::tr("Alt+letter"), KeysDialog::tr("The button, field or menu whose letter is underlined"));
  also(KeysDialog::tr("Esc"), KeysDialog::tr("Leave a dialog; close the answers of the search"));
  return all;
}

KeysDialog::KeysDialog(QWidget& window) : QDialog(&window) {
  setObjectName(QStringLiteral("keysDialog"));
  setWindowTitle(tr("All keys"));
  const std::vector<KeyLine> lines = keysOf(window);
  auto* table = new QTableWidget(static_cast<int>(lines.size()), 3, this);
  table->setObjectName(QStringLiteral("keysTable"));
  table->setAccessibleName(tr("All keys"));
  const int margin = 1 + style()->pixelMetric(QStyle::PM_FocusFrameHMargin); // as left and right of a cell
  table->setHorizontalHeader(new FlatHeader(table, 1, margin));
  table->setHorizontalHeaderLabels({tr("Keys"), tr("What they do"), tr("Where")});
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setTabKeyNavigation(false);
  table->setShowGrid(false);
  table->setWordWrap(false);
  table->verticalHeader()->hide();
  table->verticalHeader()->setDefaultSectionSize(rowHeight(font()));
  for (int column = 0; column < 3; ++column) {
    table->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  }
  for (int row = 0; row < table->rowCount(); ++row) {
    const KeyLine& line = lines[static_cast<std::size_t>(row)];
    table->setItem(row, 0, new QTableWidgetItem(line.keys)); // the table takes them
    table->setItem(row, 1, new QTableWidgetItem(line.what));
    table->setItem(row, 2, new QTableWidgetItem(line.where.isEmpty() ? tr("everywhere") : line.where));
  }
  table->resizeColumnsToContents();
  int width = 0;
  for (int column = 0; column < 3; ++column) {
    table->setColumnWidth(column, table->columnWidth(column) + space::step);
    width += table->columnWidth(column);
  }
  table->horizontalHeader()->setStretchLastSection(true);
  table->selectRow(0);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(table, 1);
  all->addWidget(buttons);
  const int around = style()->pixelMetric(QStyle::PM_ScrollBarExtent) + 2 * space::wide;
  resize(width + around, std::min(640, rowHeight(font()) * (table->rowCount() + 5)));
}

} // namespace hangbook::desk
