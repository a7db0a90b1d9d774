-- The budget stays with its result. Null where the record is older than this, or has no figure.
ALTER TABLE flatness_reading ADD COLUMN uncertainty TEXT
  CHECK (uncertainty IS NULL OR json_valid(uncertainty));
ALTER TABLE flatness_reading ADD COLUMN budget_input TEXT
  CHECK (budget_input IS NULL OR json_valid(budget_input));

ALTER TABLE static_test ADD COLUMN leak_uncertainty TEXT
  CHECK (leak_uncertainty IS NULL OR json_valid(leak_uncertainty));
ALTER TABLE static_test ADD COLUMN drop_uncertainty TEXT
  CHECK (drop_uncertainty IS NULL OR json_valid(drop_uncertainty));
ALTER TABLE static_test ADD COLUMN budget_input TEXT
  CHECK (budget_input IS NULL OR json_valid(budget_input));
ALTER TABLE static_test ADD COLUMN volume_instrument_id INTEGER REFERENCES instrument (id);
ALTER TABLE static_test ADD COLUMN volume_use TEXT
  CHECK (volume_use IS NULL OR json_valid(volume_use));
