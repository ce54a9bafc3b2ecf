// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>

#include "hang/hang.h"

/// What must be so of any hang, however little sense it makes.
namespace hangbook::testing {

/// How a hang was answered by `statics` and by `settled`: refused with a reason, or with figures.
struct Answered {
  bool read = false;    ///< it was a hang/1 at all
  bool solved = false;  ///< statics gave figures
  bool settled = false; ///< so did settled
};

/// Reads bytes as the terminal does and answers them. Throws std::logic_error where a figure that is not
/// finite comes out without an error, where an error says nothing, or where what was read is not what is
/// written again.
Answered answer(const QByteArray& bytes);

/// The same of a hang that was never JSON, so that it may hold what JSON cannot: infinities and NaN.
Answered answer(const hang::Hang& hang);

} // namespace hangbook::testing
