-- The log of a brew day: timers, pitching and packaging are events as well, and a correction carries a value.
ALTER TABLE brew_event DROP CONSTRAINT brew_event_kind_check;
ALTER TABLE brew_event ADD CONSTRAINT brew_event_kind_check
  CHECK (kind IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure', 'addition', 'step', 'timer', 'pitch',
                  'package', 'note', 'photo', 'correct', 'void'));

-- A sensor keeps no count of its own; what a phone sends always has one.
ALTER TABLE brew_event ALTER COLUMN device_seq DROP NOT NULL;

ALTER TABLE brew_event ADD CONSTRAINT correction_has_value
  CHECK (kind <> 'correct' OR (value IS NOT NULL AND unit IS NOT NULL AND payload ? 'measured'));
-- A correction is held to the range of its unit, as the reading was to that of its kind.
ALTER TABLE brew_event ADD CONSTRAINT range_correction
  CHECK (kind <> 'correct' OR CASE unit
    WHEN 'sg' THEN value BETWEEN 0.980 AND 1.200
    WHEN 'C' THEN value BETWEEN -30 AND 130
    WHEN 'L' THEN value BETWEEN 0 AND 100000
    WHEN 'min' THEN value BETWEEN 0 AND 100000
    WHEN 'pH' THEN value BETWEEN 0 AND 14
    WHEN 'kPa' THEN value BETWEEN -101 AND 1000
    ELSE false END);
ALTER TABLE brew_event ADD CONSTRAINT step_is_named
  CHECK (kind <> 'step' OR (payload ? 'step' AND payload ->> 'act' IN ('begun', 'done', 'left out', 'taken back', 'added')));
ALTER TABLE brew_event ADD CONSTRAINT timer_is_named
  CHECK (kind <> 'timer' OR (payload ? 'timer' AND payload ->> 'act' IN ('set', 'acknowledged', 'cleared')));

-- What came since: a reader asks for the events after those it has.
CREATE INDEX brew_event_received ON brew_event (space_id, brew_id, received_at, id);
