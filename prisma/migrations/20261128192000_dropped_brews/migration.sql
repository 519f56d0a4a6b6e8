-- A planned brew that will not be. It keeps its plan and its readings, and counts nowhere.
ALTER TABLE brew
  ADD COLUMN dropped_at  timestamptz,
  ADD COLUMN dropped_by  uuid,
  ADD COLUMN dropped_why text CHECK (length(dropped_why) <= 500),
  ADD CONSTRAINT dropped_wholly CHECK (num_nulls(dropped_at, dropped_by, dropped_why) IN (0, 3)),
  ADD CONSTRAINT dropped_while_planned CHECK (dropped_at IS NULL OR state = 'planned');

-- The kettle is free for another sheet of the same shared brew.
ALTER TABLE brew DROP CONSTRAINT one_sheet_a_kettle;
CREATE UNIQUE INDEX one_sheet_a_kettle
  ON brew (space_id, shared_brew_id, brewer_user_id, equipment_id) WHERE dropped_at IS NULL;

CREATE FUNCTION brew_stays_dropped() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'this brew was dropped' USING ERRCODE = 'check_violation', CONSTRAINT = 'brew_stays_dropped';
END $$;
CREATE TRIGGER stays_dropped BEFORE UPDATE ON brew
  FOR EACH ROW WHEN (OLD.dropped_at IS NOT NULL) EXECUTE FUNCTION brew_stays_dropped();
