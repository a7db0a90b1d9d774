-- Where a static test was seen to leak, where somebody looked. NULL in tests older than the question.
ALTER TABLE static_test ADD COLUMN leak_place TEXT
CHECK (leak_place IS NULL OR length(leak_place) BETWEEN 1 AND 60);
