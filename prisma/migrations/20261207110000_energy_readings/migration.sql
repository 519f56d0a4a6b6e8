-- An electricity meter is read in the log as well. Rows that are there satisfy what was asked of them before, which was
-- less wide; they are looked at by the next migration, which keeps nobody waiting.
ALTER TABLE brew_event DROP CONSTRAINT brew_event_kind_check;
ALTER TABLE brew_event ADD CONSTRAINT brew_event_kind_check
  CHECK (kind IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure', 'energy', 'addition', 'step', 'timer',
                  'pitch', 'package', 'note', 'photo', 'correct', 'void')) NOT VALID;
ALTER TABLE brew_event DROP CONSTRAINT measured_has_value;
ALTER TABLE brew_event ADD CONSTRAINT measured_has_value
  CHECK (kind NOT IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure', 'energy')
         OR (value IS NOT NULL AND unit IS NOT NULL AND payload ? 'quantity')) NOT VALID;
ALTER TABLE brew_event DROP CONSTRAINT only_measured_has_value;
ALTER TABLE brew_event ADD CONSTRAINT only_measured_has_value
  CHECK (kind IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure', 'energy', 'correct')
         OR (value IS NULL AND unit IS NULL)) NOT VALID;
ALTER TABLE brew_event ADD CONSTRAINT range_energy
  CHECK (kind <> 'energy' OR (unit = 'kWh' AND value BETWEEN 0 AND 1000000)) NOT VALID;
ALTER TABLE brew_event DROP CONSTRAINT range_correction;
ALTER TABLE brew_event ADD CONSTRAINT range_correction
  CHECK (kind <> 'correct' OR CASE unit
    WHEN 'sg' THEN value BETWEEN 0.980 AND 1.200
    WHEN 'C' THEN value BETWEEN -30 AND 130
    WHEN 'L' THEN value BETWEEN 0 AND 100000
    WHEN 'min' THEN value BETWEEN 0 AND 100000
    WHEN 'pH' THEN value BETWEEN 0 AND 14
    WHEN 'kPa' THEN value BETWEEN -101 AND 1000
    WHEN 'kWh' THEN value BETWEEN 0 AND 1000000
    ELSE false END) NOT VALID;
