CREATE TABLE customer (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 120),
  address TEXT NOT NULL,
  contact TEXT NOT NULL,
  is_invented INTEGER NOT NULL CHECK (is_invented IN (0, 1))
) STRICT;

CREATE TABLE user (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 60),
  display_name TEXT NOT NULL CHECK (length(display_name) BETWEEN 1 AND 120),
  role TEXT NOT NULL CHECK (role IN ('technician', 'inspector', 'customer', 'manager')),
  department TEXT NOT NULL,
  customer_id INTEGER REFERENCES customer (id),
  password_hash TEXT NOT NULL,
  is_active INTEGER NOT NULL CHECK (is_active IN (0, 1)),
  created_at TEXT NOT NULL,
  CHECK ((role = 'customer') = (customer_id IS NOT NULL))
) STRICT;

-- The key is the hash of the secret: whoever reads the database can't use it to sign in.
CREATE TABLE session (
  token_hash TEXT PRIMARY KEY,
  user_id INTEGER NOT NULL REFERENCES user (id),
  created_at TEXT NOT NULL,
  expires_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX session_by_user ON session (user_id);
CREATE INDEX session_by_end ON session (expires_at);

CREATE TABLE api_token (
  id INTEGER PRIMARY KEY,
  user_id INTEGER NOT NULL REFERENCES user (id),
  label TEXT NOT NULL CHECK (length(label) BETWEEN 1 AND 120),
  token_hash TEXT NOT NULL UNIQUE,
  created_at TEXT NOT NULL,
  revoked_at TEXT
) STRICT;
-- A label names one live token of its user, so that revoking by label is never ambiguous.
CREATE UNIQUE INDEX api_token_live_label ON api_token (user_id, label) WHERE revoked_at IS NULL;

CREATE TABLE sign_in_failure (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL COLLATE NOCASE,
  address TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE INDEX sign_in_failure_by_name ON sign_in_failure (name, at);
CREATE INDEX sign_in_failure_by_address ON sign_in_failure (address, at);
CREATE INDEX sign_in_failure_by_time ON sign_in_failure (at);

-- A resent form or request gets the answer that the first one got.
CREATE TABLE kept_answer (
  user_id INTEGER NOT NULL REFERENCES user (id),
  key TEXT NOT NULL CHECK (length(key) BETWEEN 1 AND 200),
  request_hash TEXT NOT NULL,
  status INTEGER NOT NULL,
  body TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (user_id, key)
) STRICT, WITHOUT ROWID;
CREATE INDEX kept_answer_by_time ON kept_answer (at);
