// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hang/doubt.h"
#include "support/random_hang.h"

/// How far the figures of a hang may be off, drawn by a seed; `scale` 0: not at all.
namespace hangbook::testing {

inline hang::PieceDoubt doubtOf(RandomHangs& by, double scale) {
  return {scale * by.between(0.0, 1.0), scale * by.between(0.0, 2.0), 0.01 * scale * by.between(0.0, 1.0),
          0.002 * scale * by.between(0.0, 1.0)};
}

inline hang::Doubts doubtsOf(const hang::Hang& hang, RandomHangs& by, double scale) {
  hang::Doubts doubts{doubtOf(by, scale),
                      doubtOf(by, scale),
                      {},
                      1e-4 * by.between(0.0, scale),
                      2e-4 * by.between(0.0, scale)};
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    doubts.stack.push_back(doubtOf(by, scale));
  }
  return doubts;
}

} // namespace hangbook::testing
