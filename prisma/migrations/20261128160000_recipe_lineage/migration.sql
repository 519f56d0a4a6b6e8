-- Copies of recipes: whom they are owed to, and which recipe came of which.

-- Titles and names of the recipes that a copy goes back to, the first ancestor first, as they were when it was made. They
-- travel with every further copy, also into spaces whose people may not see the originals.
ALTER TABLE recipe
  ADD COLUMN credits jsonb NOT NULL DEFAULT '[]'
  CHECK (jsonb_typeof(credits) = 'array' AND octet_length(credits::text) <= 32768);

-- Commons: which recipe was copied of which, without a word of either. Only so can a family be counted across spaces.
CREATE TABLE recipe_lineage (
  recipe_root      uuid NOT NULL,
  space_id         uuid NOT NULL,
  recipe_id        uuid NOT NULL,
  origin_space_id  uuid NOT NULL,
  origin_recipe_id uuid NOT NULL,
  origin_rev       int NOT NULL CHECK (origin_rev >= 1),
  copied_at        timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (recipe_root, space_id, recipe_id),
  CHECK ((space_id, recipe_id) <> (origin_space_id, origin_recipe_id))
);

ALTER TABLE recipe_lineage ENABLE ROW LEVEL SECURITY;
ALTER TABLE recipe_lineage FORCE ROW LEVEL SECURITY;
CREATE POLICY read_by_all ON recipe_lineage FOR SELECT USING (true);
CREATE POLICY written_by_own_space ON recipe_lineage FOR INSERT WITH CHECK (space_id = (SELECT ctx_space()));
GRANT SELECT, INSERT ON recipe_lineage TO gyle_app;

-- By a trigger, so that no way of making a copy can forget it.
CREATE FUNCTION note_lineage() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO recipe_lineage (recipe_root, space_id, recipe_id, origin_space_id, origin_recipe_id, origin_rev)
  VALUES (NEW.root_id, NEW.space_id, NEW.id, NEW.origin_space_id, NEW.origin_recipe_id, NEW.origin_rev);
  RETURN NULL;
END $$;

CREATE TRIGGER lineage AFTER INSERT ON recipe
  FOR EACH ROW WHEN (NEW.origin_recipe_id IS NOT NULL) EXECUTE FUNCTION note_lineage();

DO $$
DECLARE
  one uuid;
BEGIN
  FOR one IN SELECT id FROM space LOOP
    PERFORM set_config('app.space_id', one::text, true);
    INSERT INTO recipe_lineage (recipe_root, space_id, recipe_id, origin_space_id, origin_recipe_id, origin_rev)
    SELECT root_id, space_id, id, origin_space_id, origin_recipe_id, origin_rev
    FROM recipe WHERE origin_recipe_id IS NOT NULL;
  END LOOP;
  PERFORM set_config('app.space_id', '', true);
END $$;

-- Lists of recipes by title, page by page.
CREATE INDEX recipe_by_title ON recipe (space_id, lower(title), id) WHERE archived_at IS NULL;
