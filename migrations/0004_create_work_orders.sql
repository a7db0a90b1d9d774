CREATE TABLE counter (
  name TEXT NOT NULL,
  year INTEGER NOT NULL,
  last INTEGER NOT NULL CHECK (last >= 1),
  PRIMARY KEY (name, year)
) STRICT, WITHOUT ROWID;

CREATE TABLE work_order (
  id INTEGER PRIMARY KEY,
  number TEXT NOT NULL UNIQUE,
  customer_id INTEGER NOT NULL REFERENCES customer (id),
  seal_id INTEGER NOT NULL,
  limit_set_id INTEGER NOT NULL REFERENCES limit_set (id),
  customer_order TEXT NOT NULL,
  reason_for_removal TEXT NOT NULL,
  decontamination TEXT NOT NULL CHECK (decontamination IN ('stated-clean', 'not-needed', 'not-stated')),
  last_fluid TEXT NOT NULL,
  sealed_pressure_kpa REAL CHECK (sealed_pressure_kpa BETWEEN -1e9 AND 1e9),
  service_temperature_c REAL CHECK (service_temperature_c BETWEEN -274 AND 1e6),
  shaft_speed_per_min REAL CHECK (shaft_speed_per_min BETWEEN 0 AND 1e9),
  received_at TEXT NOT NULL,
  due_on TEXT,
  stage TEXT NOT NULL CHECK (stage IN (
    'received', 'stripped', 'lapping', 'testing', 'handed-over', 'released', 'dispatched',
    'refused', 'withdrawn'
  )),
  is_invented INTEGER NOT NULL CHECK (is_invented IN (0, 1)),
  FOREIGN KEY (seal_id, customer_id) REFERENCES seal (id, customer_id)
) STRICT;
CREATE INDEX work_order_by_stage ON work_order (stage, id);
CREATE INDEX work_order_by_customer ON work_order (customer_id, id);
CREATE INDEX work_order_by_seal ON work_order (seal_id, id);

CREATE TABLE stage_change (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  from_stage TEXT,
  to_stage TEXT NOT NULL,
  reason TEXT NOT NULL,
  by_name TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE INDEX stage_change_by_work_order ON stage_change (work_order_id, id);
