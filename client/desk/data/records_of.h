// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "catalogue/cabling.h"
#include "desk/data/record.h"

namespace hangbook::desk {

RecordLine recordOf(const venue::Venue& venue);
RecordLine recordOf(const catalogue::CabinetType& type);
RecordLine recordOf(const catalogue::BarType& type);
RecordLine recordOf(const catalogue::HoistType& type);
RecordLine recordOf(const catalogue::ChainType& type);
RecordLine recordOf(const catalogue::HardwareType& type);
RecordLine recordOf(const catalogue::CartType& type);
RecordLine recordOf(const catalogue::StackingTable& table);
RecordLine recordOf(const catalogue::ConnectorType& type);
/// The plugs of a hang; which they are is read when they are edited.
RecordLine recordOf(const calendar::Show& show, const calendar::Hang& hang);
RecordLine recordOf(const people::Person& person);
/// House rules of a tour, venue or show, each as a record of its own.
void addHouse(std::vector<RecordLine>& all, const std::vector<venue::HouseFigure>& house,
              const QString& whose);

} // namespace hangbook::desk
