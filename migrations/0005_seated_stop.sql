-- SPDX-License-Identifier: GPL-3.0-or-later
-- What the rear stop of a seated joint may carry: it holds the joint where it stands open as far as it can.

ALTER TABLE stacking_join ADD COLUMN stop_limit_n @real
  CONSTRAINT "a stop's limit must be above 0" CHECK (stop_limit_n > 0);
