-- Shared brews with a plan that has versions, people who take part with a kettle, notices to them, and calendar feeds.

-- Every version of a plan, whole. It is never changed: a change is another version, and its number is the lock.
CREATE TABLE shared_brew_plan (
  space_id       uuid NOT NULL,
  shared_brew_id uuid NOT NULL,
  version        int NOT NULL CHECK (version BETWEEN 1 AND 1000000),
  recipe_id      uuid NOT NULL,
  recipe_rev     int NOT NULL,
  state          text NOT NULL CHECK (state IN ('planned', 'open', 'closed', 'cancelled')),
  -- Days without a zone: the members of a club may live in several.
  window_from    date CHECK (window_from BETWEEN '2000-01-01' AND '2199-12-31'),
  window_to      date,
  rules          jsonb NOT NULL CHECK (jsonb_typeof(rules) = 'object' AND octet_length(rules::text) <= 16384),
  note           text NOT NULL DEFAULT '' CHECK (length(note) <= 500),
  made_by        uuid NOT NULL,
  made_at        timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, shared_brew_id, version),
  FOREIGN KEY (space_id, shared_brew_id) REFERENCES shared_brew (space_id, id),
  FOREIGN KEY (space_id, recipe_id, recipe_rev) REFERENCES recipe_revision (space_id, recipe_id, rev),
  CONSTRAINT window_whole CHECK (num_nulls(window_from, window_to) IN (0, 2)),
  CONSTRAINT window_in_order CHECK (window_to >= window_from AND window_to - window_from <= 366),
  -- A missing key would make these null, and null passes a check: so each is asked for by name.
  CONSTRAINT rules_held CHECK (
    rules ?& ARRAY['volume', 'originalExtract', 'bitterness', 'colour', 'mashPh', 'water', 'yeast', 'words']
    AND jsonb_typeof(rules -> 'volume') = 'boolean'
    AND jsonb_typeof(rules -> 'originalExtract') = 'boolean'
    AND jsonb_typeof(rules -> 'bitterness') = 'boolean'
    AND jsonb_typeof(rules -> 'colour') = 'boolean'
    AND jsonb_typeof(rules -> 'mashPh') = 'boolean'
    AND rules ->> 'water' IN ('as written', 'same treated water', 'own water')
    AND jsonb_typeof(rules -> 'yeast') = 'object'
    AND (rules -> 'yeast') ?& ARRAY['same', 'lot']
    AND jsonb_typeof(rules #> '{yeast,same}') = 'boolean'
    AND jsonb_typeof(rules #> '{yeast,lot}') = 'string'
    AND jsonb_typeof(rules -> 'words') = 'string'
  )
);

-- A member who joined with a kettle; whoever leaves stays as a line, so that a calendar can be told.
CREATE TABLE shared_brew_participant (
  space_id       uuid NOT NULL,
  shared_brew_id uuid NOT NULL,
  user_id        uuid NOT NULL,
  equipment_id   uuid NOT NULL,
  brew_at        timestamptz CHECK (brew_at BETWEEN '2000-01-01' AND '2200-01-01'),
  zone           text CHECK (zone ~ '^[A-Za-z0-9_+/-]{1,60}$'),
  -- The water that comes from the member's own tap, mg/L of each ion; null takes that of the recipe.
  water          jsonb CHECK (jsonb_typeof(water) = 'object' AND octet_length(water::text) <= 1024),
  yeast          text NOT NULL DEFAULT '' CHECK (length(yeast) <= 80),
  joined_by      uuid NOT NULL,
  joined_at      timestamptz NOT NULL DEFAULT now(),
  left_at        timestamptz,
  seen_version   int NOT NULL CHECK (seen_version >= 1),
  lock_version   int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, shared_brew_id, user_id, equipment_id),
  -- A kettle has one owner, who brews on it.
  CONSTRAINT one_place_a_kettle UNIQUE (space_id, shared_brew_id, equipment_id),
  FOREIGN KEY (space_id, shared_brew_id) REFERENCES shared_brew (space_id, id),
  FOREIGN KEY (space_id, shared_brew_id, seen_version) REFERENCES shared_brew_plan (space_id, shared_brew_id, version),
  FOREIGN KEY (space_id, equipment_id) REFERENCES equipment (space_id, id),
  CONSTRAINT day_has_zone CHECK (num_nulls(brew_at, zone) IN (0, 2)),
  CONSTRAINT water_of_six_ions CHECK (
    water IS NULL
    OR (water ?& ARRAY['calcium', 'magnesium', 'sodium', 'sulfate', 'chloride', 'bicarbonate']
        AND (water ->> 'calcium')::float8 BETWEEN 0 AND 10000
        AND (water ->> 'magnesium')::float8 BETWEEN 0 AND 10000
        AND (water ->> 'sodium')::float8 BETWEEN 0 AND 10000
        AND (water ->> 'sulfate')::float8 BETWEEN 0 AND 10000
        AND (water ->> 'chloride')::float8 BETWEEN 0 AND 10000
        AND (water ->> 'bicarbonate')::float8 BETWEEN 0 AND 10000)
  )
);
CREATE INDEX shared_brew_participant_of ON shared_brew_participant (space_id, user_id);

-- Something that one member is told. The payload has ids, version numbers and titles, and no address of a person.
CREATE TABLE notice (
  space_id   uuid NOT NULL,
  id         uuid NOT NULL,
  user_id    uuid NOT NULL,
  kind       text NOT NULL CHECK (kind IN ('plan changed', 'entered', 'taken out')),
  payload    jsonb NOT NULL CHECK (jsonb_typeof(payload) = 'object' AND octet_length(payload::text) <= 16384),
  created_at timestamptz NOT NULL DEFAULT now(),
  read_at    timestamptz,
  mailed_at  timestamptz,
  PRIMARY KEY (space_id, id)
);
CREATE INDEX notice_of ON notice (space_id, user_id, created_at DESC);
CREATE INDEX notice_unread ON notice (space_id, user_id) WHERE read_at IS NULL;

-- A brew keeps the version of the plan that it was planned under.
ALTER TABLE brew ADD COLUMN plan_version int;

-- What kept the last try from being done, and since when it is tried no more.
ALTER TABLE outbox
  ADD COLUMN last_error text CHECK (length(last_error) <= 500),
  ADD COLUMN given_up_at timestamptz,
  ADD CONSTRAINT outbox_attempts CHECK (attempts BETWEEN 0 AND 100),
  ADD CONSTRAINT outbox_ended_once CHECK (num_nonnulls(done_at, given_up_at) <= 1);
DROP INDEX outbox_todo;
CREATE INDEX outbox_todo ON outbox (space_id, next_try_at) WHERE done_at IS NULL AND given_up_at IS NULL;

-- Directory: who wants e-mail, and who may read a calendar without signing in. Only hashes of the secret are kept.
ALTER TABLE app_user ADD COLUMN mail_changes boolean NOT NULL DEFAULT true;

CREATE TABLE calendar_token (
  token_hash bytea PRIMARY KEY CHECK (octet_length(token_hash) = 32),
  space_id   uuid NOT NULL REFERENCES space ON DELETE CASCADE,
  user_id    uuid NOT NULL REFERENCES app_user ON DELETE CASCADE,
  created_at timestamptz NOT NULL DEFAULT now(),
  revoked_at timestamptz
);
CREATE UNIQUE INDEX calendar_token_one_open ON calendar_token (space_id, user_id) WHERE revoked_at IS NULL;
CREATE INDEX calendar_token_user ON calendar_token (user_id);

-- Every shared brew that is there has a first version. Row-level security binds the owner too, so it is lifted for this.
ALTER TABLE shared_brew NO FORCE ROW LEVEL SECURITY;
ALTER TABLE brew NO FORCE ROW LEVEL SECURITY;

INSERT INTO shared_brew_plan
  (space_id, shared_brew_id, version, recipe_id, recipe_rev, state, window_from, window_to, rules, made_by, made_at)
SELECT space_id, id, lock_version, recipe_id, recipe_rev, state,
       (planned_at AT TIME ZONE 'UTC')::date, (planned_at AT TIME ZONE 'UTC')::date,
       '{"volume": false, "originalExtract": true, "bitterness": true, "colour": true, "mashPh": true,
         "water": "as written", "yeast": {"same": true, "lot": ""}, "words": ""}',
       created_by, created_at
FROM shared_brew;

UPDATE brew b SET plan_version = s.lock_version
FROM shared_brew s WHERE s.space_id = b.space_id AND s.id = b.shared_brew_id;

INSERT INTO shared_brew_participant
  (space_id, shared_brew_id, user_id, equipment_id, joined_by, joined_at, seen_version)
SELECT b.space_id, b.shared_brew_id, b.brewer_user_id, b.equipment_id, b.brewer_user_id, b.created_at, b.plan_version
FROM brew b WHERE b.shared_brew_id IS NOT NULL
ON CONFLICT DO NOTHING;

ALTER TABLE shared_brew FORCE ROW LEVEL SECURITY;
ALTER TABLE brew FORCE ROW LEVEL SECURITY;

ALTER TABLE brew
  ADD CONSTRAINT brew_of_plan FOREIGN KEY (space_id, shared_brew_id, plan_version)
    REFERENCES shared_brew_plan (space_id, shared_brew_id, version),
  ADD CONSTRAINT plan_of_shared_brew CHECK ((shared_brew_id IS NULL) = (plan_version IS NULL));

-- What is written, stays.
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON shared_brew_plan
  FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON shared_brew_plan
  FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

GRANT SELECT, INSERT ON shared_brew_plan TO gyle_app;
REVOKE UPDATE, DELETE, TRUNCATE ON shared_brew_plan FROM gyle_app;
GRANT SELECT, INSERT, UPDATE ON shared_brew_participant, notice, calendar_token TO gyle_app;

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['shared_brew_plan', 'shared_brew_participant', 'notice'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;

-- A notice is read by the one whom it tells; anybody in the space may write one to anybody.
CREATE POLICY own_notice ON notice AS RESTRICTIVE FOR SELECT USING (user_id = (SELECT ctx_user()));
CREATE POLICY own_notice_change ON notice AS RESTRICTIVE FOR UPDATE
  USING (user_id = (SELECT ctx_user())) WITH CHECK (user_id = (SELECT ctx_user()));
