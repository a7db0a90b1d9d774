-- What a cycle was for: to take off stock, to polish a face so that its bands can be read, or to
-- matt it afterwards. Cycles written down before were for stock as far as anybody said.
ALTER TABLE lap_cycle ADD COLUMN purpose TEXT NOT NULL DEFAULT 'lap'
  CHECK (purpose IN ('lap', 'polish', 'matt'));
