-- Every kind of instrument, with what a budget and a check of the range need as numbers, in `unit`.
CREATE TABLE instrument_wide (
  id INTEGER PRIMARY KEY,
  kind TEXT NOT NULL CHECK (length(kind) BETWEEN 1 AND 40),
  number TEXT NOT NULL UNIQUE CHECK (length(number) BETWEEN 1 AND 40),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  serial TEXT NOT NULL,
  lamp_id TEXT,
  flat_tolerance_um REAL CHECK (flat_tolerance_um > 0 AND flat_tolerance_um < 1e9),
  range TEXT NOT NULL,
  resolution TEXT NOT NULL,
  withdrawn_on TEXT,
  unit TEXT NOT NULL,
  range_from REAL CHECK (range_from BETWEEN -1e12 AND 1e12),
  range_to REAL CHECK (range_to BETWEEN -1e12 AND 1e12),
  resolution_step REAL CHECK (resolution_step > 0 AND resolution_step < 1e12),
  largest_error REAL CHECK (largest_error > 0 AND largest_error < 1e12),
  CHECK ((kind = 'lamp') = (lamp_id IS NOT NULL)),
  CHECK (range_from IS NULL OR range_to IS NULL OR range_from < range_to)
) STRICT;
INSERT INTO instrument_wide
SELECT id, kind, number, name, serial, lamp_id, flat_tolerance_um, range, resolution,
  withdrawn_on, '', NULL, NULL, NULL, NULL
FROM instrument;
DROP TABLE instrument;
ALTER TABLE instrument_wide RENAME TO instrument;

-- Errors and uncertainty in the unit of the instrument.
ALTER TABLE calibration ADD COLUMN laboratory TEXT NOT NULL DEFAULT '';
ALTER TABLE calibration ADD COLUMN as_found TEXT NOT NULL DEFAULT 'not-stated'
  CHECK (as_found IN ('within', 'beyond', 'not-stated'));
ALTER TABLE calibration ADD COLUMN as_found_error REAL
  CHECK (as_found_error BETWEEN -1e12 AND 1e12);
ALTER TABLE calibration ADD COLUMN as_left TEXT NOT NULL DEFAULT 'not-stated'
  CHECK (as_left IN ('within', 'beyond', 'not-stated'));
ALTER TABLE calibration ADD COLUMN as_left_error REAL CHECK (as_left_error BETWEEN -1e12 AND 1e12);
ALTER TABLE calibration ADD COLUMN expanded_uncertainty REAL
  CHECK (expanded_uncertainty > 0 AND expanded_uncertainty < 1e12);
ALTER TABLE calibration ADD COLUMN coverage_factor REAL
  CHECK (coverage_factor >= 1 AND coverage_factor <= 20);
ALTER TABLE calibration ADD COLUMN note TEXT NOT NULL DEFAULT '';

CREATE TABLE instrument_holder (
  id INTEGER PRIMARY KEY,
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  holder TEXT NOT NULL CHECK (length(holder) BETWEEN 1 AND 120),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE INDEX instrument_holder_by_instrument ON instrument_holder (instrument_id, id);

CREATE TRIGGER instrument_holder_no_update BEFORE UPDATE ON instrument_holder
BEGIN SELECT RAISE(ABORT, 'instrument_holder is append-only'); END;
CREATE TRIGGER instrument_holder_no_delete BEFORE DELETE ON instrument_holder
BEGIN SELECT RAISE(ABORT, 'instrument_holder is append-only'); END;
CREATE TRIGGER instrument_holder_no_replace BEFORE INSERT ON instrument_holder
WHEN EXISTS (SELECT 1 FROM instrument_holder WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'instrument_holder is append-only'); END;

CREATE TABLE instrument_file (
  id INTEGER PRIMARY KEY,
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  calibration_id INTEGER REFERENCES calibration (id),
  kind TEXT NOT NULL CHECK (kind IN ('photo', 'file')),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  sha256 TEXT NOT NULL REFERENCES stored_file (sha256),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE INDEX instrument_file_by_instrument ON instrument_file (instrument_id, id);

CREATE TRIGGER instrument_file_no_update BEFORE UPDATE ON instrument_file
BEGIN SELECT RAISE(ABORT, 'instrument_file is append-only'); END;
CREATE TRIGGER instrument_file_no_delete BEFORE DELETE ON instrument_file
BEGIN SELECT RAISE(ABORT, 'instrument_file is append-only'); END;
CREATE TRIGGER instrument_file_no_replace BEFORE INSERT ON instrument_file
WHEN EXISTS (SELECT 1 FROM instrument_file WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'instrument_file is append-only'); END;

-- Somebody asks to record with an instrument that may not be used; an inspector answers, once.
CREATE TABLE use_exception (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  fault TEXT NOT NULL
    CHECK (fault IN ('overdue', 'never-calibrated', 'withdrawn', 'out-of-range')),
  reason TEXT NOT NULL CHECK (length(reason) > 0),
  asked_by_id INTEGER NOT NULL REFERENCES user (id),
  asked_by_name TEXT NOT NULL,
  asked_at TEXT NOT NULL
) STRICT;
CREATE INDEX use_exception_by_work_order ON use_exception (work_order_id, id);

CREATE TRIGGER use_exception_no_update BEFORE UPDATE ON use_exception
BEGIN SELECT RAISE(ABORT, 'use_exception is append-only'); END;
CREATE TRIGGER use_exception_no_delete BEFORE DELETE ON use_exception
BEGIN SELECT RAISE(ABORT, 'use_exception is append-only'); END;
CREATE TRIGGER use_exception_no_replace BEFORE INSERT ON use_exception
WHEN EXISTS (SELECT 1 FROM use_exception WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'use_exception is append-only'); END;

CREATE TABLE use_exception_answer (
  id INTEGER PRIMARY KEY,
  use_exception_id INTEGER NOT NULL UNIQUE REFERENCES use_exception (id),
  answer TEXT NOT NULL CHECK (answer IN ('allowed', 'declined')),
  valid_until TEXT,
  reason TEXT NOT NULL,
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL,
  CHECK ((answer = 'allowed') = (valid_until IS NOT NULL))
) STRICT;

CREATE TRIGGER use_exception_answer_no_update BEFORE UPDATE ON use_exception_answer
BEGIN SELECT RAISE(ABORT, 'use_exception_answer is append-only'); END;
CREATE TRIGGER use_exception_answer_no_delete BEFORE DELETE ON use_exception_answer
BEGIN SELECT RAISE(ABORT, 'use_exception_answer is append-only'); END;
CREATE TRIGGER use_exception_answer_no_replace BEFORE INSERT ON use_exception_answer
WHEN EXISTS (SELECT 1 FROM use_exception_answer WHERE id = NEW.id
    OR use_exception_id = NEW.use_exception_id)
BEGIN SELECT RAISE(ABORT, 'use_exception_answer is append-only'); END;

-- What the inspector says about a record that an instrument found out of tolerance was used for.
-- The newest answer about a record and a calibration counts.
CREATE TABLE doubt_answer (
  id INTEGER PRIMARY KEY,
  calibration_id INTEGER NOT NULL REFERENCES calibration (id),
  subject_kind TEXT NOT NULL
    CHECK (subject_kind IN ('flatness-reading', 'static-test', 'measured-value')),
  subject_id INTEGER NOT NULL,
  answer TEXT NOT NULL CHECK (answer IN ('stands', 'repeat', 'withdraw-certificate')),
  reason TEXT NOT NULL CHECK (length(reason) > 0),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE INDEX doubt_answer_by_subject ON doubt_answer (subject_kind, subject_id, id);

CREATE TRIGGER doubt_answer_no_update BEFORE UPDATE ON doubt_answer
BEGIN SELECT RAISE(ABORT, 'doubt_answer is append-only'); END;
CREATE TRIGGER doubt_answer_no_delete BEFORE DELETE ON doubt_answer
BEGIN SELECT RAISE(ABORT, 'doubt_answer is append-only'); END;
CREATE TRIGGER doubt_answer_no_replace BEFORE INSERT ON doubt_answer
WHEN EXISTS (SELECT 1 FROM doubt_answer WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'doubt_answer is append-only'); END;
