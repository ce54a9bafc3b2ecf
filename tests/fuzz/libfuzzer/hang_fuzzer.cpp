// SPDX-License-Identifier: GPL-3.0-or-later
// libFuzzer's door: bytes in, `statics` and `settled` out. Built by tests/long/fuzz.
#include <cstddef>
#include <cstdint>

#include "fuzz/answered.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  hangbook::testing::answer(QByteArray(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size)));
  return 0;
}
