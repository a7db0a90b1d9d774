-- A photograph of the bands of one face. It is kept whether or not it could be read; edges are what
-- the program found in it, NULL where it found none.
CREATE TABLE face_photo (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  sha256 TEXT NOT NULL REFERENCES stored_file (sha256),
  width_px INTEGER NOT NULL CHECK (width_px BETWEEN 1 AND 100000),
  height_px INTEGER NOT NULL CHECK (height_px BETWEEN 1 AND 100000),
  found_edges TEXT CHECK (found_edges IS NULL OR json_valid(found_edges)),
  note TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  UNIQUE (id, work_order_id)
) STRICT;
CREATE INDEX face_photo_by_work_order ON face_photo (work_order_id, id);
CREATE INDEX face_photo_by_user ON face_photo (recorded_by_id, id);

CREATE TRIGGER face_photo_no_update BEFORE UPDATE ON face_photo
BEGIN SELECT RAISE(ABORT, 'face_photo is append-only'); END;
CREATE TRIGGER face_photo_no_delete BEFORE DELETE ON face_photo
BEGIN SELECT RAISE(ABORT, 'face_photo is append-only'); END;
CREATE TRIGGER face_photo_no_replace BEFORE INSERT ON face_photo
WHEN EXISTS (SELECT 1 FROM face_photo WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'face_photo is append-only'); END;
