// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/qr.h"

#include <memory>

#include <qrencode.h>

#include "quantity/error.h"

namespace hangbook::reports {
namespace {

constexpr int quietModules = 4; // ISO/IEC 18004

using Code = std::unique_ptr<QRcode, void (*)(QRcode*)>;

Code encode(const QString& text) {
  const QByteArray bytes = text.toUtf8();
  Code code(bytes.isEmpty() ? nullptr
                            : QRcode_encodeData(static_cast<int>(bytes.size()),
                                                reinterpret_cast<const unsigned char*>(bytes.constData()), 0,
                                                QR_ECLEVEL_M),
            &QRcode_free);
  if (!code) {
    throw Error(Trouble::badInput, "\"" + text.toStdString() + "\" cannot be put into a QR code");
  }
  return code;
}

} // namespace

void drawCode(QPainter& painter, const QString& text, int left, int top, int side, int least) {
  const Code code = encode(text);
  const int module = side / (code->width + 2 * quietModules);
  if (module < least) {
    throw Error(Trouble::notPossible, "the code is too long for a label of this size");
  }
  const int used = module * code->width;
  const int x0 = left + (side - used) / 2;
  const int y0 = top + (side - used) / 2;
  for (int row = 0; row < code->width; ++row) {
    for (int column = 0; column < code->width; ++column) {
      if ((code->data[row * code->width + column] & 1U) != 0) {
        painter.fillRect(x0 + column * module, y0 + row * module, module, module, Qt::black);
      }
    }
  }
}

} // namespace hangbook::reports
