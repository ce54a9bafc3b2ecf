-- SPDX-License-Identifier: GPL-3.0-or-later
-- A load cell in a leg of a bridle: the point that the leg goes to; empty for a cell at a pick's hook or point.

ALTER TABLE load_reading ADD COLUMN leg_to @text NOT NULL DEFAULT ''
  CONSTRAINT "a cell in a leg hangs at its point" CHECK (leg_to = '' OR cell_at = 'point');
