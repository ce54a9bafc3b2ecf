// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "catalogue/catalogue.h"
#include "store/store.h"

/// Makers' data in the store. `save` inserts a record without id, else changes the stored one of that
/// revision; it answers the record as stored. It throws StaleError where somebody else changed it meanwhile,
/// and Error where the name is taken or another name is not known. A renaming is followed wherever the old
/// name stands. `remove` refuses what is still used.
namespace hangbook::store {

catalogue::Catalogue loadCatalogue(Store& store);

catalogue::CabinetType save(Store& store, const catalogue::CabinetType& type);
catalogue::BarType save(Store& store, const catalogue::BarType& type);
catalogue::HoistType save(Store& store, const catalogue::HoistType& type);
catalogue::ChainType save(Store& store, const catalogue::ChainType& type);
catalogue::HardwareType save(Store& store, const catalogue::HardwareType& type);
catalogue::CartType save(Store& store, const catalogue::CartType& type);
catalogue::StackingTable save(Store& store, const catalogue::StackingTable& table);

void remove(Store& store, const catalogue::CabinetType& type);
void remove(Store& store, const catalogue::BarType& type);
void remove(Store& store, const catalogue::HoistType& type);
void remove(Store& store, const catalogue::ChainType& type);
void remove(Store& store, const catalogue::HardwareType& type);
void remove(Store& store, const catalogue::CartType& type);
void remove(Store& store, const catalogue::StackingTable& table);

} // namespace hangbook::store
