// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/rule.h"

namespace hangbook::options {

/// Whether the chain, where there is one, has slack: it then carries nothing until a joint has opened.
bool chainHasSlack(const Settled& settled);

/// Push at the rear contact of a seated joint in the shape as assembled, N: with the chain's tension where
/// it is taut, at tension 0 where it has slack or where there is none. From moment balance about the front
/// pin: push = moment of the weight below ÷ x of the contact (which is negative). Below 0 the joint would
/// open.
double seatedPush(const Case& option, const Settled& settled, std::size_t element);

/// The first seated joint that would open at tension 0 (counted from 0), or −1.
int opensAtRest(const Case& option, const Settled& settled);

} // namespace hangbook::options
