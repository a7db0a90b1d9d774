CREATE TABLE limit_set (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  version INTEGER NOT NULL CHECK (version >= 1),
  dated_on TEXT NOT NULL,
  note TEXT NOT NULL,
  directions_required_count INTEGER NOT NULL CHECK (directions_required_count BETWEEN 1 AND 8),
  UNIQUE (name, version)
) STRICT;

CREATE TABLE limit_value (
  id INTEGER PRIMARY KEY,
  limit_set_id INTEGER NOT NULL REFERENCES limit_set (id),
  characteristic TEXT NOT NULL CHECK (characteristic IN ('flatness', 'static-drop', 'static-leak-rate')),
  face_material TEXT,
  upper REAL NOT NULL CHECK (upper >= 0 AND upper < 1e300),
  as_written TEXT NOT NULL,
  within_s REAL CHECK (within_s > 0),
  volume_at_most_l REAL CHECK (volume_at_most_l > 0),
  start_at_least_kpa_gauge REAL
    CHECK (start_at_least_kpa_gauge > 0 AND start_at_least_kpa_gauge < 1e300),
  basis TEXT NOT NULL CHECK (basis IN (
    'standard', 'published', 'house rule', 'common practice, no source', 'from memory'
  )),
  source TEXT NOT NULL
) STRICT;
CREATE UNIQUE INDEX limit_value_once
  ON limit_value (limit_set_id, characteristic, coalesce(face_material, ''));

CREATE TABLE instrument (
  id INTEGER PRIMARY KEY,
  kind TEXT NOT NULL CHECK (kind IN ('lamp', 'optical-flat', 'pressure-gauge', 'thermometer')),
  number TEXT NOT NULL UNIQUE CHECK (length(number) BETWEEN 1 AND 40),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  serial TEXT NOT NULL,
  lamp_id TEXT,
  flat_tolerance_um REAL CHECK (flat_tolerance_um > 0 AND flat_tolerance_um < 1e9),
  range TEXT NOT NULL,
  resolution TEXT NOT NULL,
  withdrawn_on TEXT,
  CHECK ((kind = 'lamp') = (lamp_id IS NOT NULL))
) STRICT;

CREATE TABLE calibration (
  id INTEGER PRIMARY KEY,
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  calibrated_on TEXT NOT NULL,
  due_on TEXT NOT NULL CHECK (due_on > calibrated_on),
  certificate_number TEXT NOT NULL
) STRICT;
CREATE INDEX calibration_by_instrument ON calibration (instrument_id, calibrated_on);
