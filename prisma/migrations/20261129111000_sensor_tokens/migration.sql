-- Directory: keys by which a sensor or a script posts readings for the member who made it. It can do what that member may
-- do to the log at that moment, for one brew or for all of theirs. Only a hash of the secret is kept.
CREATE TABLE sensor_token (
  id           uuid PRIMARY KEY,
  space_id     uuid NOT NULL REFERENCES space ON DELETE CASCADE,
  user_id      uuid NOT NULL REFERENCES app_user ON DELETE CASCADE,
  -- Null: every brew that its maker may write. No reference: brews are content, and may be elsewhere.
  brew_id      uuid,
  name         text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  token_hash   bytea NOT NULL UNIQUE CHECK (octet_length(token_hash) = 32),
  scope        text NOT NULL DEFAULT 'readings' CHECK (scope IN ('readings')),
  created_at   timestamptz NOT NULL DEFAULT now(),
  expires_at   timestamptz NOT NULL CHECK (expires_at > created_at AND expires_at <= created_at + interval '400 days'),
  revoked_at   timestamptz,
  last_used_at timestamptz
);
CREATE INDEX sensor_token_of_member ON sensor_token (space_id, user_id);
CREATE INDEX sensor_token_user ON sensor_token (user_id);

GRANT SELECT, INSERT ON sensor_token TO gyle_app;
-- What a key is for never changes; that it was used, and that it is over, does.
GRANT UPDATE (revoked_at, last_used_at) ON sensor_token TO gyle_app;

CREATE FUNCTION sensor_token_stays_revoked() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'this key was revoked' USING ERRCODE = 'check_violation', CONSTRAINT = 'sensor_token_stays_revoked';
END $$;
CREATE TRIGGER stays_revoked BEFORE UPDATE ON sensor_token
  FOR EACH ROW WHEN (OLD.revoked_at IS NOT NULL AND NEW.revoked_at IS DISTINCT FROM OLD.revoked_at)
  EXECUTE FUNCTION sensor_token_stays_revoked();
