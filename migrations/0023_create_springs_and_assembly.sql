-- What is read on a stripped seal (worn tracks, springs), and how it was put together. A length or a
-- load keeps its text beside its number: {"mm": 4.2, "typed": "4,20"}. A correction names what it
-- replaces, once; NULL is not known, and never zero.
CREATE TABLE wear_track (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  nose_width TEXT NOT NULL CHECK (json_extract(nose_width, '$.mm') > 0),
  track_widths TEXT NOT NULL CHECK (json_array_length(track_widths) BETWEEN 1 AND 100),
  offset TEXT CHECK (json_extract(offset, '$.mm') >= 0),
  offset_hour INTEGER CHECK (offset_hour BETWEEN 1 AND 12),
  movement_um REAL NOT NULL CHECK (movement_um BETWEEN -1e6 AND 1e6),
  standard_uncertainty_um REAL CHECK (standard_uncertainty_um BETWEEN 0 AND 1e6),
  method TEXT NOT NULL,
  instrument_id INTEGER REFERENCES instrument (id),
  instrument_use TEXT CHECK (json_valid(instrument_use)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK ((instrument_id IS NULL) = (instrument_use IS NULL)),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES wear_track (id, work_order_id)
) STRICT;
CREATE INDEX wear_track_by_work_order ON wear_track (work_order_id, id);
CREATE INDEX wear_track_by_user ON wear_track (recorded_by_id, id);

CREATE TRIGGER wear_track_no_update BEFORE UPDATE ON wear_track
BEGIN SELECT RAISE(ABORT, 'wear_track is append-only'); END;
CREATE TRIGGER wear_track_no_delete BEFORE DELETE ON wear_track
BEGIN SELECT RAISE(ABORT, 'wear_track is append-only'); END;
CREATE TRIGGER wear_track_no_replace BEFORE INSERT ON wear_track
WHEN EXISTS (SELECT 1 FROM wear_track WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'wear_track is append-only'); END;

CREATE TABLE spring_check (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  condition TEXT NOT NULL CHECK (condition IN ('as-found', 'as-left')),
  springs_count INTEGER NOT NULL CHECK (springs_count BETWEEN 1 AND 1000),
  free_length TEXT NOT NULL CHECK (json_extract(free_length, '$.mm') > 0),
  new_length TEXT CHECK (json_extract(new_length, '$.mm') > 0),
  loads TEXT NOT NULL CHECK (json_array_length(loads) BETWEEN 0 AND 100),
  stated_rate_n_per_mm REAL CHECK (stated_rate_n_per_mm > 0 AND stated_rate_n_per_mm < 1e9),
  working_length TEXT NOT NULL CHECK (json_extract(working_length, '$.mm') > 0),
  solid_length TEXT CHECK (json_extract(solid_length, '$.mm') > 0),
  rate_n_per_mm REAL CHECK (rate_n_per_mm > 0 AND rate_n_per_mm < 1e9),
  working_load_n REAL CHECK (working_load_n BETWEEN 0 AND 1e12),
  face_pressure_mpa REAL CHECK (face_pressure_mpa BETWEEN 0 AND 1e12),
  remaining_travel_mm REAL CHECK (remaining_travel_mm BETWEEN 0 AND 1e6),
  load_per_mm_n REAL CHECK (load_per_mm_n BETWEEN 0 AND 1e12),
  set_mm REAL CHECK (set_mm BETWEEN -1e6 AND 1e6),
  expanded_uncertainty_n REAL CHECK (expanded_uncertainty_n BETWEEN 0 AND 1e12),
  coverage_factor REAL CHECK (coverage_factor BETWEEN 1 AND 1000),
  method TEXT NOT NULL,
  instrument_id INTEGER REFERENCES instrument (id),
  instrument_use TEXT CHECK (json_valid(instrument_use)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK ((instrument_id IS NULL) = (instrument_use IS NULL)),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES spring_check (id, work_order_id)
) STRICT;
CREATE INDEX spring_check_by_work_order ON spring_check (work_order_id, id);
CREATE INDEX spring_check_by_user ON spring_check (recorded_by_id, id);

CREATE TRIGGER spring_check_no_update BEFORE UPDATE ON spring_check
BEGIN SELECT RAISE(ABORT, 'spring_check is append-only'); END;
CREATE TRIGGER spring_check_no_delete BEFORE DELETE ON spring_check
BEGIN SELECT RAISE(ABORT, 'spring_check is append-only'); END;
CREATE TRIGGER spring_check_no_replace BEFORE INSERT ON spring_check
WHEN EXISTS (SELECT 1 FROM spring_check WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'spring_check is append-only'); END;

CREATE TABLE assembly (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  working_length TEXT NOT NULL CHECK (json_extract(working_length, '$.mm') > 0),
  design_working_length_mm REAL CHECK (design_working_length_mm > 0),
  working_length_tolerance_mm REAL CHECK (working_length_tolerance_mm BETWEEN 0 AND 1e6),
  design_load_n REAL CHECK (design_load_n BETWEEN 0 AND 1e9),
  load_tolerance_percent REAL CHECK (load_tolerance_percent BETWEEN 0 AND 100),
  measured_load TEXT CHECK (json_extract(measured_load, '$.n') >= 0),
  design_source TEXT NOT NULL,
  set_screws TEXT NOT NULL CHECK (json_array_length(set_screws) BETWEEN 0 AND 100),
  torque_tolerance_percent REAL CHECK (torque_tolerance_percent BETWEEN 0 AND 100),
  clips TEXT NOT NULL CHECK (clips IN ('fitted', 'none-needed', 'not-fitted')),
  clips_count INTEGER CHECK (clips_count BETWEEN 1 AND 1000),
  lubricant TEXT NOT NULL,
  is_turning_free INTEGER NOT NULL CHECK (is_turning_free IN (0, 1)),
  load_n REAL CHECK (load_n BETWEEN 0 AND 1e12),
  load_from TEXT CHECK (load_from IN ('measured', 'spring-check')),
  spring_check_id INTEGER,
  method TEXT NOT NULL,
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK ((load_n IS NULL) = (load_from IS NULL)),
  CHECK ((spring_check_id IS NULL) = (load_from IS NOT 'spring-check')),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (spring_check_id, work_order_id) REFERENCES spring_check (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES assembly (id, work_order_id)
) STRICT;
CREATE INDEX assembly_by_work_order ON assembly (work_order_id, id);
CREATE INDEX assembly_by_user ON assembly (recorded_by_id, id);

CREATE TRIGGER assembly_no_update BEFORE UPDATE ON assembly
BEGIN SELECT RAISE(ABORT, 'assembly is append-only'); END;
CREATE TRIGGER assembly_no_delete BEFORE DELETE ON assembly
BEGIN SELECT RAISE(ABORT, 'assembly is append-only'); END;
CREATE TRIGGER assembly_no_replace BEFORE INSERT ON assembly
WHEN EXISTS (SELECT 1 FROM assembly WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'assembly is append-only'); END;
