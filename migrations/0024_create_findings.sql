-- What is seen on a stripped seal, and what becomes of its parts. What was seen and why it may have
-- come about stand apart; a place on the clock face is NULL where it is all round.
CREATE TABLE finding (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  part TEXT NOT NULL CHECK (length(part) BETWEEN 1 AND 60),
  term TEXT NOT NULL CHECK (length(term) BETWEEN 1 AND 60),
  severity TEXT CHECK (severity IN ('slight', 'marked', 'severe')),
  from_hour REAL CHECK (from_hour BETWEEN 0 AND 12),
  to_hour REAL CHECK (to_hour BETWEEN 0 AND 12),
  radial_place TEXT CHECK (length(radial_place) BETWEEN 1 AND 60),
  is_before_cleaning INTEGER NOT NULL CHECK (is_before_cleaning IN (0, 1)),
  observation TEXT NOT NULL,
  suspected_cause TEXT NOT NULL CHECK (length(suspected_cause) BETWEEN 1 AND 60),
  cause_note TEXT NOT NULL,
  photo_sha256 TEXT REFERENCES stored_file (sha256),
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK ((from_hour IS NULL) = (to_hour IS NULL)),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES finding (id, work_order_id)
) STRICT;
CREATE INDEX finding_by_work_order ON finding (work_order_id, id);
CREATE INDEX finding_by_user ON finding (recorded_by_id, id);

CREATE TRIGGER finding_no_update BEFORE UPDATE ON finding
BEGIN SELECT RAISE(ABORT, 'finding is append-only'); END;
CREATE TRIGGER finding_no_delete BEFORE DELETE ON finding
BEGIN SELECT RAISE(ABORT, 'finding is append-only'); END;
CREATE TRIGGER finding_no_replace BEFORE INSERT ON finding
WHEN EXISTS (SELECT 1 FROM finding WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'finding is append-only'); END;

-- One part of the seal as it leaves; batch, paper, compound and cure date are of a new one, '' or
-- NULL where they are not known.
CREATE TABLE part_line (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  part TEXT NOT NULL CHECK (length(part) BETWEEN 1 AND 60),
  description TEXT NOT NULL,
  fate TEXT NOT NULL CHECK (fate IN ('re-used', 'relapped', 'replaced')),
  quantity_count INTEGER NOT NULL CHECK (quantity_count BETWEEN 1 AND 10000),
  batch TEXT NOT NULL,
  certificate TEXT NOT NULL,
  compound TEXT NOT NULL,
  cured_on TEXT CHECK (length(cured_on) = 10),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES part_line (id, work_order_id)
) STRICT;
CREATE INDEX part_line_by_work_order ON part_line (work_order_id, id);
CREATE INDEX part_line_by_user ON part_line (recorded_by_id, id);

CREATE TRIGGER part_line_no_update BEFORE UPDATE ON part_line
BEGIN SELECT RAISE(ABORT, 'part_line is append-only'); END;
CREATE TRIGGER part_line_no_delete BEFORE DELETE ON part_line
BEGIN SELECT RAISE(ABORT, 'part_line is append-only'); END;
CREATE TRIGGER part_line_no_replace BEFORE INSERT ON part_line
WHEN EXISTS (SELECT 1 FROM part_line WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'part_line is append-only'); END;
