// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::desk {

/// So many pieces of a counted batch are to be a batch of their own.
struct SplitRequest {
  QString serial{};
  int pieces = 0;
  QString newSerial{};
  QString by{};
};

/// What a source can do with counted batches, besides Source: the same object offers both, and the same
/// holds, that it runs on Work's thread alone.
class BatchSource {
public:
  BatchSource() = default;
  BatchSource(const BatchSource&) = delete;
  BatchSource& operator=(const BatchSource&) = delete;
  virtual ~BatchSource() = default;

  virtual void splitBatch(const SplitRequest& request) = 0;
};

} // namespace hangbook::desk
