// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include <QDialog>
#include <QImage>

#include "desk/source/session.h"
#include "reports/pdf.h"
#include "reports/sheet.h"

class QComboBox;
class QScrollArea;

namespace hangbook::desk {

/// A sheet's pages as they will be printed, on the paper that is chosen here, and the way to keep it as a
/// file.
class SheetPreview : public QDialog {
  Q_OBJECT
public:
  SheetPreview(Session& session, reports::Sheet sheet, reports::Stamp stamp, reports::Paper paper,
               QWidget* parent = nullptr);

  /// As PDF or CSV, by the name's ending. Throws Error where it cannot be written.
  void save(const QString& file) const;

private:
  reports::Paper paper() const;
  /// Draws them on the worker: a long sheet takes longer than the window may stand still.
  void drawPages();
  void showPages(const std::vector<QImage>& pages);
  void askWhere();

  Session& session_;
  reports::Sheet sheet_;
  reports::Stamp stamp_;
  QComboBox* papers_;
  QScrollArea* scroll_;
  std::shared_ptr<Watch> drawing_;
};

} // namespace hangbook::desk
