-- Which spaces have something in a fermenter, so that reminding goes to these and not to each of them all. Asked as for
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

GRANT SELECT (space_id, state, dropped_at) ON brew TO gyle_postman;
CREATE POLICY postman ON brew FOR SELECT TO gyle_postman USING (true);

CREATE FUNCTION spaces_with_fermentations() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  SELECT DISTINCT space_id FROM public.brew WHERE state = 'in the fermenter' AND dropped_at IS NULL
$$;

GRANT CREATE ON SCHEMA public TO gyle_postman;
REVOKE ALL ON FUNCTION spaces_with_fermentations() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION spaces_with_fermentations() TO gyle_app;
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
