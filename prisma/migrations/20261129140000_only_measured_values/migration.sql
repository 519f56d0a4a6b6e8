-- A step, a timer or a note has no value: what has one is held to the range of its kind.
ALTER TABLE brew_event ADD CONSTRAINT only_measured_has_value
  CHECK (kind IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure', 'correct')
         OR (value IS NULL AND unit IS NULL));
