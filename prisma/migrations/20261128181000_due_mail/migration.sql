-- Where mail is due, in one statement instead of one a space. Row-level security lets nobody see two spaces at once, so a
-- function answers as a role that may read these columns of the outbox, owns nothing else and is nobody's to act as. It
-- tells which spaces they are and no more.

DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'gyle_postman') THEN
    CREATE ROLE gyle_postman NOLOGIN NOINHERIT;
  END IF;
EXCEPTION
  WHEN duplicate_object OR unique_violation THEN
    NULL; -- another database of this server was migrated at the same moment
  WHEN insufficient_privilege THEN
    RAISE EXCEPTION 'The database user % may not create roles. Let an administrator run '
      'CREATE ROLE gyle_postman NOLOGIN; GRANT gyle_postman TO %; and start again.', current_user,
      quote_ident(current_user);
END $$;

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

DO $$
BEGIN
  IF EXISTS (SELECT FROM pg_roles WHERE rolname = 'gyle_postman' AND (rolsuper OR rolbypassrls OR rolcanlogin)) THEN
    RAISE EXCEPTION 'The role gyle_postman is a superuser, bypasses row-level security or can sign in; it must do none of these.';
  END IF;
END $$;

GRANT USAGE ON SCHEMA public TO gyle_postman;
GRANT SELECT (space_id, topic, next_try_at, done_at, given_up_at) ON outbox TO gyle_postman;
CREATE POLICY postman ON outbox FOR SELECT TO gyle_postman USING (true);

-- By time first: what is due is at the front, however many spaces there are.
CREATE INDEX outbox_due ON outbox (next_try_at) WHERE done_at IS NULL AND given_up_at IS NULL;

CREATE FUNCTION spaces_with_due(asked text) RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  SELECT space_id FROM public.outbox
  WHERE topic = asked AND done_at IS NULL AND given_up_at IS NULL AND next_try_at <= clock_timestamp()
  GROUP BY space_id
  ORDER BY min(next_try_at)
$$;

-- A function goes to another role only where that role may make one; for as long as that takes, it may.
GRANT CREATE ON SCHEMA public TO gyle_postman;
REVOKE ALL ON FUNCTION spaces_with_due(text) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION spaces_with_due(text) TO gyle_app;
ALTER FUNCTION spaces_with_due(text) OWNER TO gyle_postman;
REVOKE CREATE ON SCHEMA public FROM gyle_postman;

DO $$
BEGIN
  EXECUTE format('REVOKE gyle_postman FROM %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'An administrator granted gyle_postman to %, and should take it back: REVOKE gyle_postman FROM %;',
      current_user, quote_ident(current_user);
END $$;
