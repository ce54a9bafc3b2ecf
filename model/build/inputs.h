// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "build/job.h"
#include "calendar/cabling.h"
#include "options/option.h"
#include "options/snapshot.h"

namespace hangbook::build {

/// What a plan takes, from a show's data and one option for each hang that is to be built. Throws Error
/// (badInput) where an option names a hang that the show does not have.
Job jobOf(const options::Snapshot& snapshot, const std::vector<options::Option>& options,
          const calendar::Cabling& cabling);

} // namespace hangbook::build
