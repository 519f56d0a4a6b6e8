-- A question asked of the log, kept under a name. Its answer is computed anew whenever it is opened. What it names of the
-- club stands in columns, so that it goes with the club's file.
CREATE TABLE saved_comparison (
  space_id       uuid NOT NULL,
  id             uuid NOT NULL,
  name           text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  quantity       text NOT NULL CHECK (quantity ~ '^[a-z]{1,20}\.[A-Za-z]{1,40}$'),
  compared_as    text NOT NULL CHECK (compared_as IN ('measured', 'difference')),
  group_by       text NOT NULL CHECK (group_by IN ('brewer', 'kettle', 'kind of kettle', 'revision', 'shared brew')),
  recipe_id      uuid,
  shared_brew_id uuid,
  brewer_user_id uuid,
  state          text CHECK (state IN ('planned', 'on the kettle', 'in the fermenter', 'in package', 'closed')),
  from_day       date,
  to_day         date CHECK (to_day >= from_day),
  created_by     uuid NOT NULL,
  created_at     timestamptz NOT NULL DEFAULT now(),
  lock_version   int NOT NULL DEFAULT 1 CHECK (lock_version > 0),
  -- Taken away, by whom and when; the row stays, so that this can be told.
  deleted_at     timestamptz,
  deleted_by     uuid,
  PRIMARY KEY (space_id, id),
  FOREIGN KEY (space_id, recipe_id) REFERENCES recipe (space_id, id),
  FOREIGN KEY (space_id, shared_brew_id) REFERENCES shared_brew (space_id, id),
  CONSTRAINT deleted_by_somebody CHECK ((deleted_at IS NULL) = (deleted_by IS NULL))
);
GRANT SELECT, INSERT ON saved_comparison TO gyle_app;
-- What it asks never changes: another question is another comparison.
GRANT UPDATE (name, lock_version, deleted_at, deleted_by) ON saved_comparison TO gyle_app;
ALTER TABLE saved_comparison ENABLE ROW LEVEL SECURITY;
ALTER TABLE saved_comparison FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON saved_comparison
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

CREATE FUNCTION comparison_stays_deleted() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'this comparison was taken away'
    USING ERRCODE = 'check_violation', CONSTRAINT = 'comparison_stays_deleted';
END $$;
CREATE TRIGGER stays_deleted BEFORE UPDATE ON saved_comparison
  FOR EACH ROW WHEN (OLD.deleted_at IS NOT NULL) EXECUTE FUNCTION comparison_stays_deleted();
