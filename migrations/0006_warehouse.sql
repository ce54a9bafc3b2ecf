-- SPDX-License-Identifier: GPL-3.0-or-later
-- The warehouse: counted batches and looms, who weighed and when, places as records, what a movement was for and
-- which scan wrote it, what happened to a unit besides moving, examinations by use and by occasion, and files.

ALTER TABLE unit ADD COLUMN pieces @int CONSTRAINT "a batch has at least one piece" CHECK (pieces >= 1);
ALTER TABLE unit ADD COLUMN weighed_on @date;
ALTER TABLE unit ADD COLUMN weighed_by @text NOT NULL DEFAULT '';

ALTER TABLE examination_rule ADD COLUMN jurisdiction @text NOT NULL DEFAULT '';
ALTER TABLE examination_rule ADD COLUMN uses @int CONSTRAINT "uses must be above 0" CHECK (uses > 0);
ALTER TABLE examination_rule ADD COLUMN hours @real CONSTRAINT "hours must be above 0" CHECK (hours > 0);
ALTER TABLE examination_rule ADD COLUMN idle_months @int CONSTRAINT "idle months must be above 0"
  CHECK (idle_months > 0);
ALTER TABLE examination_rule ADD COLUMN after_exceptional @bool NOT NULL DEFAULT FALSE;
ALTER TABLE examination_rule ADD COLUMN at_new_site @bool NOT NULL DEFAULT FALSE;

-- What the movement was: an empty word stands for those from before these columns.
ALTER TABLE movement ADD COLUMN act @text NOT NULL DEFAULT '' CHECK (act IN ('', 'entered', 'out', 'in', 'transfer',
  'onto-cart', 'onto-truck', 'state', 'undone'));
ALTER TABLE movement ADD COLUMN tour @text NOT NULL DEFAULT '';
ALTER TABLE movement ADD COLUMN show @text NOT NULL DEFAULT '';
-- One scan may move a whole cart: its movements carry the same scan.
ALTER TABLE movement ADD COLUMN scan_id @uuid;
CREATE INDEX movement_scan ON movement (scan_id) WHERE scan_id IS NOT NULL;
CREATE INDEX unit_cart ON unit (cart) WHERE cart IS NOT NULL;
CREATE INDEX unit_type ON unit (kind, type);

CREATE TABLE place (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a place needs a name" CHECK (name <> ''),
  kind @text NOT NULL CHECK (kind IN ('bay', 'truck', 'venue', 'workshop')),
  floor_length_m @real CONSTRAINT "a length must be above 0" CHECK (floor_length_m > 0),
  floor_width_m @real CONSTRAINT "a width must be above 0" CHECK (floor_width_m > 0),
  payload_kg @real CONSTRAINT "a payload must be above 0" CHECK (payload_kg > 0)
) @strict;

-- A fact: something happened to a unit.
CREATE TABLE occurrence (
  id @uuid NOT NULL PRIMARY KEY,
  unit_id @uuid NOT NULL REFERENCES unit (id),
  kind @text NOT NULL CHECK (kind IN ('use', 'exceptional', 'assembly', 'fault')),
  happened_on @date NOT NULL,
  uses @int CONSTRAINT "uses must not be below 0" CHECK (uses >= 0),
  hours @real CONSTRAINT "hours must not be below 0" CHECK (hours >= 0),
  at_place @text NOT NULL,
  remark @text NOT NULL,
  corrects @uuid REFERENCES occurrence (id),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL
) @strict;
CREATE INDEX occurrence_unit ON occurrence (unit_id, happened_on);
CREATE INDEX occurrence_corrects ON occurrence (corrects) WHERE corrects IS NOT NULL;

-- A file, kept once under its SHA-256.
CREATE TABLE document (
  sha256 @text NOT NULL PRIMARY KEY CHECK (length(sha256) = 64),
  content @bytes NOT NULL
) @strict;

-- A fact: a file that belongs to a unit, and to one of its examinations where it is a certificate.
CREATE TABLE unit_document (
  id @uuid NOT NULL PRIMARY KEY,
  unit_id @uuid NOT NULL REFERENCES unit (id),
  examination_id @uuid REFERENCES examination (id),
  sha256 @text NOT NULL REFERENCES document (sha256),
  file_name @text NOT NULL CONSTRAINT "a file needs a name" CHECK (file_name <> ''),
  kind @text NOT NULL CHECK (kind IN ('certificate', 'photograph', 'other')),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL
) @strict;
CREATE INDEX unit_document_unit ON unit_document (unit_id);
