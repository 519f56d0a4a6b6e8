-- That something was written of a brew since its summary was made. Marks are only added, so writers of one brew do not wait for
-- each other until they commit; who makes the summary anew takes away the marks that were there before it read the log.
CREATE TABLE brew_mark (
  space_id uuid NOT NULL,
  brew_id  uuid NOT NULL,
  id       uuid NOT NULL DEFAULT gen_random_uuid(),
  PRIMARY KEY (space_id, brew_id, id),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id)
);
GRANT SELECT, INSERT, DELETE ON brew_mark TO gyle_app;
ALTER TABLE brew_mark ENABLE ROW LEVEL SECURITY;
ALTER TABLE brew_mark FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON brew_mark
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

-- What is kept was made by an older form of the summary and is stale by its version.
ALTER TABLE brew_summary DROP COLUMN is_stale, DROP COLUMN source_rev;

CREATE OR REPLACE FUNCTION log_makes_stale() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO brew_mark (space_id, brew_id) SELECT DISTINCT g.space_id, g.brew_id FROM grown g;
  RETURN NULL;
END $$;

CREATE OR REPLACE FUNCTION brew_makes_stale() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO brew_mark (space_id, brew_id) VALUES (NEW.space_id, NEW.id);
  RETURN NULL;
END $$;
