-- Why no bands could be read, where the technician says so. Beside a face that was read it says
-- nothing, and readings recorded before keep none.
ALTER TABLE flatness_reading ADD COLUMN unreadable_cause TEXT CHECK (
  unreadable_cause IS NULL OR (
    pattern = 'unreadable'
    AND unreadable_cause IN ('matte', 'dirty', 'wet', 'gap-too-wide', 'other')
  )
);
