// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the air takes from sound on its way.
namespace hangbook::options {

/// Absorption of a pure tone in still air, dB per metre, after ISO 9613-1:1993. Frequency in Hz, temperature
/// in °C, humidity in % relative, pressure in kPa.
double airAbsorption(double frequency, double temperature, double humidity, double pressure = 101.325);

/// What a point source loses from one distance to a longer one by spreading, dB: 6.02 for each doubling.
double spreadingLoss(double from, double to);

} // namespace hangbook::options
