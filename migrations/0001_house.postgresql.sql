-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE FUNCTION hangbook_fact_stays() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'a fact is never changed; append one that corrects it';
END;
$$;

CREATE TRIGGER examination_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON examination
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER movement_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON movement
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER frozen_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON frozen
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER choice_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON choice
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER mark_used_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON mark_used
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER history_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON history
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();
