// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "options/option.h"

namespace hangbook::desk {

/// A verdict standing by itself: sign and word.
class VerdictLabel : public QWidget {
  Q_OBJECT
public:
  explicit VerdictLabel(QWidget* parent = nullptr);
  void setVerdict(std::optional<options::Verdict> verdict);
  std::optional<options::Verdict> verdict() const { return verdict_; }
  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  std::optional<options::Verdict> verdict_;
};

} // namespace hangbook::desk
