// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "quantity/text.h"

namespace hangbook::desk {

/// Figures as the window shows them, always with their unit, in the system that is switched on. What is not
/// known reads "not known", never 0 and never blank.
class Figures {
public:
  /// Names with a quantity in them, which no unit system changes.
  using Names = std::shared_ptr<const std::vector<std::string>>;

  explicit Figures(UnitSystem system = UnitSystem::metric, Names names = {})
      : system_(system), names_(std::move(names)) {}

  UnitSystem system() const { return system_; }
  const Names& names() const { return names_; }

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
  /// A sentence of a rule, a change or a stop, which was made in metric units: in US customary ones these
  /// stand in brackets behind each of its quantities (quantity/both_units.h).
  QString sentence(const QString& metric) const;

  bool operator==(const Figures&) const = default;

private:
  UnitSystem system_;
  Names names_;
};

QString notKnownText();

} // namespace hangbook::desk
