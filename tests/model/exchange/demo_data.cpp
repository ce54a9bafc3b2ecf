// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo_data.h"

#include <boost/test/unit_test.hpp>

#include "demo/demo.h"

namespace hangbook::exchange {

const Data& demoData() {
  static const Data data = [] {
    Data sofar;
    for (const demo::File& file : demo::files()) {
      Import import = readFile(kindFrom(file.kind), file.bytes, sofar, somebody());
      BOOST_REQUIRE_MESSAGE(import.faults.empty(), file.name.toStdString() << "\n"
                                                                           << faultsOf(import).toStdString());
      sofar = std::move(import.after);
    }
    return sofar;
  }();
  return data;
}

QString faultsOf(const Import& import) {
  QString all;
  for (const Fault& fault : import.faults) {
    all += text(fault) + QLatin1Char('\n');
  }
  return all;
}

} // namespace hangbook::exchange
