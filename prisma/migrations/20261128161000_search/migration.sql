-- What can be searched: one row for each recipe, brew and ingredient, kept beside it in the same transaction.

DO $$
DECLARE
  needed text;
BEGIN
  FOREACH needed IN ARRAY ARRAY['pg_trgm', 'btree_gin'] LOOP
    IF NOT EXISTS (SELECT FROM pg_available_extensions WHERE name = needed) THEN
      RAISE EXCEPTION 'This PostgreSQL server lacks the extension %, which search needs. It belongs to PostgreSQL and comes '
        'with its package of additional modules (often called postgresql-contrib): install that and start again.', needed;
    END IF;
    EXECUTE format('CREATE EXTENSION IF NOT EXISTS %I', needed);
  END LOOP;
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE EXCEPTION 'The database user % may not create the extensions that search needs. Let an administrator run '
      'CREATE EXTENSION pg_trgm; CREATE EXTENSION btree_gin; in this database and start again.', current_user;
END $$;

-- Words as they are written, and English ones also by their stem.
CREATE TEXT SEARCH CONFIGURATION gyle_plain (COPY = simple);
CREATE TEXT SEARCH CONFIGURATION gyle_english (COPY = english);

-- Where the server has it, “Märzen” is found by “marzen”; without it, search only minds the accents.
DO $$
DECLARE
  kinds CONSTANT text := 'asciiword, word, hword, hword_part, asciihword, hword_asciipart';
  home text;
BEGIN
  IF EXISTS (SELECT FROM pg_available_extensions WHERE name = 'unaccent') THEN
    CREATE EXTENSION IF NOT EXISTS unaccent;
    SELECT n.nspname INTO home FROM pg_extension e JOIN pg_namespace n ON n.oid = e.extnamespace
    WHERE e.extname = 'unaccent';
    EXECUTE format('ALTER TEXT SEARCH CONFIGURATION gyle_plain ALTER MAPPING FOR %s WITH %I.unaccent, simple', kinds, home);
    EXECUTE format('ALTER TEXT SEARCH CONFIGURATION gyle_english ALTER MAPPING FOR %s WITH %I.unaccent, english_stem',
                   kinds, home);
  END IF;
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'The extension unaccent may not be created here; search minds accents.';
END $$;

CREATE TABLE search_document (
  space_id       uuid NOT NULL,
  kind           text NOT NULL CHECK (kind IN ('recipe', 'brew', 'ingredient')),
  id             uuid NOT NULL,
  title          text NOT NULL,
  -- Names of what goes in, or of the kettle.
  keywords       text NOT NULL DEFAULT '',
  body           text NOT NULL DEFAULT '',
  style          text,
  author_id      uuid NOT NULL,
  -- Whether a brew of it has begun; of an ingredient, never.
  brewed         boolean NOT NULL DEFAULT false,
  changed_at     timestamptz NOT NULL,
  -- As lib/calc predicts them; null until they are computed, and where there are none. No numeric, whose comparisons
  -- the planner does not know to keep a secret: behind a policy it would guess how many rows they keep.
  original_plato double precision,
  bitterness_ibu double precision,
  colour_ebc     double precision,
  alcohol_vol    double precision,
  -- The version of the calculation that the figures are from.
  calc_version   text,
  words          tsvector GENERATED ALWAYS AS (
    setweight(to_tsvector('gyle_plain', title), 'A') || setweight(to_tsvector('gyle_english', title), 'A') ||
    setweight(to_tsvector('gyle_plain', keywords), 'B') || setweight(to_tsvector('gyle_english', keywords), 'B') ||
    setweight(to_tsvector('gyle_plain', body), 'D') || setweight(to_tsvector('gyle_english', body), 'D')
  ) STORED,
  PRIMARY KEY (space_id, kind, id)
);
CREATE INDEX search_document_words ON search_document USING gin (space_id, words);
CREATE INDEX search_document_newest ON search_document (space_id, changed_at DESC);
CREATE INDEX search_document_alcohol ON search_document (space_id, alcohol_vol);
CREATE INDEX search_document_bitterness ON search_document (space_id, bitterness_ibu);
CREATE INDEX search_document_colour ON search_document (space_id, colour_ebc);
CREATE INDEX search_document_author ON search_document (space_id, author_id, changed_at DESC);

-- Every word of titles and names once, to find what a mistyped word was meant to be.
CREATE TABLE search_word (
  space_id uuid NOT NULL,
  word     text NOT NULL CHECK (length(word) BETWEEN 3 AND 40),
  PRIMARY KEY (space_id, word)
);
CREATE INDEX search_word_trigrams ON search_word USING gin (space_id, word gin_trgm_ops);

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['search_document', 'search_word'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;

-- Nothing relies on these rows: they are made again from what they speak of.
GRANT SELECT, INSERT, UPDATE, DELETE ON search_document TO gyle_app;
GRANT SELECT, INSERT ON search_word TO gyle_app;

-- Keeping the rows. By triggers, so that no way of writing a recipe can forget them, in the transaction of the write.

CREATE FUNCTION note_words(in_space uuid, text_of text) RETURNS void LANGUAGE sql AS $$
  -- In one order, so that two writers of the same words wait for each other and never in a circle.
  INSERT INTO search_word (space_id, word)
  SELECT in_space, word FROM unnest(tsvector_to_array(to_tsvector('gyle_plain', text_of))) AS word
  WHERE length(word) BETWEEN 3 AND 40 ORDER BY word
  ON CONFLICT DO NOTHING
$$;

CREATE FUNCTION names_in(recipe jsonb) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT coalesce(string_agg(name #>> '{}', ' '), '') FROM (
    SELECT jsonb_path_query(recipe, '$.fermentables[*].name')
    UNION SELECT jsonb_path_query(recipe, '$.hops[*].name')
    UNION SELECT jsonb_path_query(recipe, '$.yeast.name')
  ) AS named (name)
$$;

CREATE FUNCTION has_been_brewed(in_space uuid, of_recipe uuid) RETURNS boolean LANGUAGE sql STABLE AS $$
  SELECT EXISTS (SELECT FROM brew WHERE space_id = in_space AND recipe_id = of_recipe AND state <> 'planned')
$$;

-- The figures of a recipe are not known to the database; lib/server/search writes them in the same transaction.
CREATE FUNCTION file_recipe(in_space uuid, which uuid) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  filed search_document;
BEGIN
  INSERT INTO search_document AS d (space_id, kind, id, title, keywords, body, style, author_id, brewed, changed_at)
  SELECT r.space_id, 'recipe', r.id, r.title, names_in(v.content -> 'recipe'), coalesce(v.content ->> 'notes', ''),
         v.content ->> 'style', v.author_id, has_been_brewed(in_space, which), v.created_at
  FROM recipe r
  JOIN recipe_revision v ON (v.space_id, v.recipe_id, v.rev) = (r.space_id, r.id, r.head_rev)
  WHERE r.space_id = in_space AND r.id = which AND r.archived_at IS NULL
  ON CONFLICT (space_id, kind, id) DO UPDATE SET
    title = EXCLUDED.title, keywords = EXCLUDED.keywords, body = EXCLUDED.body, style = EXCLUDED.style,
    author_id = EXCLUDED.author_id, brewed = EXCLUDED.brewed, changed_at = EXCLUDED.changed_at, calc_version = NULL,
    original_plato = NULL, bitterness_ibu = NULL, colour_ebc = NULL, alcohol_vol = NULL
  RETURNING d.* INTO filed;
  IF NOT FOUND THEN
    DELETE FROM search_document WHERE space_id = in_space AND kind = 'recipe' AND id = which;
  ELSE
    PERFORM note_words(in_space, filed.title || ' ' || filed.keywords);
  END IF;
END $$;

CREATE FUNCTION predicted_value(predicted jsonb, quantity text) RETURNS double precision LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT CASE WHEN jsonb_typeof(predicted #> ARRAY[quantity, 'value']) = 'number'
              THEN (predicted #>> ARRAY[quantity, 'value'])::double precision END
$$;

CREATE FUNCTION file_brew(b brew) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  named CONSTANT text := concat_ws(' ', b.equipment_snapshot ->> 'name', names_in(b.recipe));
BEGIN
  INSERT INTO search_document (space_id, kind, id, title, keywords, author_id, brewed, changed_at, original_plato,
                               bitterness_ibu, colour_ebc, alcohol_vol, calc_version)
  VALUES (b.space_id, 'brew', b.id, b.title, named, b.brewer_user_id, b.state <> 'planned',
          coalesce(b.started_at, b.created_at), predicted_value(b.predicted, 'fermenter.originalExtract'),
          predicted_value(b.predicted, 'fermenter.bitterness'), predicted_value(b.predicted, 'fermenter.colour'),
          predicted_value(b.predicted, 'package.alcohol'), b.calc_version)
  ON CONFLICT (space_id, kind, id) DO UPDATE SET
    title = EXCLUDED.title, keywords = EXCLUDED.keywords, author_id = EXCLUDED.author_id, brewed = EXCLUDED.brewed,
    changed_at = EXCLUDED.changed_at, original_plato = EXCLUDED.original_plato,
    bitterness_ibu = EXCLUDED.bitterness_ibu, colour_ebc = EXCLUDED.colour_ebc, alcohol_vol = EXCLUDED.alcohol_vol,
    calc_version = EXCLUDED.calc_version;
  PERFORM note_words(b.space_id, b.title || ' ' || named);
  UPDATE search_document SET brewed = has_been_brewed(b.space_id, b.recipe_id)
  WHERE space_id = b.space_id AND kind = 'recipe' AND id = b.recipe_id
    AND brewed <> has_been_brewed(b.space_id, b.recipe_id);
END $$;

CREATE FUNCTION file_ingredient(i ingredient, at timestamptz) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
  IF i.archived_at IS NOT NULL THEN
    DELETE FROM search_document WHERE space_id = i.space_id AND kind = 'ingredient' AND id = i.id;
    RETURN;
  END IF;
  INSERT INTO search_document (space_id, kind, id, title, keywords, body, author_id, changed_at)
  VALUES (i.space_id, 'ingredient', i.id, i.name, i.kind, i.notes, i.created_by, at)
  ON CONFLICT (space_id, kind, id) DO UPDATE SET
    title = EXCLUDED.title, keywords = EXCLUDED.keywords, body = EXCLUDED.body, changed_at = EXCLUDED.changed_at;
  PERFORM note_words(i.space_id, i.name);
END $$;

CREATE FUNCTION file_written() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  CASE TG_TABLE_NAME
    WHEN 'recipe' THEN PERFORM file_recipe(NEW.space_id, NEW.id);
    WHEN 'recipe_revision' THEN PERFORM file_recipe(NEW.space_id, NEW.recipe_id);
    WHEN 'brew' THEN PERFORM file_brew(NEW);
    WHEN 'ingredient' THEN PERFORM file_ingredient(NEW, clock_timestamp());
  END CASE;
  RETURN NULL;
END $$;

-- The first revision comes after its recipe; of the later ones the recipe's own row tells.
CREATE TRIGGER file AFTER UPDATE OF title, head_rev, archived_at ON recipe
  FOR EACH ROW EXECUTE FUNCTION file_written();
CREATE TRIGGER file AFTER INSERT ON recipe_revision
  FOR EACH ROW WHEN (NEW.parent_rev IS NULL) EXECUTE FUNCTION file_written();
CREATE TRIGGER file AFTER INSERT OR UPDATE ON brew FOR EACH ROW EXECUTE FUNCTION file_written();
CREATE TRIGGER file AFTER INSERT OR UPDATE ON ingredient FOR EACH ROW EXECUTE FUNCTION file_written();

-- What is there already. Row-level security binds the owner too, so this goes from space to space.
DO $$
DECLARE
  one uuid;
BEGIN
  FOR one IN SELECT id FROM space LOOP
    PERFORM set_config('app.space_id', one::text, true);
    PERFORM file_recipe(space_id, id) FROM recipe;
    PERFORM file_brew(b) FROM brew b;
    PERFORM file_ingredient(i, i.created_at) FROM ingredient i;
  END LOOP;
  PERFORM set_config('app.space_id', '', true);
END $$;

-- Finding. Under row-level security the planner may use an index only for conditions that it knows to keep a secret, and
-- @@ is none of them: it would read every row of the space. So one function looks past the policy, as a role that owns
-- nothing else, may read nothing but these rows and is nobody's to act as; and it asks for the space of the transaction
-- itself, which no caller can name.

DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'gyle_finder') THEN
    CREATE ROLE gyle_finder NOLOGIN NOINHERIT;
  END IF;
EXCEPTION
  WHEN duplicate_object OR unique_violation THEN
    NULL; -- another database of this server was migrated at the same moment
  WHEN insufficient_privilege THEN
    RAISE EXCEPTION 'The database user % may not create roles. Let an administrator run '
      'CREATE ROLE gyle_finder NOLOGIN; GRANT gyle_finder TO %; and start again.', current_user,
      quote_ident(current_user);
END $$;

DO $$
BEGIN
  EXECUTE format('GRANT gyle_finder TO %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    IF NOT pg_has_role(current_user, 'gyle_finder', 'MEMBER') THEN
      RAISE EXCEPTION 'The database user % may not act as gyle_finder. Let an administrator run '
        'GRANT gyle_finder TO %; and start again.', current_user, quote_ident(current_user);
    END IF;
END $$;

DO $$
BEGIN
  IF EXISTS (SELECT FROM pg_roles WHERE rolname = 'gyle_finder' AND (rolsuper OR rolbypassrls OR rolcanlogin)) THEN
    RAISE EXCEPTION 'The role gyle_finder is a superuser, bypasses row-level security or can sign in; it must do none of these.';
  END IF;
END $$;

GRANT USAGE ON SCHEMA public TO gyle_finder;
GRANT SELECT ON search_document, search_word TO gyle_finder;
CREATE POLICY finder ON search_document FOR SELECT TO gyle_finder USING (true);
CREATE POLICY finder ON search_word FOR SELECT TO gyle_finder USING (true);

-- `wanted` keeps: kind, style, author (id), brewed, from and to of each figure, since and until. Of more than `most`
-- matches the newest are weighed against each other; the answer then says that there are more.
CREATE FUNCTION find_documents(asked tsquery, wanted jsonb, most int, page_size int, skipped int)
RETURNS TABLE (
  kind text, id uuid, title text, title_marked text, keywords_marked text, body_marked text, style text, author_id uuid,
  brewed boolean, changed_at timestamptz, original_plato float8, bitterness_ibu float8, colour_ebc float8,
  alcohol_vol float8, weight real, matches int
)
LANGUAGE plpgsql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
-- Planned for the words at hand: a rare word wants another plan than a common one.
SET plan_cache_mode = force_custom_plan
AS $$
#variable_conflict use_column
DECLARE
  -- Characters of the private use area, which the page turns into marks; nothing else can write them.
  marks CONSTANT text := 'StartSel=' || chr(57344) || ', StopSel=' || chr(57345);
  excerpts CONSTANT text := ', MaxFragments=2, MinWords=5, MaxWords=14, FragmentDelimiter=" … "';
BEGIN
  RETURN QUERY
  WITH candidate AS MATERIALIZED (
    SELECT d.kind, d.id, d.changed_at, CASE WHEN asked IS NULL THEN 0 ELSE ts_rank(d.words, asked) END AS weight
    FROM search_document d
    WHERE d.space_id = ctx_space()
      AND (asked IS NULL OR d.words @@ asked)
      AND (wanted ->> 'kind' IS NULL OR d.kind = wanted ->> 'kind')
      AND (wanted ->> 'style' IS NULL OR d.style = wanted ->> 'style')
      AND (wanted ->> 'author' IS NULL OR d.author_id = (wanted ->> 'author')::uuid)
      AND (wanted ->> 'brewed' IS NULL OR (d.kind <> 'ingredient' AND d.brewed = (wanted ->> 'brewed')::boolean))
      AND (wanted ->> 'platoFrom' IS NULL OR d.original_plato >= (wanted ->> 'platoFrom')::float8)
      AND (wanted ->> 'platoTo' IS NULL OR d.original_plato <= (wanted ->> 'platoTo')::float8)
      AND (wanted ->> 'ibuFrom' IS NULL OR d.bitterness_ibu >= (wanted ->> 'ibuFrom')::float8)
      AND (wanted ->> 'ibuTo' IS NULL OR d.bitterness_ibu <= (wanted ->> 'ibuTo')::float8)
      AND (wanted ->> 'ebcFrom' IS NULL OR d.colour_ebc >= (wanted ->> 'ebcFrom')::float8)
      AND (wanted ->> 'ebcTo' IS NULL OR d.colour_ebc <= (wanted ->> 'ebcTo')::float8)
      AND (wanted ->> 'volFrom' IS NULL OR d.alcohol_vol >= (wanted ->> 'volFrom')::float8)
      AND (wanted ->> 'volTo' IS NULL OR d.alcohol_vol <= (wanted ->> 'volTo')::float8)
      AND (wanted ->> 'since' IS NULL OR d.changed_at >= (wanted ->> 'since')::timestamptz)
      AND (wanted ->> 'until' IS NULL OR d.changed_at < (wanted ->> 'until')::timestamptz)
    ORDER BY d.changed_at DESC
    LIMIT most
  ), chosen AS (
    SELECT c.*, count(*) OVER ()::int AS matches FROM candidate c
    ORDER BY c.weight DESC, c.changed_at DESC, c.id
    LIMIT page_size OFFSET skipped
  )
  SELECT d.kind, d.id, d.title,
         CASE WHEN asked IS NULL THEN d.title
              ELSE ts_headline('gyle_english', d.title, asked, marks || ', HighlightAll=true') END,
         CASE WHEN asked IS NULL THEN ''
              ELSE ts_headline('gyle_english', d.keywords, asked, marks || excerpts) END,
         CASE WHEN asked IS NULL THEN ''
              ELSE ts_headline('gyle_english', left(d.body, 4000), asked, marks || excerpts) END,
         d.style, d.author_id, d.brewed, d.changed_at, d.original_plato, d.bitterness_ibu, d.colour_ebc, d.alcohol_vol,
         c.weight::real, c.matches
  FROM chosen c
  JOIN search_document d ON d.space_id = ctx_space() AND d.kind = c.kind AND d.id = c.id
  ORDER BY c.weight DESC, c.changed_at DESC, c.id;
END $$;

-- The word of the space that is most like a mistyped one.
CREATE FUNCTION nearest_words(asked text[])
RETURNS TABLE (mistyped text, nearest text)
LANGUAGE plpgsql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
BEGIN
  RETURN QUERY
  SELECT a.word, found.word
  FROM unnest(asked) AS a (word)
  CROSS JOIN LATERAL (
    SELECT w.word FROM search_word w
    WHERE w.space_id = ctx_space() AND w.word % a.word
    ORDER BY similarity(w.word, a.word) DESC, w.word
    LIMIT 1
  ) AS found;
END $$;

-- A function goes to another role only where that role may make one; for as long as that takes, it may.
GRANT CREATE ON SCHEMA public TO gyle_finder;
DO $$
DECLARE
  finding text;
BEGIN
  FOREACH finding IN ARRAY ARRAY['find_documents(tsquery, jsonb, int, int, int)', 'nearest_words(text[])'] LOOP
    EXECUTE 'REVOKE ALL ON FUNCTION ' || finding || ' FROM PUBLIC';
    EXECUTE 'GRANT EXECUTE ON FUNCTION ' || finding || ' TO gyle_app';
    EXECUTE 'ALTER FUNCTION ' || finding || ' OWNER TO gyle_finder';
  END LOOP;
END $$;
REVOKE CREATE ON SCHEMA public FROM gyle_finder;

-- Whoever may act as the finder would see what it sees: from here on nobody may, the owner of the database included.
DO $$
BEGIN
  EXECUTE format('REVOKE gyle_finder FROM %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'An administrator granted gyle_finder to %, and should take it back: REVOKE gyle_finder FROM %;',
      current_user, quote_ident(current_user);
END $$;
