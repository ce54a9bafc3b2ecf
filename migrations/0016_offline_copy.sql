-- SPDX-License-Identifier: GPL-3.0-or-later
-- A store that is the offline copy of one show says so in its one row; nothing is written to it any more.

CREATE TABLE offline_copy (
  tour @text NOT NULL,
  show @text NOT NULL,
  as_of @date NOT NULL,
  made_at @instant NOT NULL,
  made_by @text NOT NULL CONSTRAINT "an offline copy needs somebody who made it" CHECK (made_by <> ''),
  made_from @text NOT NULL,
  revisions @text NOT NULL
) @strict;
