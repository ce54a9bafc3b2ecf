-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE TRIGGER load_reading_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON load_reading
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();
