-- A seal that runs on a rig: the run, and the readings of its rig in batches as they came. What they
-- say follows from them and is not stored.
CREATE TABLE dynamic_run (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  started_at TEXT NOT NULL,
  liquid TEXT NOT NULL,
  density_kg_per_m3 REAL CHECK (density_kg_per_m3 > 0),
  steps TEXT NOT NULL CHECK (json_valid(steps)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES dynamic_run (id, work_order_id)
) STRICT;
CREATE INDEX dynamic_run_by_work_order ON dynamic_run (work_order_id, id);

CREATE TABLE dynamic_run_batch (
  id INTEGER PRIMARY KEY,
  dynamic_run_id INTEGER NOT NULL REFERENCES dynamic_run (id),
  samples TEXT NOT NULL CHECK (json_valid(samples)),
  sample_count INTEGER NOT NULL CHECK (sample_count > 0),
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL
) STRICT;
CREATE INDEX dynamic_run_batch_by_run ON dynamic_run_batch (dynamic_run_id, id);

CREATE TRIGGER dynamic_run_no_update BEFORE UPDATE ON dynamic_run
BEGIN SELECT RAISE(ABORT, 'dynamic_run is append-only'); END;
CREATE TRIGGER dynamic_run_no_delete BEFORE DELETE ON dynamic_run
BEGIN SELECT RAISE(ABORT, 'dynamic_run is append-only'); END;
CREATE TRIGGER dynamic_run_no_replace BEFORE INSERT ON dynamic_run
WHEN EXISTS (SELECT 1 FROM dynamic_run WHERE id = NEW.id OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'dynamic_run is append-only'); END;

CREATE TRIGGER dynamic_run_batch_no_update BEFORE UPDATE ON dynamic_run_batch
BEGIN SELECT RAISE(ABORT, 'dynamic_run_batch is append-only'); END;
CREATE TRIGGER dynamic_run_batch_no_delete BEFORE DELETE ON dynamic_run_batch
BEGIN SELECT RAISE(ABORT, 'dynamic_run_batch is append-only'); END;
CREATE TRIGGER dynamic_run_batch_no_replace BEFORE INSERT ON dynamic_run_batch
WHEN EXISTS (SELECT 1 FROM dynamic_run_batch WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'dynamic_run_batch is append-only'); END;
