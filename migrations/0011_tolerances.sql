-- SPDX-License-Identifier: GPL-3.0-or-later
-- How far makers' masses, centres of gravity, lengths and chain pitches may be off, either way.

ALTER TABLE cabinet_type ADD COLUMN mass_tolerance_kg @real
  CONSTRAINT "a mass tolerance must not be below 0" CHECK (mass_tolerance_kg >= 0);
ALTER TABLE cabinet_type ADD COLUMN centre_tolerance_m @real
  CONSTRAINT "a centre tolerance must not be below 0" CHECK (centre_tolerance_m >= 0);
ALTER TABLE cabinet_type ADD COLUMN place_tolerance_m @real
  CONSTRAINT "a place tolerance must not be below 0" CHECK (place_tolerance_m >= 0);
ALTER TABLE bar_type ADD COLUMN mass_tolerance_kg @real
  CONSTRAINT "a mass tolerance must not be below 0" CHECK (mass_tolerance_kg >= 0);
ALTER TABLE bar_type ADD COLUMN centre_tolerance_m @real
  CONSTRAINT "a centre tolerance must not be below 0" CHECK (centre_tolerance_m >= 0);
ALTER TABLE bar_type ADD COLUMN place_tolerance_m @real
  CONSTRAINT "a place tolerance must not be below 0" CHECK (place_tolerance_m >= 0);
ALTER TABLE chain_type ADD COLUMN pitch_tolerance_m @real
  CONSTRAINT "a pitch tolerance must not be below 0" CHECK (pitch_tolerance_m >= 0);
