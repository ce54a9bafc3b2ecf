-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed. SQLite cannot change a check: the tables whose kinds grew are built anew.

CREATE TRIGGER occurrence_no_update BEFORE UPDATE ON occurrence BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER occurrence_no_delete BEFORE DELETE ON occurrence BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER document_no_update BEFORE UPDATE ON document BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER document_no_delete BEFORE DELETE ON document BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER unit_document_no_update BEFORE UPDATE ON unit_document BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER unit_document_no_delete BEFORE DELETE ON unit_document BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TABLE unit_anew (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  serial @text NOT NULL UNIQUE CONSTRAINT "a unit needs a serial" CHECK (serial <> ''),
  kind @text NOT NULL CHECK (kind IN ('cabinet', 'bar', 'hoist', 'chain', 'cart', 'hardware', 'loom')),
  type @text NOT NULL,
  owner @text NOT NULL,
  hired_until @date,
  weighed_kg @real CONSTRAINT "a mass must be above 0" CHECK (weighed_kg > 0),
  at_place @text NOT NULL,
  state @text NOT NULL CHECK (state IN ('ready', 'away', 'quarantined', 'in-repair', 'written-off')),
  cart @text,
  cart_position @int,
  pieces @int CONSTRAINT "a batch has at least one piece" CHECK (pieces >= 1),
  weighed_on @date,
  weighed_by @text NOT NULL DEFAULT ''
) @strict;
INSERT INTO unit_anew (id, revision, source_text, source_date, typed, serial, kind, type, owner, hired_until, weighed_kg,
  at_place, state, cart, cart_position, pieces, weighed_on, weighed_by)
  SELECT id, revision, source_text, source_date, typed, serial, kind, type, owner, hired_until, weighed_kg,
  at_place, state, cart, cart_position, pieces, weighed_on, weighed_by FROM unit;
DROP TABLE unit;
ALTER TABLE unit_anew RENAME TO unit;
CREATE INDEX unit_cart ON unit (cart) WHERE cart IS NOT NULL;
CREATE INDEX unit_type ON unit (kind, type);

CREATE TABLE examination_rule_anew (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a rule needs a name" CHECK (name <> ''),
  kind @text NOT NULL CHECK (kind IN ('cabinet', 'bar', 'hoist', 'chain', 'cart', 'hardware', 'loom')),
  type @text NOT NULL,
  months @int CONSTRAINT "months must be above 0" CHECK (months > 0),
  jurisdiction @text NOT NULL DEFAULT '',
  uses @int CONSTRAINT "uses must be above 0" CHECK (uses > 0),
  hours @real CONSTRAINT "hours must be above 0" CHECK (hours > 0),
  idle_months @int CONSTRAINT "idle months must be above 0" CHECK (idle_months > 0),
  after_exceptional @bool NOT NULL DEFAULT FALSE,
  at_new_site @bool NOT NULL DEFAULT FALSE,
  CONSTRAINT "a rule must say when to examine" CHECK (months IS NOT NULL OR uses IS NOT NULL OR hours IS NOT NULL
    OR idle_months IS NOT NULL OR after_exceptional OR at_new_site)
) @strict;
INSERT INTO examination_rule_anew (id, revision, source_text, source_date, typed, name, kind, type, months)
  SELECT id, revision, source_text, source_date, typed, name, kind, type, months FROM examination_rule;
DROP TABLE examination_rule;
ALTER TABLE examination_rule_anew RENAME TO examination_rule;

CREATE TABLE hardware_type_anew (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  kind @text NOT NULL CHECK (kind IN ('shackle', 'sling', 'clip', 'pin', 'secondary-steel', 'loom')),
  limit_n @real CONSTRAINT "a limit must be above 0" CHECK (limit_n > 0),
  mass_kg @real CONSTRAINT "a mass must be above 0" CHECK (mass_kg > 0),
  length_m @real CONSTRAINT "a length must not be below 0" CHECK (length_m >= 0)
) @strict;
INSERT INTO hardware_type_anew (id, revision, source_text, source_date, typed, name, maker, kind, limit_n, mass_kg,
  length_m)
  SELECT id, revision, source_text, source_date, typed, name, maker, kind, limit_n, mass_kg, length_m
  FROM hardware_type;
DROP TABLE hardware_type;
ALTER TABLE hardware_type_anew RENAME TO hardware_type;
