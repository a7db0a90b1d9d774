-- A limit may also ask for the speed of the shaft, per minute; NULL: whatever it may be.
ALTER TABLE limit_value ADD COLUMN speed_over_per_min REAL
  CHECK (speed_over_per_min >= 0 AND speed_over_per_min < 1e9);
ALTER TABLE limit_value ADD COLUMN speed_up_to_per_min REAL
  CHECK (speed_up_to_per_min > 0 AND speed_up_to_per_min < 1e9
    AND (speed_over_per_min IS NULL OR speed_over_per_min < speed_up_to_per_min));
