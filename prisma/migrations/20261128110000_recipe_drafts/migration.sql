-- What somebody is writing and has not published yet: one draft of a person for a recipe, and any number of new ones.
--
-- The club sees that there is a draft, whose and since when; the services show its text to its writer alone, and only the
-- writer changes it. It is text, not a recipe: half a number is kept as it was typed.

CREATE TABLE recipe_draft (
  space_id     uuid NOT NULL,
  user_id      uuid NOT NULL,
  -- The recipe that it changes; of a new recipe an identifier made by the page.
  id           uuid NOT NULL,
  recipe_id    uuid,
  base_rev     int,
  title        text NOT NULL CHECK (length(title) <= 160),
  content      jsonb NOT NULL CHECK (jsonb_typeof(content) = 'object' AND octet_length(content::text) <= 262144),
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  begun_at     timestamptz NOT NULL DEFAULT now(),
  saved_at     timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, user_id, id),
  FOREIGN KEY (space_id, recipe_id, base_rev) REFERENCES recipe_revision (space_id, recipe_id, rev),
  CHECK (recipe_id = id),
  CHECK ((recipe_id IS NULL) = (base_rev IS NULL)),
  CHECK (saved_at >= begun_at)
);
CREATE INDEX recipe_draft_of_recipe ON recipe_draft (space_id, recipe_id);

GRANT SELECT, INSERT, UPDATE, DELETE ON recipe_draft TO gyle_app;

ALTER TABLE recipe_draft ENABLE ROW LEVEL SECURITY;
ALTER TABLE recipe_draft FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON recipe_draft
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));
CREATE POLICY own_draft_begun ON recipe_draft AS RESTRICTIVE FOR INSERT WITH CHECK (user_id = (SELECT ctx_user()));
CREATE POLICY own_draft_changed ON recipe_draft AS RESTRICTIVE FOR UPDATE
  USING (user_id = (SELECT ctx_user())) WITH CHECK (user_id = (SELECT ctx_user()));
CREATE POLICY own_draft_ended ON recipe_draft AS RESTRICTIVE FOR DELETE USING (user_id = (SELECT ctx_user()));
