-- SPDX-License-Identifier: GPL-3.0-or-later
-- A pick may hang from two or three points that do not stand over it; and what a load path needs to be judged
-- link by link.

CREATE TABLE venue_bridle (
  owner_id @uuid NOT NULL REFERENCES venue (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL CONSTRAINT "a bridle needs a name" CHECK (name <> ''),
  points @json NOT NULL,
  x_m @real,
  y_m @real,
  z_m @real NOT NULL,
  steels @json NOT NULL,
  shackle @text NOT NULL,
  tolerance_m @real CONSTRAINT "a tolerance must not be below 0" CHECK (tolerance_m >= 0),
  source_text @text NOT NULL,
  source_date @date,
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, name),
  CONSTRAINT "an apex has x and y or neither" CHECK ((x_m IS NULL) = (y_m IS NULL))
) @strict;

ALTER TABLE hardware_type ADD COLUMN stiffness_n @real
  CONSTRAINT "a stiffness must be above 0" CHECK (stiffness_n > 0);
ALTER TABLE hardware_type ADD COLUMN design_factor @real
  CONSTRAINT "a design factor is at least 1" CHECK (design_factor >= 1);
ALTER TABLE hang ADD COLUMN secondary_slack_m @real
  CONSTRAINT "a slack must not be below 0" CHECK (secondary_slack_m >= 0);
