-- An instrument is withdrawn once; the rest of what stood on registering stands. Values are
-- compared, not named columns: UPDATE OF id does not see SET rowid.
CREATE TRIGGER instrument_keeps_the_rest BEFORE UPDATE ON instrument
WHEN OLD.withdrawn_on IS NOT NULL
  OR NEW.id IS NOT OLD.id OR NEW.kind IS NOT OLD.kind OR NEW.number IS NOT OLD.number
  OR NEW.name IS NOT OLD.name OR NEW.serial IS NOT OLD.serial OR NEW.lamp_id IS NOT OLD.lamp_id
  OR NEW.flat_tolerance_um IS NOT OLD.flat_tolerance_um OR NEW.range IS NOT OLD.range
  OR NEW.resolution IS NOT OLD.resolution OR NEW.unit IS NOT OLD.unit
  OR NEW.range_from IS NOT OLD.range_from OR NEW.range_to IS NOT OLD.range_to
  OR NEW.resolution_step IS NOT OLD.resolution_step OR NEW.largest_error IS NOT OLD.largest_error
BEGIN SELECT RAISE(ABORT, 'an instrument keeps what was registered'); END;
CREATE TRIGGER instrument_no_delete BEFORE DELETE ON instrument
BEGIN SELECT RAISE(ABORT, 'an instrument is withdrawn, not removed'); END;
CREATE TRIGGER instrument_no_replace BEFORE INSERT ON instrument
WHEN EXISTS (SELECT 1 FROM instrument WHERE id = NEW.id OR number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'an instrument keeps what was registered'); END;
