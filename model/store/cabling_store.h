// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/cabling.h"
#include "store/store.h"

namespace hangbook::store {

/// Makers' connectors, sockets and looms' ends, and the plugs of all shows; of one where `show` is not empty.
calendar::Cabling loadCabling(Store& store, const QString& tour = {}, const QString& show = {});

/// The makers' part of it: no plugs.
calendar::Cabling loadConnections(Store& store);

catalogue::ConnectorType save(Store& store, const catalogue::ConnectorType& type);
catalogue::Socket save(Store& store, const catalogue::Socket& socket);
catalogue::LoomEnd save(Store& store, const catalogue::LoomEnd& end);
calendar::Plug save(Store& store, const calendar::Plug& plug);

/// As for makers' data (catalogue_store.h). Who asks looks first for the plugs that name it.
void remove(Store& store, const catalogue::ConnectorType& type);
void remove(Store& store, const catalogue::Socket& socket);
void remove(Store& store, const catalogue::LoomEnd& end);
void remove(Store& store, const calendar::Plug& plug);

} // namespace hangbook::store
