-- A correction names what it replaces, of the same work order, once, and why.
-- Figures are null together for an unreadable face: that outcome has no number and is no pass.
CREATE TABLE flatness_reading (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  condition TEXT NOT NULL CHECK (condition IN ('as-found', 'as-left')),
  lamp_instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  flat_instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  pattern TEXT NOT NULL,
  ring_centre TEXT CHECK (ring_centre IN ('high', 'low')),
  viewing_angle_deg REAL NOT NULL CHECK (viewing_angle_deg >= 0 AND viewing_angle_deg <= 80),
  soak_min REAL CHECK (soak_min >= 0 AND soak_min < 1e9),
  temperature_c REAL CHECK (temperature_c > -274 AND temperature_c < 1e6),
  wavelength_nm REAL NOT NULL CHECK (wavelength_nm > 0 AND wavelength_nm < 1e6),
  band_height_um REAL NOT NULL CHECK (band_height_um > 0 AND band_height_um < 1e6),
  bands REAL CHECK (bands >= 0 AND bands < 1e6),
  flatness_um REAL CHECK (flatness_um >= 0 AND flatness_um < 1e6),
  form TEXT NOT NULL,
  standard_uncertainty_um REAL CHECK (standard_uncertainty_um >= 0 AND standard_uncertainty_um < 1e6),
  method TEXT NOT NULL,
  lamp_use TEXT NOT NULL CHECK (json_valid(lamp_use)),
  flat_use TEXT NOT NULL CHECK (json_valid(flat_use)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK ((pattern = 'unreadable') = (flatness_um IS NULL)),
  CHECK ((flatness_um IS NULL) = (bands IS NULL)),
  CHECK ((flatness_um IS NULL) = (standard_uncertainty_um IS NULL)),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES flatness_reading (id, work_order_id)
) STRICT;
CREATE INDEX flatness_reading_by_work_order ON flatness_reading (work_order_id, id);
CREATE INDEX flatness_reading_by_user ON flatness_reading (recorded_by_id, id);

CREATE TABLE flatness_direction (
  id INTEGER PRIMARY KEY,
  flatness_reading_id INTEGER NOT NULL REFERENCES flatness_reading (id),
  direction_deg REAL NOT NULL CHECK (direction_deg >= 0 AND direction_deg <= 360),
  bands REAL NOT NULL CHECK (bands >= 0 AND bands < 1e6),
  bands_typed TEXT NOT NULL,
  UNIQUE (flatness_reading_id, direction_deg)
) STRICT;

CREATE TABLE static_test (
  id INTEGER PRIMARY KEY,
  work_order_id INTEGER NOT NULL REFERENCES work_order (id),
  section TEXT NOT NULL CHECK (section IN ('whole', 'inboard', 'outboard', 'gland')),
  typed TEXT NOT NULL CHECK (json_valid(typed)),
  start_pressure_kpa_abs REAL NOT NULL CHECK (start_pressure_kpa_abs >= 0 AND start_pressure_kpa_abs < 1e9),
  end_pressure_kpa_abs REAL NOT NULL CHECK (end_pressure_kpa_abs >= 0 AND end_pressure_kpa_abs < 1e9),
  barometer_kpa REAL NOT NULL CHECK (barometer_kpa > 0 AND barometer_kpa < 1e6),
  start_temperature_c REAL NOT NULL CHECK (start_temperature_c > -274 AND start_temperature_c < 1e6),
  end_temperature_c REAL NOT NULL CHECK (end_temperature_c > -274 AND end_temperature_c < 1e6),
  duration_s REAL NOT NULL CHECK (duration_s > 0 AND duration_s < 1e9),
  started_at TEXT NOT NULL,
  volume_l REAL NOT NULL CHECK (volume_l > 0 AND volume_l < 1e9),
  stabilisation_s REAL CHECK (stabilisation_s >= 0 AND stabilisation_s < 1e9),
  gauge_instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  thermometer_instrument_id INTEGER REFERENCES instrument (id),
  pressure_drop_kpa REAL NOT NULL CHECK (pressure_drop_kpa BETWEEN -1e9 AND 1e9),
  leak_pa_m3_per_s REAL NOT NULL CHECK (leak_pa_m3_per_s BETWEEN -1e12 AND 1e12),
  uncompensated_pa_m3_per_s REAL NOT NULL CHECK (uncompensated_pa_m3_per_s BETWEEN -1e12 AND 1e12),
  reference_temperature_c REAL NOT NULL CHECK (reference_temperature_c BETWEEN -274 AND 1e6),
  method TEXT NOT NULL,
  gauge_use TEXT NOT NULL CHECK (json_valid(gauge_use)),
  thermometer_use TEXT CHECK (thermometer_use IS NULL OR json_valid(thermometer_use)),
  note TEXT NOT NULL,
  replaces_id INTEGER UNIQUE,
  reason TEXT NOT NULL,
  recorded_by_id INTEGER NOT NULL REFERENCES user (id),
  recorded_by_name TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  CHECK ((thermometer_instrument_id IS NULL) = (thermometer_use IS NULL)),
  CHECK (replaces_id IS NULL OR length(reason) > 0),
  UNIQUE (id, work_order_id),
  FOREIGN KEY (replaces_id, work_order_id) REFERENCES static_test (id, work_order_id)
) STRICT;
CREATE INDEX static_test_by_work_order ON static_test (work_order_id, id);
CREATE INDEX static_test_by_user ON static_test (recorded_by_id, id);
