-- Where summaries are to be made anew, in one statement instead of one a space: asked as for mail, by a role that may read
-- these columns and is nobody's to act as. It tells which spaces they are and no more; who makes what, the locks of the rows say.
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

GRANT SELECT (space_id, brew_id) ON brew_mark TO gyle_postman;
CREATE POLICY postman ON brew_mark FOR SELECT TO gyle_postman USING (true);
GRANT SELECT (space_id, brew_id, calc_version, made_at) ON brew_summary TO gyle_postman;
CREATE POLICY postman ON brew_summary FOR SELECT TO gyle_postman USING (true);

-- What another version made is found from both ends of this, however many summaries there are. While it is built only those
-- who make summaries wait.
CREATE INDEX brew_summary_version ON brew_summary (calc_version);

CREATE FUNCTION spaces_with_stale_brews(made_with text, rest_s double precision, most int) RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  SELECT DISTINCT space_id FROM (
    (SELECT m.space_id FROM public.brew_mark m
       LEFT JOIN public.brew_summary s ON s.space_id = m.space_id AND s.brew_id = m.brew_id
     WHERE s.made_at IS NULL OR s.made_at <= now() - make_interval(secs => rest_s) LIMIT most)
    UNION ALL (SELECT space_id FROM public.brew_summary WHERE calc_version < made_with LIMIT most)
    UNION ALL (SELECT space_id FROM public.brew_summary WHERE calc_version > made_with LIMIT most)
    UNION ALL (SELECT space_id FROM public.brew_summary WHERE calc_version IS NULL LIMIT most)
  ) found
$$;

GRANT CREATE ON SCHEMA public TO gyle_postman;
REVOKE ALL ON FUNCTION spaces_with_stale_brews(text, double precision, int) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION spaces_with_stale_brews(text, double precision, int) TO gyle_app;
ALTER FUNCTION spaces_with_stale_brews(text, double precision, int) OWNER TO gyle_postman;
REVOKE CREATE ON SCHEMA public FROM gyle_postman;

DO $$
BEGIN
  EXECUTE format('REVOKE gyle_postman FROM %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'An administrator granted gyle_postman to %, and should take it back: REVOKE gyle_postman FROM %;',
      current_user, quote_ident(current_user);
END $$;
