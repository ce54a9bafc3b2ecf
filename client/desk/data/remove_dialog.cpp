// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/remove_dialog.h"

namespace hangbook::desk {

RemoveDialog::RemoveDialog(const QString& record, const QStringList& people, const QString& atDesk,
                           QWidget* parent)
    : AskDialog(QStringLiteral("remove"), tr("Remove %1").arg(record),
                tr("%1 is taken out with all of its figures and parts. It stays where something names it: "
                   "then you are told what. Undo brings it back.")
                    .arg(record),
                tr("Remove it"), parent) {
  addBy(tr("Who removes it"), people, atDesk);
}

} // namespace hangbook::desk
