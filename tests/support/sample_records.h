// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/show.h"
#include "catalogue/catalogue.h"
#include "fleet/unit.h"
#include "marks/gate.h"
#include "marks/mark.h"
#include "options/frozen.h"
#include "venue/venue.h"

/// Records with every field set, and with figures that do not end in binary, so that what a store forgets or
/// rounds shows.
namespace hangbook::testing {

catalogue::CabinetType sampleCabinet(const QString& name);
catalogue::BarType sampleBar(const QString& name);
catalogue::HoistType sampleHoist();
catalogue::ChainType sampleChain();
catalogue::HardwareType sampleHardware(const QString& name, catalogue::HardwareKind kind);
catalogue::CartType sampleCart(const QString& carries);
catalogue::StackingTable sampleTable();
venue::Venue sampleVenue(const QString& name);
calendar::Tour sampleTour();
calendar::Show sampleShow(const QString& name, const QString& venue);
fleet::Unit sampleUnit(const QString& serial);
fleet::ExaminationRule sampleRule();
marks::MarkUsed sampleMark();
marks::GateSigned sampleGate(const QString& gate);
/// For hang "left" of that show.
options::Choice sampleChoice(const QString& show);

} // namespace hangbook::testing
