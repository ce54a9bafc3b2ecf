-- SPDX-License-Identifier: GPL-3.0-or-later
-- Audience sections with a front line of their own (raked blocks, curved balconies, blocks to the side), what a
-- cabinet covers across, and the day's air pressure for advice on level. Not known until somebody says so.

ALTER TABLE venue_section ADD COLUMN front_x_m @real;
ALTER TABLE venue_section ADD COLUMN front_y_m @real;
ALTER TABLE venue_section ADD COLUMN bearing_deg @real;
ALTER TABLE venue_section ADD COLUMN width_m @real CONSTRAINT "a section's width must be above 0" CHECK (width_m > 0);
ALTER TABLE venue_section ADD COLUMN radius_m @real;
ALTER TABLE cabinet_type ADD COLUMN cover_across_deg @real
  CONSTRAINT "a cover across lies above 0 and up to 180" CHECK (cover_across_deg > 0 AND cover_across_deg <= 180);
ALTER TABLE show ADD COLUMN pressure_kpa @real CONSTRAINT "a pressure must be above 0" CHECK (pressure_kpa > 0);
