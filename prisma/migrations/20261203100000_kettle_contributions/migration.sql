-- What a kettle's brews tell of it, given to other clubs by an owner who agrees: figures only. It is a copy that names
-- neither club nor person nor brew, and nobody else reads the rows: a function gives them, and only once there are
-- enough people behind them.
CREATE TABLE kettle_contribution (
  space_id         uuid NOT NULL,
  equipment_id     uuid NOT NULL,
  -- The same for all kettles of one person, and nothing that their account could be found by.
  contributor_hash bytea NOT NULL CHECK (octet_length(contributor_hash) = 32),
  kind             text NOT NULL CHECK (kind IN ('electric with basket', 'electric with bag', 'kettle and mash tun', 'pot on a hob')),
  -- Null until the brews have been looked at.
  content          jsonb CHECK (jsonb_typeof(content) = 'object' AND octet_length(content::text) <= 1048576),
  calc_version     text,
  agreed_by        uuid NOT NULL,
  agreed_at        timestamptz NOT NULL DEFAULT now(),
  made_at          timestamptz,
  PRIMARY KEY (space_id, equipment_id),
  CONSTRAINT made_as_a_whole CHECK ((content IS NULL) = (calc_version IS NULL) AND (content IS NULL) = (made_at IS NULL))
);
CREATE INDEX kettle_contribution_of_kind ON kettle_contribution (kind) WHERE content IS NOT NULL;

-- Whoever takes back what they gave takes it away.
GRANT SELECT, INSERT, UPDATE, DELETE ON kettle_contribution TO gyle_app;
ALTER TABLE kettle_contribution ENABLE ROW LEVEL SECURITY;
ALTER TABLE kettle_contribution FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON kettle_contribution
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

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

GRANT SELECT (space_id, contributor_hash, kind, content, calc_version) ON kettle_contribution TO gyle_finder;
GRANT EXECUTE ON FUNCTION ctx_space() TO gyle_finder;
CREATE POLICY finder ON kettle_contribution FOR SELECT TO gyle_finder USING (true);

-- Kettles of one kind from other spaces, once five people or more gave some; in an order that says nothing of whose or when.
CREATE FUNCTION kettles_elsewhere(wanted text, made_with text, most int)
RETURNS TABLE (content jsonb, people bigint)
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  WITH given AS (
    SELECT k.content, k.contributor_hash FROM public.kettle_contribution k
    WHERE k.kind = wanted AND k.calc_version = made_with AND k.content IS NOT NULL
      AND k.space_id IS DISTINCT FROM public.ctx_space()
  ), counted AS (SELECT count(DISTINCT contributor_hash) AS people FROM given)
  SELECT given.content, counted.people FROM given, counted
  WHERE counted.people >= 5
  ORDER BY md5(given.content::text)
  LIMIT most
$$;

GRANT CREATE ON SCHEMA public TO gyle_finder;
REVOKE ALL ON FUNCTION kettles_elsewhere(text, text, int) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION kettles_elsewhere(text, text, int) TO gyle_app;
ALTER FUNCTION kettles_elsewhere(text, text, int) OWNER TO gyle_finder;
REVOKE CREATE ON SCHEMA public FROM gyle_finder;

DO $$
BEGIN
  EXECUTE format('REVOKE gyle_finder FROM %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'An administrator granted gyle_finder to %, and should take it back: REVOKE gyle_finder FROM %;',
      current_user, quote_ident(current_user);
END $$;
