-- What a brew comes to, for views over many brews. Nothing was kept here before; it is made from the brew and its log, and
-- can be made again at any time.
ALTER TABLE brew_summary
  DROP COLUMN og, DROP COLUMN fg, DROP COLUMN abv, DROP COLUMN apparent_att, DROP COLUMN ferm_temp_mean,
  DROP COLUMN days_to_half, DROP COLUMN event_count, DROP COLUMN upto_received_at;

ALTER TABLE brew_summary
  -- Goes up with every write to the brew or its log, in the transaction of that write.
  ADD COLUMN source_rev bigint NOT NULL DEFAULT 1 CHECK (source_rev > 0),
  -- Of which source_rev the rest was made; 0 where it never was. Fresh is what was made of the present one.
  ADD COLUMN made_rev   bigint NOT NULL DEFAULT 0 CHECK (made_rev >= 0 AND made_rev <= source_rev),
  -- Kept as a column, so that an index may ask for it and a further mark changes nothing that is in an index.
  ADD COLUMN is_stale   boolean NOT NULL GENERATED ALWAYS AS (made_rev <> source_rev) STORED,
  ADD COLUMN made_at    timestamptz,
  ADD COLUMN summary    jsonb,
  ADD COLUMN curves     jsonb,
  ALTER COLUMN calc_version DROP NOT NULL,
  ADD CONSTRAINT made_as_a_whole CHECK (
    (made_rev = 0) = (summary IS NULL) AND (made_rev = 0) = (curves IS NULL)
    AND (made_rev = 0) = (made_at IS NULL) AND (made_rev = 0) = (calc_version IS NULL)),
  ADD CONSTRAINT summary_is_an_object CHECK (jsonb_typeof(summary) = 'object'),
  ADD CONSTRAINT curves_are_a_list CHECK (jsonb_typeof(curves) = 'array');

-- A stale mark is a small change to a row: with room on its page it needs no new entry in an index.
ALTER TABLE brew_summary SET (fillfactor = 70);
-- What has to be made anew; the few of many.
CREATE INDEX brew_summary_stale ON brew_summary (space_id) WHERE is_stale;

-- The mark is set by the database, so that no writer can forget it.
CREATE FUNCTION log_makes_stale() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  -- The brew first and then its summary, as a change of the brew itself takes them, and several in one order: so no two
  -- writers wait for each other.
  PERFORM FROM brew b
    WHERE (b.space_id, b.id) IN (SELECT DISTINCT g.space_id, g.brew_id FROM grown g)
    ORDER BY b.id FOR NO KEY UPDATE;
  INSERT INTO brew_summary AS s (space_id, brew_id)
    SELECT DISTINCT g.space_id, g.brew_id FROM grown g ORDER BY g.brew_id
    ON CONFLICT (space_id, brew_id) DO UPDATE SET source_rev = s.source_rev + 1;
  RETURN NULL;
END $$;
CREATE TRIGGER makes_stale AFTER INSERT ON brew_event REFERENCING NEW TABLE AS grown
  FOR EACH STATEMENT EXECUTE FUNCTION log_makes_stale();

CREATE FUNCTION brew_makes_stale() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO brew_summary AS s (space_id, brew_id) VALUES (NEW.space_id, NEW.id)
    ON CONFLICT (space_id, brew_id) DO UPDATE SET source_rev = s.source_rev + 1;
  RETURN NULL;
END $$;
CREATE TRIGGER makes_stale AFTER INSERT OR UPDATE ON brew
  FOR EACH ROW EXECUTE FUNCTION brew_makes_stale();
