-- How results are compared with limits, agreed with a customer or for one order; the newest counts.
CREATE TABLE agreed_rule (
  id INTEGER PRIMARY KEY,
  customer_id INTEGER REFERENCES customer (id),
  work_order_id INTEGER REFERENCES work_order (id),
  rule TEXT NOT NULL
    CHECK (rule IN ('simple', 'guard-u95', 'guard-probability', 'four-outcomes')),
  probability REAL NOT NULL CHECK (probability > 0.5 AND probability < 1),
  reference TEXT NOT NULL,
  -- An order's rule that was taken from its customer's at receipt: which one that was.
  copied_from_id INTEGER REFERENCES agreed_rule (id),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL,
  CHECK ((customer_id IS NULL) <> (work_order_id IS NULL)),
  CHECK (copied_from_id IS NULL OR work_order_id IS NOT NULL)
) STRICT;
CREATE INDEX agreed_rule_by_customer ON agreed_rule (customer_id, id);
CREATE INDEX agreed_rule_by_work_order ON agreed_rule (work_order_id, id);

CREATE TRIGGER agreed_rule_no_update BEFORE UPDATE ON agreed_rule
BEGIN SELECT RAISE(ABORT, 'agreed_rule is append-only'); END;
CREATE TRIGGER agreed_rule_no_delete BEFORE DELETE ON agreed_rule
BEGIN SELECT RAISE(ABORT, 'agreed_rule is append-only'); END;
CREATE TRIGGER agreed_rule_no_replace BEFORE INSERT ON agreed_rule
WHEN EXISTS (SELECT 1 FROM agreed_rule WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'agreed_rule is append-only'); END;

-- A result outside its limit that the customer takes all the same: one for each result.
CREATE TABLE concession (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  subject_kind TEXT NOT NULL
    CHECK (subject_kind IN ('flatness-reading', 'static-test', 'measured-value')),
  subject_id INTEGER NOT NULL,
  characteristic TEXT NOT NULL,
  reason TEXT NOT NULL CHECK (length(reason) > 0),
  customer_reference TEXT NOT NULL CHECK (length(customer_reference) > 0),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL,
  UNIQUE (subject_kind, subject_id, characteristic)
) STRICT;
CREATE INDEX concession_by_work_order ON concession (work_order_id, id);

CREATE TRIGGER concession_no_update BEFORE UPDATE ON concession
BEGIN SELECT RAISE(ABORT, 'concession is append-only'); END;
CREATE TRIGGER concession_no_delete BEFORE DELETE ON concession
BEGIN SELECT RAISE(ABORT, 'concession is append-only'); END;
CREATE TRIGGER concession_no_replace BEFORE INSERT ON concession
WHEN EXISTS (SELECT 1 FROM concession WHERE id = NEW.id
    OR (subject_kind = NEW.subject_kind AND subject_id = NEW.subject_id
      AND characteristic = NEW.characteristic))
BEGIN SELECT RAISE(ABORT, 'concession is append-only'); END;

-- What the seal runs on, as limits tell services apart.
ALTER TABLE work_order ADD COLUMN service TEXT NOT NULL DEFAULT 'not-stated';
DROP TRIGGER work_order_keeps_the_rest;
-- A work order moves through its stages and its decontamination can be stated later; the rest stands.
-- Values are compared, not named columns: UPDATE OF id does not see SET rowid.
CREATE TRIGGER work_order_keeps_the_rest BEFORE UPDATE ON work_order
WHEN NEW.id IS NOT OLD.id OR NEW.number IS NOT OLD.number
  OR NEW.customer_id IS NOT OLD.customer_id OR NEW.seal_id IS NOT OLD.seal_id
  OR NEW.limit_set_id IS NOT OLD.limit_set_id OR NEW.customer_order IS NOT OLD.customer_order
  OR NEW.reason_for_removal IS NOT OLD.reason_for_removal
  OR NEW.sealed_pressure_kpa IS NOT OLD.sealed_pressure_kpa
  OR NEW.service_temperature_c IS NOT OLD.service_temperature_c
  OR NEW.shaft_speed_per_min IS NOT OLD.shaft_speed_per_min
  OR NEW.received_at IS NOT OLD.received_at OR NEW.due_on IS NOT OLD.due_on
  OR NEW.is_invented IS NOT OLD.is_invented OR NEW.service IS NOT OLD.service
BEGIN SELECT RAISE(ABORT, 'a work order keeps what was received'); END;
