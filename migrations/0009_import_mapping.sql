-- SPDX-License-Identifier: GPL-3.0-or-later
-- How the headings of a list that is no file of ours were read the last time it came, by its headings.

CREATE TABLE import_mapping (
  kind @text NOT NULL CHECK (kind <> ''),
  headings @text NOT NULL,
  mapping @json NOT NULL,
  date_format @text NOT NULL DEFAULT '',
  by_name @text NOT NULL,
  recorded_at @instant NOT NULL,
  PRIMARY KEY (kind, headings)
) @strict;
