-- One run of one face on a lapping plate. Only face and plate are asked for: NULL is not known, and
-- never zero. Each figure keeps its text in typed; a correction names what it replaces, once.
CREATE TABLE lap_cycle (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  plate TEXT NOT NULL CHECK (length(plate) BETWEEN 1 AND 60),
  plate_form TEXT CHECK (plate_form IN ('flat', 'convex', 'concave')),
  plate_sag_um REAL CHECK (plate_sag_um BETWEEN 0 AND 1e6),
  plate_diameter_mm REAL CHECK (plate_diameter_mm > 0 AND plate_diameter_mm < 1e6),
  abrasive TEXT CHECK (length(abrasive) BETWEEN 1 AND 60),
  grit TEXT NOT NULL,
  load_kg REAL CHECK (load_kg BETWEEN 0 AND 1e6),
  duration_min REAL CHECK (duration_min BETWEEN 0 AND 1e6),
  planned_stock_um REAL CHECK (planned_stock_um BETWEEN 0 AND 1e6),
  stock_um REAL CHECK (stock_um BETWEEN 0 AND 1e6),
  height_before_mm REAL CHECK (height_before_mm > 0 AND height_before_mm < 1e6),
  height_after_mm REAL CHECK (height_after_mm > 0 AND height_after_mm < 1e6),
  is_new_ring INTEGER NOT NULL CHECK (is_new_ring IN (0, 1)),
  typed TEXT NOT NULL CHECK (json_valid(typed)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK (height_after_mm <= height_before_mm),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES lap_cycle (id, work_order_id)
) STRICT;
CREATE INDEX lap_cycle_by_work_order ON lap_cycle (work_order_id, id);
CREATE INDEX lap_cycle_by_component ON lap_cycle (component_id, id);
CREATE INDEX lap_cycle_by_user ON lap_cycle (recorded_by_id, id);

CREATE TRIGGER lap_cycle_no_update BEFORE UPDATE ON lap_cycle
BEGIN SELECT RAISE(ABORT, 'lap_cycle is append-only'); END;
CREATE TRIGGER lap_cycle_no_delete BEFORE DELETE ON lap_cycle
BEGIN SELECT RAISE(ABORT, 'lap_cycle is append-only'); END;
CREATE TRIGGER lap_cycle_no_replace BEFORE INSERT ON lap_cycle
WHEN EXISTS (SELECT 1 FROM lap_cycle WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'lap_cycle is append-only'); END;
