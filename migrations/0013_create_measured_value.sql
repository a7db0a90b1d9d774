-- A figure read with an instrument, once or several times: finish, heights, run-out and the like.
-- All lengths in µm, whatever was typed; a correction names what it replaces, once, and why.
CREATE TABLE measured_value (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  characteristic TEXT NOT NULL CHECK (length(characteristic) BETWEEN 1 AND 60),
  component_id INTEGER REFERENCES component (id),
  condition TEXT NOT NULL CHECK (condition IN ('as-found', 'as-left')),
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  unit TEXT NOT NULL,
  readings TEXT NOT NULL CHECK (json_valid(readings)),
  size_mm REAL CHECK (size_mm > 0 AND size_mm < 1e9),
  value_um REAL NOT NULL CHECK (value_um BETWEEN -1e12 AND 1e12),
  uncertainty TEXT NOT NULL CHECK (json_valid(uncertainty)),
  budget_input TEXT NOT NULL CHECK (json_valid(budget_input)),
  method TEXT NOT NULL,
  instrument_use TEXT NOT NULL CHECK (json_valid(instrument_use)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES measured_value (id, work_order_id)
) STRICT;
CREATE INDEX measured_value_by_work_order ON measured_value (work_order_id, id);
CREATE INDEX measured_value_by_user ON measured_value (recorded_by_id, id);

CREATE TRIGGER measured_value_no_update BEFORE UPDATE ON measured_value
BEGIN SELECT RAISE(ABORT, 'measured_value is append-only'); END;
CREATE TRIGGER measured_value_no_delete BEFORE DELETE ON measured_value
BEGIN SELECT RAISE(ABORT, 'measured_value is append-only'); END;
CREATE TRIGGER measured_value_no_replace BEFORE INSERT ON measured_value
WHEN EXISTS (SELECT 1 FROM measured_value WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'measured_value is append-only'); END;
