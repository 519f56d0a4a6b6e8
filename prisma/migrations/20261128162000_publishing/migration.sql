-- Recipes that a space shows to everybody. Nothing wrote the table before, so it is empty.

-- A copy may have the id of another space's recipe; whose it is, is part of the key, so that nobody can be kept from
-- publishing by somebody who was there first.
ALTER TABLE public_recipe DROP CONSTRAINT public_recipe_pkey;
ALTER TABLE public_recipe ADD PRIMARY KEY (recipe_root, source_space_id, recipe_id, rev);

ALTER TABLE public_recipe
  -- The last part of its address, for good: it always leads to this text or to nothing.
  ADD COLUMN address      text NOT NULL UNIQUE CHECK (address ~ '^[a-z0-9-]{8,80}$'),
  ADD COLUMN published_by uuid NOT NULL,
  -- What it goes back to, with no names but those that their owners put there.
  ADD COLUMN credits      jsonb NOT NULL DEFAULT '[]'
             CHECK (jsonb_typeof(credits) = 'array' AND octet_length(credits::text) <= 32768),
  -- Withdrawn means gone: what everybody could read is not kept where everybody reads.
  ADD CONSTRAINT withdrawn_is_empty CHECK (withdrawn_at IS NULL OR content = '{}');
CREATE INDEX public_recipe_of_recipe ON public_recipe (source_space_id, recipe_id, rev);
