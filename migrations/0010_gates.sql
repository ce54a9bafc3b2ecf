-- SPDX-License-Identifier: GPL-3.0-or-later
-- Hold points of a build, signed or skipped with a reason; and in which holes a recorded mark's joints were pinned.

ALTER TABLE mark_used ADD COLUMN holes_deg @text NOT NULL DEFAULT '[]';

CREATE TABLE gate_signed (
  id @uuid NOT NULL PRIMARY KEY,
  tour @text NOT NULL,
  show @text NOT NULL,
  hang @text NOT NULL,
  option_id @text NOT NULL,
  gate @text NOT NULL CONSTRAINT "a hold point has a name" CHECK (gate <> ''),
  skipped @bool NOT NULL,
  reason @text NOT NULL,
  corrects @uuid REFERENCES gate_signed (id),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL,
  CONSTRAINT "skipping a hold point takes a reason" CHECK (NOT skipped OR reason <> '')
) @strict;
CREATE INDEX gate_signed_show ON gate_signed (tour, show, hang);
CREATE INDEX gate_signed_corrects ON gate_signed (corrects) WHERE corrects IS NOT NULL;
