-- A test volume may be found by expansion from a known one: what was read is kept with the test. NULL
-- where the volume was stated, and in tests older than the question.
ALTER TABLE static_test ADD COLUMN expansion TEXT
CHECK (expansion IS NULL OR json_valid(expansion));
