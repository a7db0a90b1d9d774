CREATE TABLE hand_over (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  note TEXT NOT NULL,
  at TEXT NOT NULL,
  UNIQUE (id, work_order_id)
) STRICT;
CREATE INDEX hand_over_by_work_order ON hand_over (work_order_id, id);

-- UNIQUE is the rule that two people pressing release together yield one release.
CREATE TABLE decision (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  hand_over_id INTEGER NOT NULL UNIQUE,
  outcome TEXT NOT NULL CHECK (outcome IN ('released', 'refused')),
  reason TEXT NOT NULL,
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  by_department TEXT NOT NULL,
  at TEXT NOT NULL,
  CHECK (outcome = 'released' OR length(reason) > 0),
  FOREIGN KEY (hand_over_id, work_order_id) REFERENCES hand_over (id, work_order_id)
) STRICT;
CREATE INDEX decision_by_work_order ON decision (work_order_id, id);

CREATE TABLE stored_file (
  sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
  media_type TEXT NOT NULL,
  bytes BLOB NOT NULL,
  stored_at TEXT NOT NULL
) STRICT;

CREATE TABLE certificate (
  id INTEGER PRIMARY KEY,
  number TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 0),
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  decision_id INTEGER NOT NULL UNIQUE REFERENCES decision (id),
  customer_id INTEGER NOT NULL REFERENCES customer (id),
  record TEXT NOT NULL CHECK (json_valid(record)),
  sha256 TEXT NOT NULL REFERENCES stored_file (sha256),
  issued_at TEXT NOT NULL,
  UNIQUE (number, revision)
) STRICT;
CREATE INDEX certificate_by_work_order ON certificate (work_order_id, id);
CREATE INDEX certificate_by_customer ON certificate (customer_id, id);
