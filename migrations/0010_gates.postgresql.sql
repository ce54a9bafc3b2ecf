-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE TRIGGER gate_signed_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON gate_signed
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();
