-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is due is worked out from a few columns of many units and examinations: both are read from an index alone, without
-- the rows themselves. The shorter indexes that these two begin with are not needed beside them.

CREATE INDEX unit_ruled ON unit (kind, type, id, serial, at_place, state);
DROP INDEX unit_type;

CREATE INDEX examination_newest ON examination (unit_id, rule_id, examined_on, recorded_at, id, result);
DROP INDEX examination_unit;
