-- A survey with an indicator, begun, read position by position, and ended: recorded as a measured
-- value, or given up. A later reading of the same spot takes its place, and both stay.
CREATE TABLE dial_survey (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  characteristic TEXT NOT NULL CHECK (length(characteristic) BETWEEN 1 AND 60),
  condition TEXT NOT NULL CHECK (condition IN ('as-found', 'as-left')),
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  set_up TEXT NOT NULL CHECK (json_valid(set_up)),
  note TEXT NOT NULL,
  replaces_id INTEGER,
  reason TEXT NOT NULL,
  started_by_id INTEGER NOT NULL REFERENCES user (id),
  started_by_name TEXT NOT NULL,
  started_at TEXT NOT NULL,
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES measured_value (id, work_order_id)
) STRICT;
CREATE INDEX dial_survey_by_work_order ON dial_survey (work_order_id, id);
CREATE INDEX dial_survey_by_user ON dial_survey (started_by_id, id);

CREATE TABLE dial_survey_reading (
  id INTEGER PRIMARY KEY,
  dial_survey_id INTEGER NOT NULL REFERENCES dial_survey (id),
  plane_index INTEGER NOT NULL CHECK (plane_index BETWEEN 0 AND 10000),
  turn_index INTEGER NOT NULL CHECK (turn_index BETWEEN 0 AND 10000),
  position_index INTEGER NOT NULL CHECK (position_index BETWEEN 0 AND 10000),
  indicator TEXT NOT NULL CHECK (indicator IN ('first', 'second')),
  um REAL NOT NULL CHECK (um BETWEEN -1e9 AND 1e9),
  typed TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL
) STRICT;
CREATE INDEX dial_survey_reading_by_survey ON dial_survey_reading (dial_survey_id, id);

CREATE TABLE dial_survey_end (
  dial_survey_id INTEGER PRIMARY KEY REFERENCES dial_survey (id),
  work_order_id INTEGER NOT NULL,
  outcome TEXT NOT NULL CHECK (outcome IN ('recorded', 'given-up')),
  measured_value_id INTEGER UNIQUE,
  result TEXT CHECK (result IS NULL OR json_valid(result)),
  reason TEXT NOT NULL,
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL,
  CHECK ((outcome = 'recorded') = (measured_value_id IS NOT NULL)),
  CHECK ((outcome = 'recorded') = (result IS NOT NULL)),
  FOREIGN KEY (dial_survey_id, work_order_id) REFERENCES dial_survey (id, work_order_id),
  FOREIGN KEY (measured_value_id, work_order_id) REFERENCES measured_value (id, work_order_id)
) STRICT;

CREATE TRIGGER dial_survey_no_update BEFORE UPDATE ON dial_survey
BEGIN SELECT RAISE(ABORT, 'dial_survey is append-only'); END;
CREATE TRIGGER dial_survey_no_delete BEFORE DELETE ON dial_survey
BEGIN SELECT RAISE(ABORT, 'dial_survey is append-only'); END;
CREATE TRIGGER dial_survey_no_replace BEFORE INSERT ON dial_survey
WHEN EXISTS (SELECT 1 FROM dial_survey WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'dial_survey is append-only'); END;

CREATE TRIGGER dial_survey_reading_no_update BEFORE UPDATE ON dial_survey_reading
BEGIN SELECT RAISE(ABORT, 'dial_survey_reading is append-only'); END;
CREATE TRIGGER dial_survey_reading_no_delete BEFORE DELETE ON dial_survey_reading
BEGIN SELECT RAISE(ABORT, 'dial_survey_reading is append-only'); END;
CREATE TRIGGER dial_survey_reading_no_replace BEFORE INSERT ON dial_survey_reading
WHEN EXISTS (SELECT 1 FROM dial_survey_reading WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'dial_survey_reading is append-only'); END;

CREATE TRIGGER dial_survey_end_no_update BEFORE UPDATE ON dial_survey_end
BEGIN SELECT RAISE(ABORT, 'dial_survey_end is append-only'); END;
CREATE TRIGGER dial_survey_end_no_delete BEFORE DELETE ON dial_survey_end
BEGIN SELECT RAISE(ABORT, 'dial_survey_end is append-only'); END;
CREATE TRIGGER dial_survey_end_no_replace BEFORE INSERT ON dial_survey_end
WHEN EXISTS (SELECT 1 FROM dial_survey_end WHERE dial_survey_id = NEW.dial_survey_id
    OR measured_value_id = NEW.measured_value_id)
BEGIN SELECT RAISE(ABORT, 'dial_survey_end is append-only'); END;
