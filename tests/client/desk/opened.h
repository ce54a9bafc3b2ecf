// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <utility>

#include "fixture_source.h"
#include "shown.h"

namespace hangbook::testing {

/// A window over values.
struct Opened : Shown {
  explicit Opened(desk::Overview overview = smallOverview())
      : Opened(std::make_shared<FixtureSource>(std::move(overview))) {}

  std::shared_ptr<FixtureSource> source;

private:
  explicit Opened(const std::shared_ptr<FixtureSource>& values) : Shown(values), source(values) {}
};

} // namespace hangbook::testing
