// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>

/// The demo tour that comes with the program: eleven stops of the Lanternfish Parade, as the same files that
/// anybody may import. All names and figures are invented.
namespace hangbook::demo {

struct File {
  QString name;     ///< "types.csv", for faults
  QString kind;     ///< as `import --kind` takes it
  QByteArray bytes; ///< as the file lies in the source
};

/// In the order in which they are to be imported.
std::vector<File> files();

} // namespace hangbook::demo
