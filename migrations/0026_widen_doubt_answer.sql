-- Worn tracks and springs are read with instruments too, and come in doubt with them. The kinds of
-- records stand in a CHECK, so the table is rebuilt with every row.
CREATE TABLE doubt_answer_wide (
  id INTEGER PRIMARY KEY,
  calibration_id INTEGER NOT NULL REFERENCES calibration (id),
  subject_kind TEXT NOT NULL CHECK (
    subject_kind IN (
      'flatness-reading', 'static-test', 'measured-value', 'wear-track', 'spring-check'
    )
  ),
  subject_id INTEGER NOT NULL,
  answer TEXT NOT NULL CHECK (answer IN ('stands', 'repeat', 'withdraw-certificate')),
  reason TEXT NOT NULL CHECK (length(reason) > 0),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
INSERT INTO doubt_answer_wide
SELECT id, calibration_id, subject_kind, subject_id, answer, reason, by_id, by_name, at
FROM doubt_answer;
DROP TABLE doubt_answer;
ALTER TABLE doubt_answer_wide RENAME TO doubt_answer;
CREATE INDEX doubt_answer_by_subject ON doubt_answer (subject_kind, subject_id, id);

CREATE TRIGGER doubt_answer_no_update BEFORE UPDATE ON doubt_answer
BEGIN SELECT RAISE(ABORT, 'doubt_answer is append-only'); END;
CREATE TRIGGER doubt_answer_no_delete BEFORE DELETE ON doubt_answer
BEGIN SELECT RAISE(ABORT, 'doubt_answer is append-only'); END;
CREATE TRIGGER doubt_answer_no_replace BEFORE INSERT ON doubt_answer
WHEN EXISTS (SELECT 1 FROM doubt_answer WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'doubt_answer is append-only'); END;
