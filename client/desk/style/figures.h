// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QString>

#include "quantity/text.h"

namespace hangbook::desk {

/// Figures as the window shows them, always with their unit, in the system that is switched on. What is not
/// known reads "not known", never 0 and never blank.
class Figures {
public:
  explicit Figures(UnitSystem system = UnitSystem::metric) : system_(system) {}

  UnitSystem system() const { return system_; }

  QString length(std::optional<double> metres, int digits = 2) const;
  /// A way over the ground: whole kilometres or miles.
  QString way(double metres) const;
  QString force(std::optional<double> kilonewtons, int digits = 2) const;
  QString mass(std::optional<double> kilograms, int digits = 1) const;
  QString angle(std::optional<double> degrees, int digits = 1) const;
  QString percent(std::optional<double> percent, int digits = 0) const;
  QString plain(std::optional<double> value, int digits) const;
  /// A finding's value or limit in the unit that the rule speaks in ("kN", "m", "kg", "°", "%" …).
  QString inUnit(std::optional<double> value, const QString& unit) const;

  bool operator==(const Figures&) const = default;

private:
  UnitSystem system_;
};

QString notKnownText();

} // namespace hangbook::desk
