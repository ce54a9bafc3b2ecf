-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a stated wind means, wet cloth and ice, and what a load cell read after lifting.

ALTER TABLE show ADD COLUMN wind_averaging_s @real
  CONSTRAINT "an averaging time must be above 0" CHECK (wind_averaging_s > 0);
ALTER TABLE show ADD COLUMN wind_height_m @real;
ALTER TABLE hang ADD COLUMN wet_mass_kg @real
  CONSTRAINT "wet cloth and ice must not be below 0" CHECK (wet_mass_kg >= 0);

-- Facts: one line for each pick of one reading, those of one lift under one number.
CREATE TABLE load_reading (
  id @uuid NOT NULL PRIMARY KEY,
  lift @uuid NOT NULL,
  tour @text NOT NULL,
  show @text NOT NULL,
  hang @text NOT NULL,
  option_id @text NOT NULL,
  pick @text NOT NULL CHECK (pick IN ('left', 'right', 'front', 'rear', 'single')),
  cell_at @text NOT NULL CHECK (cell_at IN ('hook', 'point')),
  reading_n @real NOT NULL,
  computed_n @real NOT NULL,
  instrument @text NOT NULL CONSTRAINT "a reading needs its instrument" CHECK (instrument <> ''),
  remark @text NOT NULL,
  corrects @uuid REFERENCES load_reading (id),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL
) @strict;
CREATE INDEX load_reading_show ON load_reading (tour, show, hang);
CREATE INDEX load_reading_corrects ON load_reading (corrects) WHERE corrects IS NOT NULL;
