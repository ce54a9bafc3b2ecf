// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "options/option.h"

namespace hangbook::desk {

/// A verdict's sign standing by itself, as high as a line of its font; the words stand beside it.
class VerdictSign : public QWidget {
  Q_OBJECT
public:
  explicit VerdictSign(QWidget* parent = nullptr);
  void setVerdict(std::optional<options::Verdict> verdict);
  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  std::optional<options::Verdict> verdict_;
};

} // namespace hangbook::desk
