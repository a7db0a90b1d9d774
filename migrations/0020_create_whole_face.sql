-- What a reading of a whole face keeps beside its figure: where it comes from, the surface and what
-- was seen, as JSON. A photograph, where there is one, is of the same order; marks that a program
-- sends come without one.
CREATE TABLE whole_face (
  flatness_reading_id INTEGER PRIMARY KEY REFERENCES flatness_reading (id),
  work_order_id INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('photo', 'marked', 'line-grid', 'combined')),
  photo_id INTEGER,
  details TEXT NOT NULL CHECK (json_valid(details)),
  CHECK (CASE kind WHEN 'combined' THEN photo_id IS NULL WHEN 'marked' THEN TRUE
    ELSE photo_id IS NOT NULL END),
  FOREIGN KEY (flatness_reading_id, work_order_id) REFERENCES flatness_reading (id, work_order_id),
  FOREIGN KEY (photo_id, work_order_id) REFERENCES face_photo (id, work_order_id)
) STRICT;
CREATE INDEX whole_face_by_work_order ON whole_face (work_order_id, flatness_reading_id);

CREATE TRIGGER whole_face_no_update BEFORE UPDATE ON whole_face
BEGIN SELECT RAISE(ABORT, 'whole_face is append-only'); END;
CREATE TRIGGER whole_face_no_delete BEFORE DELETE ON whole_face
BEGIN SELECT RAISE(ABORT, 'whole_face is append-only'); END;
CREATE TRIGGER whole_face_no_replace BEFORE INSERT ON whole_face
WHEN EXISTS (SELECT 1 FROM whole_face WHERE flatness_reading_id = NEW.flatness_reading_id)
BEGIN SELECT RAISE(ABORT, 'whole_face is append-only'); END;
