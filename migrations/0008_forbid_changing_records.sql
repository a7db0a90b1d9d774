-- What is measured, decided or certified is added to, never changed or deleted.
-- The third trigger of each table closes INSERT OR REPLACE, for which no delete trigger fires.

CREATE TRIGGER flatness_reading_no_update BEFORE UPDATE ON flatness_reading
BEGIN SELECT RAISE(ABORT, 'flatness_reading is append-only'); END;
CREATE TRIGGER flatness_reading_no_delete BEFORE DELETE ON flatness_reading
BEGIN SELECT RAISE(ABORT, 'flatness_reading is append-only'); END;
CREATE TRIGGER flatness_reading_no_replace BEFORE INSERT ON flatness_reading
WHEN EXISTS (SELECT 1 FROM flatness_reading WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'flatness_reading is append-only'); END;

CREATE TRIGGER flatness_direction_no_update BEFORE UPDATE ON flatness_direction
BEGIN SELECT RAISE(ABORT, 'flatness_direction is append-only'); END;
CREATE TRIGGER flatness_direction_no_delete BEFORE DELETE ON flatness_direction
BEGIN SELECT RAISE(ABORT, 'flatness_direction is append-only'); END;
CREATE TRIGGER flatness_direction_no_replace BEFORE INSERT ON flatness_direction
WHEN EXISTS (SELECT 1 FROM flatness_direction WHERE id = NEW.id
    OR (flatness_reading_id = NEW.flatness_reading_id AND direction_deg = NEW.direction_deg))
BEGIN SELECT RAISE(ABORT, 'flatness_direction is append-only'); END;

CREATE TRIGGER static_test_no_update BEFORE UPDATE ON static_test
BEGIN SELECT RAISE(ABORT, 'static_test is append-only'); END;
CREATE TRIGGER static_test_no_delete BEFORE DELETE ON static_test
BEGIN SELECT RAISE(ABORT, 'static_test is append-only'); END;
CREATE TRIGGER static_test_no_replace BEFORE INSERT ON static_test
WHEN EXISTS (SELECT 1 FROM static_test WHERE id = NEW.id
    OR replaces_id = NEW.replaces_id)
BEGIN SELECT RAISE(ABORT, 'static_test is append-only'); END;

CREATE TRIGGER stage_change_no_update BEFORE UPDATE ON stage_change
BEGIN SELECT RAISE(ABORT, 'stage_change is append-only'); END;
CREATE TRIGGER stage_change_no_delete BEFORE DELETE ON stage_change
BEGIN SELECT RAISE(ABORT, 'stage_change is append-only'); END;
CREATE TRIGGER stage_change_no_replace BEFORE INSERT ON stage_change
WHEN EXISTS (SELECT 1 FROM stage_change WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'stage_change is append-only'); END;

CREATE TRIGGER hand_over_no_update BEFORE UPDATE ON hand_over
BEGIN SELECT RAISE(ABORT, 'hand_over is append-only'); END;
CREATE TRIGGER hand_over_no_delete BEFORE DELETE ON hand_over
BEGIN SELECT RAISE(ABORT, 'hand_over is append-only'); END;
CREATE TRIGGER hand_over_no_replace BEFORE INSERT ON hand_over
WHEN EXISTS (SELECT 1 FROM hand_over WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'hand_over is append-only'); END;

CREATE TRIGGER decision_no_update BEFORE UPDATE ON decision
BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision
BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
CREATE TRIGGER decision_no_replace BEFORE INSERT ON decision
WHEN EXISTS (SELECT 1 FROM decision WHERE id = NEW.id
    OR hand_over_id = NEW.hand_over_id)
BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;

CREATE TRIGGER stored_file_no_update BEFORE UPDATE ON stored_file
BEGIN SELECT RAISE(ABORT, 'stored_file is append-only'); END;
CREATE TRIGGER stored_file_no_delete BEFORE DELETE ON stored_file
BEGIN SELECT RAISE(ABORT, 'stored_file is append-only'); END;
CREATE TRIGGER stored_file_no_replace BEFORE INSERT ON stored_file
WHEN EXISTS (SELECT 1 FROM stored_file WHERE sha256 = NEW.sha256)
BEGIN SELECT RAISE(ABORT, 'stored_file is append-only'); END;

CREATE TRIGGER certificate_no_update BEFORE UPDATE ON certificate
BEGIN SELECT RAISE(ABORT, 'certificate is append-only'); END;
CREATE TRIGGER certificate_no_delete BEFORE DELETE ON certificate
BEGIN SELECT RAISE(ABORT, 'certificate is append-only'); END;
CREATE TRIGGER certificate_no_replace BEFORE INSERT ON certificate
WHEN EXISTS (SELECT 1 FROM certificate WHERE id = NEW.id
    OR decision_id = NEW.decision_id
    OR (number = NEW.number AND revision = NEW.revision))
BEGIN SELECT RAISE(ABORT, 'certificate is append-only'); END;

CREATE TRIGGER calibration_no_update BEFORE UPDATE ON calibration
BEGIN SELECT RAISE(ABORT, 'calibration is append-only'); END;
CREATE TRIGGER calibration_no_delete BEFORE DELETE ON calibration
BEGIN SELECT RAISE(ABORT, 'calibration is append-only'); END;
CREATE TRIGGER calibration_no_replace BEFORE INSERT ON calibration
WHEN EXISTS (SELECT 1 FROM calibration WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'calibration is append-only'); END;

CREATE TRIGGER limit_set_no_update BEFORE UPDATE ON limit_set
BEGIN SELECT RAISE(ABORT, 'limit_set is append-only'); END;
CREATE TRIGGER limit_set_no_delete BEFORE DELETE ON limit_set
BEGIN SELECT RAISE(ABORT, 'limit_set is append-only'); END;
CREATE TRIGGER limit_set_no_replace BEFORE INSERT ON limit_set
WHEN EXISTS (SELECT 1 FROM limit_set WHERE id = NEW.id
    OR (name = NEW.name AND version = NEW.version))
BEGIN SELECT RAISE(ABORT, 'limit_set is append-only'); END;

CREATE TRIGGER limit_value_no_update BEFORE UPDATE ON limit_value
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;
CREATE TRIGGER limit_value_no_delete BEFORE DELETE ON limit_value
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;
CREATE TRIGGER limit_value_no_replace BEFORE INSERT ON limit_value
WHEN EXISTS (SELECT 1 FROM limit_value WHERE id = NEW.id
    OR (limit_set_id = NEW.limit_set_id AND characteristic = NEW.characteristic
      AND coalesce(face_material, '') = coalesce(NEW.face_material, '')))
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;

CREATE TRIGGER audit_no_update BEFORE UPDATE ON audit
BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
CREATE TRIGGER audit_no_delete BEFORE DELETE ON audit
BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
CREATE TRIGGER audit_no_replace BEFORE INSERT ON audit
WHEN EXISTS (SELECT 1 FROM audit WHERE id = NEW.id
    OR hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;

-- The limits of a set stand from its first work order on: a later one would judge old records anew.
CREATE TRIGGER limit_value_not_after_use BEFORE INSERT ON limit_value
WHEN EXISTS (SELECT 1 FROM work_order WHERE limit_set_id = NEW.limit_set_id)
BEGIN SELECT RAISE(ABORT, 'limit_value is append-only'); END;

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
  OR NEW.is_invented IS NOT OLD.is_invented
BEGIN SELECT RAISE(ABORT, 'a work order keeps what was received'); END;
CREATE TRIGGER work_order_no_delete BEFORE DELETE ON work_order
BEGIN SELECT RAISE(ABORT, 'work orders are not deleted'); END;
CREATE TRIGGER work_order_no_replace BEFORE INSERT ON work_order
WHEN EXISTS (SELECT 1 FROM work_order WHERE id = NEW.id OR number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'a work order keeps what was received'); END;

-- A number given is never given again: counters go up by one, and nothing else.
CREATE TRIGGER counter_counts_up BEFORE UPDATE ON counter
WHEN NEW.name IS NOT OLD.name OR NEW.year IS NOT OLD.year OR NEW.last IS NOT OLD.last + 1
BEGIN SELECT RAISE(ABORT, 'a counter goes up by one'); END;
CREATE TRIGGER counter_no_delete BEFORE DELETE ON counter
BEGIN SELECT RAISE(ABORT, 'counters are not deleted'); END;
CREATE TRIGGER counter_no_replace BEFORE INSERT ON counter
WHEN EXISTS (SELECT 1 FROM counter WHERE name = NEW.name AND year = NEW.year)
BEGIN SELECT RAISE(ABORT, 'a counter goes up by one'); END;
