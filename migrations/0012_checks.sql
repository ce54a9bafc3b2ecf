-- SPDX-License-Identifier: GPL-3.0-or-later
-- What the check of a whole tour said of each show, kept with the digest of all that it was decided from: it counts for
-- as long as both are the same. No fact and no plan: it may be thrown away at any time. And what somebody at a
-- machine likes, such as the order of a list.

CREATE TABLE kept_check (
  tour @text NOT NULL,
  show @text NOT NULL,
  inputs @text NOT NULL CONSTRAINT "a kept check names its inputs" CHECK (inputs <> ''),
  program @text NOT NULL,
  result @json NOT NULL,
  checked_at @instant NOT NULL,
  PRIMARY KEY (tour, show)
) @strict;

CREATE TABLE liking (
  device @text NOT NULL,
  name @text NOT NULL CONSTRAINT "a liking needs a name" CHECK (name <> ''),
  value @text NOT NULL,
  PRIMARY KEY (device, name)
) @strict;
