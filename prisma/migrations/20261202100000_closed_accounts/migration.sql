-- Accounts that their owner closed. The row stays, because what the person brewed with others names it, and says nothing
-- about the person any more; it is never opened again.

ALTER TABLE app_user
  ADD COLUMN closed_at timestamptz,
  ADD CONSTRAINT closed_is_nobody CHECK (
    closed_at IS NULL
    OR (password_hash IS NULL AND email_verified_at IS NULL AND disabled_at IS NOT NULL AND preferences = '{}'
        AND display_name = 'A former member' AND email_norm = id::text || '@closed.invalid')
  );

CREATE FUNCTION stays_closed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'a closed account stays closed' USING ERRCODE = '55000';
END $$;
CREATE TRIGGER stays_closed BEFORE UPDATE ON app_user
  FOR EACH ROW WHEN (OLD.closed_at IS NOT NULL AND NEW.closed_at IS DISTINCT FROM OLD.closed_at)
  EXECUTE FUNCTION stays_closed();

-- What only the person needed goes with the account: the secret addresses and keys, and what they were told.
GRANT DELETE ON calendar_token, sensor_token, notice TO gyle_app;

-- When the content of an ended space was removed; the application's own role may not, so that its operator does.
ALTER TABLE space ADD COLUMN erased_at timestamptz CHECK (erased_at IS NULL OR deleted_at IS NOT NULL);
