-- What a brewer chose for one revision on one kettle, and the ingredients and lots that a club or a member keeps.

-- A club's own ingredients, beside the generic ones that the program knows. `figures` is read by its kind.
CREATE TABLE ingredient (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  kind         text NOT NULL CHECK (kind IN ('fermentable', 'hop', 'yeast', 'salt', 'acid')),
  name         text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  figures      jsonb NOT NULL CHECK (jsonb_typeof(figures) = 'object' AND octet_length(figures::text) <= 4096),
  notes        text NOT NULL DEFAULT '' CHECK (length(notes) <= 4000),
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  created_by   uuid NOT NULL,
  created_at   timestamptz NOT NULL DEFAULT now(),
  archived_at  timestamptz,
  PRIMARY KEY (space_id, id)
);

CREATE UNIQUE INDEX one_ingredient_a_name ON ingredient (space_id, kind, lower(name)) WHERE archived_at IS NULL;

-- One harvest of a hop, one sack of a malt: what its own analysis says, and how much is left. A lot without an owner is
-- the club's. `name` is the ingredient as recipes name it.
CREATE TABLE ingredient_lot (
  space_id      uuid NOT NULL,
  id            uuid NOT NULL,
  owner_user_id uuid,
  kind          text NOT NULL CHECK (kind IN ('fermentable', 'hop', 'yeast', 'salt', 'acid')),
  name          text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  label         text NOT NULL CHECK (length(label) BETWEEN 1 AND 80),
  figures       jsonb NOT NULL CHECK (jsonb_typeof(figures) = 'object' AND octet_length(figures::text) <= 4096),
  on_hand       numeric(12, 3) NOT NULL CHECK (on_hand >= 0 AND on_hand <= 1000000),
  unit          text NOT NULL CHECK (unit IN ('kg', 'g', 'mL', 'L', 'pcs')),
  lock_version  int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  created_by    uuid NOT NULL,
  created_at    timestamptz NOT NULL DEFAULT now(),
  archived_at   timestamptz,
  PRIMARY KEY (space_id, id)
);

CREATE INDEX ingredient_lot_by_name ON ingredient_lot (space_id, kind, lower(name)) WHERE archived_at IS NULL;

-- One row a revision and kettle: the volume asked for, the way out chosen where the recipe does not fit (null for none),
-- and the lot used for a row of the recipe ("hops.2": lot).
CREATE TABLE adaptation (
  space_id     uuid NOT NULL,
  recipe_id    uuid NOT NULL,
  rev          int NOT NULL,
  equipment_id uuid NOT NULL,
  volume       text NOT NULL CHECK (volume IN ('usual', 'written')),
  way          text CHECK (length(way) BETWEEN 1 AND 80),
  lots         jsonb NOT NULL DEFAULT '{}'
               CHECK (jsonb_typeof(lots) = 'object' AND octet_length(lots::text) <= 8192),
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  changed_by   uuid NOT NULL,
  changed_at   timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, recipe_id, rev, equipment_id),
  FOREIGN KEY (space_id, recipe_id, rev) REFERENCES recipe_revision (space_id, recipe_id, rev),
  FOREIGN KEY (space_id, equipment_id) REFERENCES equipment (space_id, id)
);

GRANT SELECT, INSERT, UPDATE ON ingredient, ingredient_lot, adaptation TO gyle_app;
GRANT DELETE ON adaptation TO gyle_app;

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['ingredient', 'ingredient_lot', 'adaptation'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;
