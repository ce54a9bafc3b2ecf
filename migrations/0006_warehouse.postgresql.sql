-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE TRIGGER occurrence_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON occurrence
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER document_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON document
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

CREATE TRIGGER unit_document_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON unit_document
  FOR EACH STATEMENT EXECUTE FUNCTION hangbook_fact_stays();

ALTER TABLE unit DROP CONSTRAINT unit_kind_check, ADD CONSTRAINT unit_kind_check
  CHECK (kind IN ('cabinet', 'bar', 'hoist', 'chain', 'cart', 'hardware', 'loom'));
ALTER TABLE examination_rule DROP CONSTRAINT examination_rule_kind_check, ADD CONSTRAINT examination_rule_kind_check
  CHECK (kind IN ('cabinet', 'bar', 'hoist', 'chain', 'cart', 'hardware', 'loom'));
ALTER TABLE examination_rule ALTER COLUMN months DROP NOT NULL;
ALTER TABLE examination_rule ADD CONSTRAINT "a rule must say when to examine" CHECK (months IS NOT NULL
  OR uses IS NOT NULL OR hours IS NOT NULL OR idle_months IS NOT NULL OR after_exceptional OR at_new_site);
ALTER TABLE hardware_type DROP CONSTRAINT hardware_type_kind_check, ADD CONSTRAINT hardware_type_kind_check
  CHECK (kind IN ('shackle', 'sling', 'clip', 'pin', 'secondary-steel', 'loom'));
