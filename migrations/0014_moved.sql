-- SPDX-License-Identifier: GPL-3.0-or-later
-- A setting that was signed once the hang had been flown names the revision that it moved the hang from; 0: built as chosen.

ALTER TABLE choice ADD COLUMN moved_from @int NOT NULL DEFAULT 0
  CONSTRAINT "a hang is moved from an earlier setting" CHECK (moved_from >= 0 AND moved_from < revision);
