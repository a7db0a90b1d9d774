-- UNIQUE (id, customer_id) lets a child name both, so that it can't mix two customers' records.
CREATE TABLE equipment (
  id INTEGER PRIMARY KEY,
  customer_id INTEGER NOT NULL REFERENCES customer (id),
  tag TEXT NOT NULL CHECK (length(tag) BETWEEN 1 AND 60),
  description TEXT NOT NULL,
  service_fluid TEXT NOT NULL,
  UNIQUE (customer_id, tag),
  UNIQUE (id, customer_id)
) STRICT;

CREATE TABLE seal (
  id INTEGER PRIMARY KEY,
  customer_id INTEGER NOT NULL REFERENCES customer (id),
  equipment_id INTEGER,
  serial TEXT NOT NULL CHECK (length(serial) BETWEEN 1 AND 60),
  drawing TEXT NOT NULL,
  drawing_revision TEXT NOT NULL,
  arrangement TEXT NOT NULL,
  shaft_diameter_mm REAL NOT NULL CHECK (shaft_diameter_mm > 0 AND shaft_diameter_mm < 1e9),
  size TEXT NOT NULL,
  UNIQUE (customer_id, serial),
  UNIQUE (id, customer_id),
  FOREIGN KEY (equipment_id, customer_id) REFERENCES equipment (id, customer_id)
) STRICT;
CREATE INDEX seal_by_equipment ON seal (equipment_id);

CREATE TABLE component (
  id INTEGER PRIMARY KEY,
  seal_id INTEGER NOT NULL REFERENCES seal (id),
  kind TEXT NOT NULL CHECK (kind IN (
    'rotating-face', 'rotating-secondary', 'spring', 'stationary-seat', 'stationary-secondary'
  )),
  material TEXT NOT NULL,
  outer_diameter_mm REAL CHECK (outer_diameter_mm > 0 AND outer_diameter_mm < 1e9),
  inner_diameter_mm REAL CHECK (inner_diameter_mm > 0 AND inner_diameter_mm < outer_diameter_mm),
  nose_height_mm REAL CHECK (nose_height_mm > 0 AND nose_height_mm < 1e9),
  minimum_nose_height_mm REAL CHECK (minimum_nose_height_mm > 0 AND minimum_nose_height_mm < 1e9),
  UNIQUE (seal_id, kind)
) STRICT;
