-- SPDX-License-Identifier: GPL-3.0-or-later
-- Whether a later fact corrects one is asked for every fact: without these the whole table is read each time.

CREATE INDEX examination_corrects ON examination (corrects) WHERE corrects IS NOT NULL;
CREATE INDEX movement_corrects ON movement (corrects) WHERE corrects IS NOT NULL;
CREATE INDEX mark_used_corrects ON mark_used (corrects) WHERE corrects IS NOT NULL;
