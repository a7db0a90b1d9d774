-- A limit is upper or lower or both, holds for what its conditions name, and keeps the number and
-- the unit it was written in. What a characteristic may be is the domain's to say: it grows.
CREATE TABLE limit_value_wide (
  id INTEGER PRIMARY KEY,
  limit_set_id INTEGER NOT NULL REFERENCES limit_set (id),
  characteristic TEXT NOT NULL CHECK (length(characteristic) BETWEEN 1 AND 60),
  face_material TEXT,
  component_kind TEXT,
  service TEXT,
  diameter_over_mm REAL CHECK (diameter_over_mm >= 0 AND diameter_over_mm < 1e9),
  diameter_up_to_mm REAL CHECK (diameter_up_to_mm > 0 AND diameter_up_to_mm < 1e9),
  pressure_over_kpa REAL CHECK (pressure_over_kpa BETWEEN -1e9 AND 1e9),
  pressure_up_to_kpa REAL CHECK (pressure_up_to_kpa BETWEEN -1e9 AND 1e9),
  lower REAL CHECK (lower BETWEEN -1e300 AND 1e300),
  upper REAL CHECK (upper BETWEEN -1e300 AND 1e300),
  per_mm_of TEXT CHECK (per_mm_of IN ('bore', 'shaft', 'face')),
  typed_lower TEXT NOT NULL,
  typed_upper TEXT NOT NULL,
  typed_unit TEXT NOT NULL,
  as_written TEXT NOT NULL,
  within_s REAL CHECK (within_s > 0 AND within_s < 1e300),
  volume_at_most_l REAL CHECK (volume_at_most_l > 0 AND volume_at_most_l < 1e300),
  start_at_least_kpa_gauge REAL
    CHECK (start_at_least_kpa_gauge > 0 AND start_at_least_kpa_gauge < 1e300),
  basis TEXT NOT NULL CHECK (basis IN (
    'standard', 'published', 'house rule', 'common practice, no source', 'from memory'
  )),
  source TEXT NOT NULL,
  edition TEXT NOT NULL,
  clause TEXT NOT NULL,
  CHECK (lower IS NOT NULL OR upper IS NOT NULL),
  CHECK (lower IS NULL OR upper IS NULL OR lower < upper),
  CHECK (diameter_over_mm IS NULL OR diameter_up_to_mm IS NULL
    OR diameter_over_mm < diameter_up_to_mm),
  CHECK (pressure_over_kpa IS NULL OR pressure_up_to_kpa IS NULL
    OR pressure_over_kpa < pressure_up_to_kpa)
) STRICT;
INSERT INTO limit_value_wide
SELECT id, limit_set_id, characteristic, face_material, NULL, NULL, NULL, NULL, NULL, NULL, NULL,
  upper, NULL, '', '', '', as_written, within_s, volume_at_most_l, start_at_least_kpa_gauge,
  basis, source, '', ''
FROM limit_value;
DROP TABLE limit_value;
ALTER TABLE limit_value_wide RENAME TO limit_value;
CREATE INDEX limit_value_by_set ON limit_value (limit_set_id, id);

CREATE TRIGGER limit_value_no_update BEFORE UPDATE ON limit_value
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;
CREATE TRIGGER limit_value_no_delete BEFORE DELETE ON limit_value
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;
CREATE TRIGGER limit_value_no_replace BEFORE INSERT ON limit_value
WHEN EXISTS (SELECT 1 FROM limit_value WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;

-- The limits of a set stand from its first work order on: a later one would judge old records anew.
CREATE TRIGGER limit_value_not_after_use BEFORE INSERT ON limit_value
WHEN EXISTS (SELECT 1 FROM work_order WHERE limit_set_id = NEW.limit_set_id)
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;

-- The share of a limit that the uncertainty may take up before a set-up can't decide: a third is
-- common practice, no source.
ALTER TABLE limit_set ADD COLUMN uncertainty_share_at_most REAL NOT NULL
  DEFAULT 0.3333333333333333
  CHECK (uncertainty_share_at_most > 0 AND uncertainty_share_at_most <= 1);
ALTER TABLE limit_set ADD COLUMN written_by_id INTEGER REFERENCES user (id);
ALTER TABLE limit_set ADD COLUMN written_by_name TEXT NOT NULL DEFAULT '';

-- A set without a step is a draft. `effective_on`: in force from, or no longer offered from.
CREATE TABLE limit_set_step (
  id INTEGER PRIMARY KEY,
  limit_set_id INTEGER NOT NULL REFERENCES limit_set (id),
  step TEXT NOT NULL CHECK (step IN ('approved', 'retired')),
  effective_on TEXT NOT NULL,
  reason TEXT NOT NULL,
  by_id INTEGER REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL,
  UNIQUE (limit_set_id, step)
) STRICT;

CREATE TRIGGER limit_set_step_no_update BEFORE UPDATE ON limit_set_step
BEGIN SELECT RAISE(ABORT, 'limit_set_step is append-only'); END;
CREATE TRIGGER limit_set_step_no_delete BEFORE DELETE ON limit_set_step
BEGIN SELECT RAISE(ABORT, 'limit_set_step is append-only'); END;
CREATE TRIGGER limit_set_step_no_replace BEFORE INSERT ON limit_set_step
WHEN EXISTS (SELECT 1 FROM limit_set_step WHERE id = NEW.id
    OR (limit_set_id = NEW.limit_set_id AND step = NEW.step))
BEGIN SELECT RAISE(ABORT, 'limit_set_step is append-only'); END;

-- What was approved is what was looked through: no limit comes to it afterwards.
CREATE TRIGGER limit_value_not_after_step BEFORE INSERT ON limit_value
WHEN EXISTS (SELECT 1 FROM limit_set_step WHERE limit_set_id = NEW.limit_set_id)
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;

-- What was in use before approvals were kept goes on: nobody's name stands beside it.
INSERT INTO limit_set_step (limit_set_id, step, effective_on, reason, by_id, by_name, at)
SELECT id, 'approved', dated_on, '', NULL, '', dated_on || 'T00:00:00.000Z' FROM limit_set;
