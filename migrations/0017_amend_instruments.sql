-- What is known of an instrument in numbers can be completed or put right: a row more, never a
-- changed one. The newest row goes before what stood on registering, and NULL is not known.
CREATE TABLE instrument_amendment (
  id INTEGER PRIMARY KEY,
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  flat_tolerance_um REAL CHECK (flat_tolerance_um > 0 AND flat_tolerance_um < 1e6),
  range TEXT NOT NULL,
  resolution TEXT NOT NULL,
  unit TEXT NOT NULL,
  range_from REAL CHECK (range_from BETWEEN -1e6 AND 1e6),
  range_to REAL CHECK (range_to BETWEEN -1e6 AND 1e6),
  resolution_step REAL CHECK (resolution_step > 0 AND resolution_step <= 1e6),
  largest_error REAL CHECK (largest_error > 0 AND largest_error <= 1e6),
  reason TEXT NOT NULL CHECK (length(reason) > 0),
  by_id INTEGER NOT NULL REFERENCES user (id),
  by_name TEXT NOT NULL,
  at TEXT NOT NULL,
  CHECK (range_from < range_to)
) STRICT;
CREATE INDEX instrument_amendment_by_instrument ON instrument_amendment (instrument_id, id);

CREATE TRIGGER instrument_amendment_no_update BEFORE UPDATE ON instrument_amendment
BEGIN SELECT RAISE(ABORT, 'instrument_amendment is append-only'); END;
CREATE TRIGGER instrument_amendment_no_delete BEFORE DELETE ON instrument_amendment
BEGIN SELECT RAISE(ABORT, 'instrument_amendment is append-only'); END;
CREATE TRIGGER instrument_amendment_no_replace BEFORE INSERT ON instrument_amendment
WHEN EXISTS (SELECT 1 FROM instrument_amendment WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'instrument_amendment is append-only'); END;
