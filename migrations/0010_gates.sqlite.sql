-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE TRIGGER gate_signed_no_update BEFORE UPDATE ON gate_signed BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER gate_signed_no_delete BEFORE DELETE ON gate_signed BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;
