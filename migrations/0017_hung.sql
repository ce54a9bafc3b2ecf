-- SPDX-License-Identifier: GPL-3.0-or-later
-- Which unit hangs at which place of a hang: 0 is its bar, cabinets count from 1 below it. A place whose record was
-- taken back keeps its line without a serial. That a unit hangs at one place of a show only is held by those who write: a whole
-- column that moves by one place passes through states that are not so.

CREATE TABLE hang_unit (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  tour @text NOT NULL,
  show @text NOT NULL,
  hang @text NOT NULL,
  element @int NOT NULL CONSTRAINT "the bar is place 0, cabinets are counted from 1" CHECK (element >= 0),
  serial @text REFERENCES unit (serial) ON UPDATE CASCADE,
  UNIQUE (tour, show, hang, element),
  FOREIGN KEY (tour, show) REFERENCES show (tour, name) ON UPDATE CASCADE ON DELETE CASCADE
) @strict;
