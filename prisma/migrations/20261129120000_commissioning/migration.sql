-- Commissioning a kettle with plain water: trials, and what was read in them. A reading never changes; one that was wrong
-- is replaced, or taken back, by a later one that names it. Its figures go into the profile as a revision like any other.

CREATE TABLE commissioning_trial (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  equipment_id uuid NOT NULL,
  begun_by     uuid NOT NULL,
  begun_at     timestamptz NOT NULL DEFAULT now(),
  -- The last revision of the profile that took figures of this trial.
  accepted_rev int,
  accepted_by  uuid,
  accepted_at  timestamptz,
  PRIMARY KEY (space_id, id),
  FOREIGN KEY (space_id, equipment_id) REFERENCES equipment (space_id, id),
  FOREIGN KEY (space_id, equipment_id, accepted_rev) REFERENCES equipment_revision (space_id, equipment_id, rev),
  CONSTRAINT accepted_wholly CHECK (num_nulls(accepted_rev, accepted_by, accepted_at) IN (0, 3))
);

CREATE INDEX commissioning_trial_of ON commissioning_trial (space_id, equipment_id, begun_at);

CREATE TABLE trial_reading (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  trial_id     uuid NOT NULL,
  part         text NOT NULL CHECK (part IN ('heating', 'cooling', 'boil-off', 'chill', 'dead space', 'marks')),
  -- Each part may be done several times.
  run          smallint NOT NULL CHECK (run BETWEEN 1 AND 20),
  kind         text NOT NULL CHECK (kind IN ('conditions', 'temperature', 'volume', 'mark', 'through', 'void')),
  occurred_at  timestamptz NOT NULL CHECK (occurred_at >= '2000-01-01'),
  value        double precision,
  payload      jsonb NOT NULL CHECK (jsonb_typeof(payload) = 'object' AND octet_length(payload::text) <= 4096),
  replaces     uuid,
  actor_id     uuid NOT NULL,
  received_at  timestamptz NOT NULL DEFAULT clock_timestamp(),
  payload_hash bytea NOT NULL CHECK (octet_length(payload_hash) = 32),
  PRIMARY KEY (space_id, id),
  UNIQUE (space_id, trial_id, id),
  FOREIGN KEY (space_id, trial_id) REFERENCES commissioning_trial (space_id, id),
  -- Only a reading of the same trial is replaced.
  FOREIGN KEY (space_id, trial_id, replaces) REFERENCES trial_reading (space_id, trial_id, id),
  CONSTRAINT replaces_another CHECK (replaces IS DISTINCT FROM id),
  CONSTRAINT void_names_what CHECK (kind <> 'void' OR replaces IS NOT NULL),
  CONSTRAINT measured_has_value CHECK ((kind IN ('conditions', 'void')) = (value IS NULL)),
  CONSTRAINT range_temperature CHECK (kind NOT IN ('temperature', 'through') OR value BETWEEN -5 AND 110),
  CONSTRAINT range_volume CHECK (kind <> 'volume' OR value BETWEEN 0 AND 2000),
  CONSTRAINT range_mark CHECK (kind <> 'mark' OR value BETWEEN 0 AND 5000)
);

GRANT SELECT, INSERT, UPDATE ON commissioning_trial TO gyle_app;
GRANT SELECT, INSERT ON trial_reading TO gyle_app;
REVOKE UPDATE, DELETE, TRUNCATE ON trial_reading FROM gyle_app;

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON trial_reading
  FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON trial_reading
  FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['commissioning_trial', 'trial_reading'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;
