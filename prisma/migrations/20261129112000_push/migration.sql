-- Directory: the browsers that a person allowed to be notified, and the key by which their push services know this server.

CREATE TABLE push_subscription (
  id            uuid PRIMARY KEY,
  user_id       uuid NOT NULL REFERENCES app_user ON DELETE CASCADE,
  endpoint      text NOT NULL CHECK (length(endpoint) BETWEEN 10 AND 1000),
  endpoint_hash bytea NOT NULL UNIQUE CHECK (octet_length(endpoint_hash) = 32),
  p256dh        bytea NOT NULL CHECK (octet_length(p256dh) = 65),
  auth          bytea NOT NULL CHECK (octet_length(auth) = 16),
  created_at    timestamptz NOT NULL DEFAULT now()
);
CREATE INDEX push_subscription_user ON push_subscription (user_id);
GRANT SELECT, INSERT, UPDATE, DELETE ON push_subscription TO gyle_app;

-- One row: browsers subscribe to this key, and another one would lose them all.
CREATE TABLE push_key (
  is_only     boolean PRIMARY KEY DEFAULT true CHECK (is_only),
  public_key  text NOT NULL CHECK (length(public_key) = 87),
  private_key text NOT NULL CHECK (length(private_key) = 43),
  made_at     timestamptz NOT NULL DEFAULT now()
);
GRANT SELECT, INSERT ON push_key TO gyle_app;

-- Content: what the timers of a brew come to. One row a timer, made from the events of the log in whatever order they
-- come: the latest of them by its time counts, and one that is over stays, so that an older event cannot wake it.
CREATE TABLE alarm_due (
  space_id    uuid NOT NULL,
  brew_id     uuid NOT NULL,
  timer       text NOT NULL CHECK (length(timer) BETWEEN 1 AND 100),
  said_at     timestamptz NOT NULL,
  event_id    uuid NOT NULL,
  actor_id    uuid NOT NULL,
  label       text NOT NULL CHECK (length(label) <= 200),
  -- Null: the timer was acknowledged or cleared.
  due_at      timestamptz,
  attempts    smallint NOT NULL DEFAULT 0,
  next_try_at timestamptz,
  -- Subscriptions that have it already, so that another try wakes nobody twice.
  reached     uuid[] NOT NULL DEFAULT '{}',
  done_at     timestamptz,
  PRIMARY KEY (space_id, brew_id, timer),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id),
  CHECK ((due_at IS NULL) = (next_try_at IS NULL))
);
CREATE INDEX alarm_due_next ON alarm_due (next_try_at) WHERE done_at IS NULL AND next_try_at IS NOT NULL;
GRANT SELECT, INSERT, UPDATE ON alarm_due TO gyle_app;
ALTER TABLE alarm_due ENABLE ROW LEVEL SECURITY;
ALTER TABLE alarm_due FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON alarm_due
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

-- Where alarms are due, asked as for mail: by a role that may read these columns and is nobody's to act as.
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

GRANT SELECT (space_id, next_try_at, done_at) ON alarm_due TO gyle_postman;
CREATE POLICY postman ON alarm_due FOR SELECT TO gyle_postman USING (true);

CREATE FUNCTION spaces_with_alarms() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog, public, pg_temp
AS $$
  SELECT space_id FROM public.alarm_due
  WHERE done_at IS NULL AND next_try_at <= clock_timestamp()
  GROUP BY space_id
  ORDER BY min(next_try_at)
$$;

GRANT CREATE ON SCHEMA public TO gyle_postman;
REVOKE ALL ON FUNCTION spaces_with_alarms() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION spaces_with_alarms() TO gyle_app;
ALTER FUNCTION spaces_with_alarms() OWNER TO gyle_postman;
REVOKE CREATE ON SCHEMA public FROM gyle_postman;

DO $$
BEGIN
  EXECUTE format('REVOKE gyle_postman FROM %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    RAISE NOTICE 'An administrator granted gyle_postman to %, and should take it back: REVOKE gyle_postman FROM %;',
      current_user, quote_ident(current_user);
END $$;
