-- A face swept by two indicators is known by both: what stood on the label of the second is kept with
-- the value too, so that a doubt about it reaches the value. NULL in values older than this.
ALTER TABLE measured_value ADD COLUMN second_instrument_use TEXT
CHECK (second_instrument_use IS NULL OR json_valid(second_instrument_use));
