-- An exception may be asked for an instrument that its calibration left beyond its tolerance. The
-- list of faults stands in a CHECK, so the table is rebuilt with every row; answers keep pointing at
-- it by its name.
CREATE TABLE use_exception_wide (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  fault TEXT NOT NULL CHECK (
    fault IN ('overdue', 'never-calibrated', 'left-beyond', 'withdrawn', 'out-of-range')
  ),
  reason TEXT NOT NULL CHECK (length(reason) > 0),
  asked_by_id INTEGER NOT NULL REFERENCES user (id),
  asked_by_name TEXT NOT NULL,
  asked_at TEXT NOT NULL
) STRICT;
INSERT INTO use_exception_wide
SELECT id, work_order_id, instrument_id, fault, reason, asked_by_id, asked_by_name, asked_at
FROM use_exception;
DROP TABLE use_exception;
ALTER TABLE use_exception_wide RENAME TO use_exception;
CREATE INDEX use_exception_by_work_order ON use_exception (work_order_id, id);

CREATE TRIGGER use_exception_no_update BEFORE UPDATE ON use_exception
BEGIN SELECT RAISE(ABORT, 'use_exception is append-only'); END;
CREATE TRIGGER use_exception_no_delete BEFORE DELETE ON use_exception
BEGIN SELECT RAISE(ABORT, 'use_exception is append-only'); END;
CREATE TRIGGER use_exception_no_replace BEFORE INSERT ON use_exception
WHEN EXISTS (SELECT 1 FROM use_exception WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'use_exception is append-only'); END;
