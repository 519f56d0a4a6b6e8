-- Where the content of a space is, as the server says that has it or had it. Only a move to another server writes here; with
-- one server the table stays empty. Nobody is let in through a door that a space has left, however old what they know is.
CREATE TABLE space_place (
  space_id uuid NOT NULL PRIMARY KEY,
  state    text NOT NULL CHECK (state IN ('leaving', 'gone')),
  since    timestamptz NOT NULL DEFAULT now()
);
GRANT SELECT ON space_place TO gyle_app;
ALTER TABLE space_place ENABLE ROW LEVEL SECURITY;
ALTER TABLE space_place FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON space_place
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

-- Begins a unit of work on a space and says whether it is here. The lock is shared by everybody who works in the space and
-- goes with their transaction; whoever moves it takes it alone. The place is read by a later statement than the one that
-- took the lock, which a function gives a later view of the database: it must stay volatile.
CREATE FUNCTION enter_space(asked uuid, person uuid) RETURNS text LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  found text;
BEGIN
  PERFORM set_config('role', 'gyle_app', true),
          set_config('app.space_id', asked::text, true),
          set_config('app.user_id', person::text, true);
  PERFORM pg_advisory_xact_lock_shared(hashtextextended('space ' || asked::text, 0));
  SELECT p.state INTO found FROM space_place p WHERE p.space_id = asked;
  RETURN coalesce(found, 'here');
END $$;
REVOKE ALL ON FUNCTION enter_space(uuid, uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION enter_space(uuid, uuid) TO gyle_app;
