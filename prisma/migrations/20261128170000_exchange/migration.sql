-- Recipes that came out of a file. `leftover` is what the file said and this book has no place for, place by place, so
-- that an export of the revision, or of a later one, can write it back. One import_id is one act of importing.
CREATE TABLE recipe_leftover (
  space_id    uuid NOT NULL,
  recipe_id   uuid NOT NULL,
  rev         int NOT NULL,
  import_id   uuid NOT NULL,
  format      text NOT NULL CHECK (format IN ('beerjson', 'beerxml')),
  version     text NOT NULL CHECK (length(version) <= 20),
  leftover    jsonb NOT NULL CHECK (jsonb_typeof(leftover) = 'array' AND octet_length(leftover::text) <= 262144),
  imported_by uuid NOT NULL,
  imported_at timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, recipe_id, rev),
  FOREIGN KEY (space_id, recipe_id, rev) REFERENCES recipe_revision (space_id, recipe_id, rev)
);

CREATE INDEX recipe_leftover_by_import ON recipe_leftover (space_id, import_id);

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON recipe_leftover
  FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON recipe_leftover
  FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

GRANT SELECT, INSERT ON recipe_leftover TO gyle_app;
REVOKE UPDATE, DELETE, TRUNCATE ON recipe_leftover FROM gyle_app;

ALTER TABLE recipe_leftover ENABLE ROW LEVEL SECURITY;
ALTER TABLE recipe_leftover FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON recipe_leftover
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

-- People of a club that was taken out of a file, whom this club does not know: a name and nothing else.
CREATE TABLE former_member (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  display_name text NOT NULL CHECK (length(display_name) BETWEEN 1 AND 80),
  PRIMARY KEY (space_id, id)
);

GRANT SELECT, INSERT ON former_member TO gyle_app;

ALTER TABLE former_member ENABLE ROW LEVEL SECURITY;
ALTER TABLE former_member FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON former_member
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));
