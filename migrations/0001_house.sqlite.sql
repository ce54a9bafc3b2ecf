-- SPDX-License-Identifier: GPL-3.0-or-later
-- Facts are appended, never changed.

CREATE TRIGGER examination_no_update BEFORE UPDATE ON examination BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER examination_no_delete BEFORE DELETE ON examination BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER movement_no_update BEFORE UPDATE ON movement BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER movement_no_delete BEFORE DELETE ON movement BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER frozen_no_update BEFORE UPDATE ON frozen BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER frozen_no_delete BEFORE DELETE ON frozen BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER choice_no_update BEFORE UPDATE ON choice BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER choice_no_delete BEFORE DELETE ON choice BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER mark_used_no_update BEFORE UPDATE ON mark_used BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER mark_used_no_delete BEFORE DELETE ON mark_used BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER history_no_update BEFORE UPDATE ON history BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;

CREATE TRIGGER history_no_delete BEFORE DELETE ON history BEGIN
  SELECT RAISE(ABORT, 'a fact is never changed; append one that corrects it');
END;
