-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE TRIGGER load_reading_no_update BEFORE UPDATE ON load_reading BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER load_reading_no_delete BEFORE DELETE ON load_reading BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;
