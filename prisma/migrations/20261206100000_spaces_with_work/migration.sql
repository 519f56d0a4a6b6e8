-- Which spaces have something to do, so that the work between requests goes to these and not to each of them all. Asked as for
-- mail and alarms: by a role that may read these columns and is nobody's to act as.
DO $$
BEGIN
  EXECUTE format('GRANT gyle_postman TO %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    IF NOT pg_has_role(current_user, 'gyle_postman', 'MEMBER') THEN
      RAISE EXCEPTION 'The database user % may not act as gyle_postman. Let an administrator run '
        'GRANT gyle_postman TO %; and start again.', current_user, quote_ident(current_user);
    END IF;
END $$;

GRANT SELECT (space_id, id, state, dropped_at) ON brew TO gyle_postman;
GRANT SELECT (space_id, brew_id) ON brew_mark TO gyle_postman;
GRANT SELECT (space_id, brew_id, calc_version) ON brew_summary TO gyle_postman;
CREATE POLICY postman ON brew FOR SELECT TO gyle_postman USING (true);
CREATE POLICY postman ON brew_mark FOR SELECT TO gyle_postman USING (true);
CREATE POLICY postman ON brew_summary FOR SELECT TO gyle_postman USING (true);

-- A brew is stale that was written to, whose summary another version made, or that has none.
CREATE FUNCTION spaces_with_stale_summaries(made_with text) RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  SELECT space_id FROM public.brew_mark
  UNION
  SELECT space_id FROM public.brew_summary WHERE calc_version IS DISTINCT FROM made_with
  UNION
  SELECT b.space_id FROM public.brew b
  WHERE NOT EXISTS (SELECT FROM public.brew_summary s WHERE s.space_id = b.space_id AND s.brew_id = b.id)
$$;

CREATE FUNCTION spaces_with_fermentations() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  SELECT DISTINCT space_id FROM public.brew WHERE state = 'in the fermenter' AND dropped_at IS NULL
$$;

GRANT CREATE ON SCHEMA public TO gyle_postman;
REVOKE ALL ON FUNCTION spaces_with_stale_summaries(text), spaces_with_fermentations() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION spaces_with_stale_summaries(text), spaces_with_fermentations() TO gyle_app;
ALTER FUNCTION spaces_with_stale_summaries(text) OWNER TO gyle_postman;
ALTER FUNCTION spaces_with_fermentations() OWNER TO gyle_postman;
REVOKE CREATE ON SCHEMA public FROM gyle_postman;

DO $$
BEGIN
  EXECUTE format('REVOKE gyle_postman FROM %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'An administrator granted gyle_postman to %, and should take it back: REVOKE gyle_postman FROM %;',
      current_user, quote_ident(current_user);
END $$;
