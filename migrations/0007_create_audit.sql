CREATE TABLE audit (
  id INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  user_id INTEGER REFERENCES user (id),
  actor TEXT NOT NULL,
  act TEXT NOT NULL,
  subject TEXT NOT NULL,
  detail TEXT NOT NULL CHECK (json_valid(detail)),
  previous_hash TEXT NOT NULL CHECK (length(previous_hash) = 64),
  hash TEXT NOT NULL UNIQUE CHECK (length(hash) = 64)
) STRICT;
CREATE INDEX audit_by_subject ON audit (subject, id);
