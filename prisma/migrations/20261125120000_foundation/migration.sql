-- The whole data model, in three groups of tables.
--
--   Directory  people, sessions, spaces and who belongs to them. One place, never split.
--   Content    all that a club or a person's own bench writes. A space may move to another database, so every key, every
--              unique rule and every reference begins with space_id, and nothing refers from one space into another: a
--              shared revision is copied.
--   Commons    what a space publishes, copied out of it, keyed by the root of the recipe.
--
-- Identifiers are made by the application. Columns with a unit carry it in their name.

-- For the rule that a vessel is booked once at a time. A trusted extension: the owner of the database may create it.
CREATE EXTENSION IF NOT EXISTS btree_gist;

-- The space and the person of the current transaction, set by the application; null when it set none.
CREATE FUNCTION ctx_space() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE
  AS $$ SELECT nullif(current_setting('app.space_id', true), '')::uuid $$;

CREATE FUNCTION ctx_user() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE
  AS $$ SELECT nullif(current_setting('app.user_id', true), '')::uuid $$;

CREATE FUNCTION forbid_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is append-only', TG_TABLE_NAME USING ERRCODE = '55000';
END $$;

-- Directory.

CREATE TABLE app_user (
  id                uuid PRIMARY KEY,
  email_norm        text NOT NULL UNIQUE CHECK (email_norm = lower(email_norm) AND length(email_norm) <= 254),
  email_verified_at timestamptz,
  password_hash     text,
  display_name      text NOT NULL CHECK (length(display_name) BETWEEN 1 AND 80),
  preferences       jsonb NOT NULL DEFAULT '{}'
                    CHECK (jsonb_typeof(preferences) = 'object' AND octet_length(preferences::text) <= 4096),
  auth_epoch        int NOT NULL DEFAULT 0,
  disabled_at       timestamptz,
  created_at        timestamptz NOT NULL DEFAULT now()
);

CREATE TABLE auth_account (
  provider            text NOT NULL,
  provider_account_id text NOT NULL,
  user_id             uuid NOT NULL REFERENCES app_user ON DELETE CASCADE,
  PRIMARY KEY (provider, provider_account_id)
);
CREATE INDEX auth_account_user ON auth_account (user_id);

-- Only hashes of session references are kept: a copy of this table opens no session.
CREATE TABLE auth_session (
  token_hash          bytea PRIMARY KEY CHECK (octet_length(token_hash) = 32),
  user_id             uuid NOT NULL REFERENCES app_user ON DELETE CASCADE,
  created_at          timestamptz NOT NULL DEFAULT now(),
  last_seen_at        timestamptz NOT NULL DEFAULT now(),
  idle_expires_at     timestamptz NOT NULL,
  absolute_expires_at timestamptz NOT NULL,
  user_agent          text,
  CHECK (idle_expires_at <= absolute_expires_at)
);
CREATE INDEX auth_session_user ON auth_session (user_id);

CREATE TABLE one_time_token (
  token_hash bytea PRIMARY KEY CHECK (octet_length(token_hash) = 32),
  purpose    text NOT NULL CHECK (purpose IN ('login', 'verify', 'reset')),
  email_norm text NOT NULL,
  expires_at timestamptz NOT NULL,
  used_at    timestamptz
);

CREATE TABLE space (
  id            uuid PRIMARY KEY,
  kind          text NOT NULL CHECK (kind IN ('club', 'person')),
  slug          text NOT NULL UNIQUE CHECK (slug ~ '^[a-z0-9][a-z0-9-]{1,38}[a-z0-9]$'),
  name          text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  -- Which database holds the content of the space, once there is more than one.
  shard         smallint NOT NULL DEFAULT 0,
  owner_user_id uuid REFERENCES app_user,
  created_at    timestamptz NOT NULL DEFAULT now(),
  deleted_at    timestamptz,
  CHECK ((kind = 'person') = (owner_user_id IS NOT NULL))
);

CREATE TABLE membership (
  space_id  uuid NOT NULL REFERENCES space ON DELETE CASCADE,
  user_id   uuid NOT NULL REFERENCES app_user ON DELETE CASCADE,
  role      text NOT NULL CHECK (role IN ('organiser', 'member', 'judge', 'steward', 'guest')),
  status    text NOT NULL DEFAULT 'active' CHECK (status IN ('active', 'suspended', 'left')),
  joined_at timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, user_id)
);
CREATE INDEX membership_user ON membership (user_id, space_id) INCLUDE (role, status);

-- No invitation makes an organiser: a forwarded link must not hand over a club.
CREATE TABLE invite (
  space_id   uuid NOT NULL REFERENCES space ON DELETE CASCADE,
  id         uuid NOT NULL,
  token_hash bytea NOT NULL UNIQUE CHECK (octet_length(token_hash) = 32),
  role       text NOT NULL CHECK (role IN ('member', 'judge', 'steward', 'guest')),
  email_norm text,
  max_uses   int NOT NULL DEFAULT 1 CHECK (max_uses BETWEEN 1 AND 200),
  uses       int NOT NULL DEFAULT 0,
  created_by uuid NOT NULL REFERENCES app_user,
  expires_at timestamptz NOT NULL,
  revoked_at timestamptz,
  PRIMARY KEY (space_id, id),
  CHECK (uses BETWEEN 0 AND max_uses),
  CHECK (email_norm IS NULL OR max_uses = 1)
);

-- Unlogged: after a crash everybody simply starts with a full allowance.
CREATE UNLOGGED TABLE rate_limit (
  key text PRIMARY KEY,
  -- The time at which the key would be idle again.
  tat timestamptz NOT NULL
);

CREATE TABLE audit_log (
  id         bigint GENERATED ALWAYS AS IDENTITY,
  at         timestamptz NOT NULL DEFAULT clock_timestamp(),
  actor      uuid,
  space_id   uuid,
  action     text NOT NULL,
  target     text,
  outcome    text NOT NULL CHECK (outcome IN ('ok', 'denied', 'error')),
  request_id text,
  meta       jsonb NOT NULL DEFAULT '{}',
  PRIMARY KEY (at, id)
) PARTITION BY RANGE (at);
CREATE TABLE audit_log_default PARTITION OF audit_log DEFAULT;

-- Content.

CREATE TABLE recipe (
  space_id         uuid NOT NULL,
  id               uuid NOT NULL,
  title            text NOT NULL CHECK (length(title) BETWEEN 1 AND 160),
  head_rev         int NOT NULL DEFAULT 0 CHECK (head_rev >= 0),
  visibility       text NOT NULL DEFAULT 'space' CHECK (visibility IN ('space', 'public')),
  -- The first ancestor of all copies of a recipe; a recipe that is no copy is its own root.
  root_id          uuid NOT NULL,
  -- The revision that a copy was made of. No foreign key: it may stand in another space.
  origin_space_id  uuid,
  origin_recipe_id uuid,
  origin_rev       int,
  origin_hash      bytea CHECK (octet_length(origin_hash) = 32),
  created_by       uuid NOT NULL,
  created_at       timestamptz NOT NULL DEFAULT now(),
  archived_at      timestamptz,
  PRIMARY KEY (space_id, id),
  CHECK (num_nulls(origin_space_id, origin_recipe_id, origin_rev, origin_hash) IN (0, 4))
);

-- The revision number is part of the key, and that is the lock: of two people who save on the same base, one gets in.
CREATE TABLE recipe_revision (
  space_id     uuid NOT NULL,
  recipe_id    uuid NOT NULL,
  rev          int NOT NULL CHECK (rev >= 1),
  parent_rev   int,
  content      jsonb NOT NULL CHECK (jsonb_typeof(content) = 'object' AND octet_length(content::text) <= 262144),
  content_hash bytea NOT NULL CHECK (octet_length(content_hash) = 32),
  calc_version text NOT NULL,
  author_id    uuid NOT NULL,
  message      text CHECK (length(message) <= 500),
  created_at   timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, recipe_id, rev),
  FOREIGN KEY (space_id, recipe_id) REFERENCES recipe (space_id, id),
  FOREIGN KEY (space_id, recipe_id, parent_rev) REFERENCES recipe_revision (space_id, recipe_id, rev),
  CHECK (parent_rev < rev)
);

CREATE TABLE equipment (
  space_id      uuid NOT NULL,
  id            uuid NOT NULL,
  owner_user_id uuid NOT NULL,
  name          text NOT NULL CHECK (length(name) BETWEEN 1 AND 160),
  head_rev      int NOT NULL DEFAULT 0 CHECK (head_rev >= 0),
  created_at    timestamptz NOT NULL DEFAULT now(),
  archived_at   timestamptz,
  PRIMARY KEY (space_id, id)
);

-- `figures` is the whole equipment, each learned or stated figure as {value, sd, from, count}. The columns beside it
-- repeat the figures that the database itself holds to a physical range.
CREATE TABLE equipment_revision (
  space_id     uuid NOT NULL,
  equipment_id uuid NOT NULL,
  rev          int NOT NULL CHECK (rev >= 1),
  kettle_l     numeric(9, 3) NOT NULL CHECK (kettle_l > 0 AND kettle_l <= 100000),
  basket_kg    numeric(8, 3) CHECK (basket_kg > 0 AND basket_kg <= 20000),
  rated_w      numeric(9, 1) NOT NULL CHECK (rated_w > 0 AND rated_w <= 10000000),
  rated_v      numeric(6, 1) NOT NULL CHECK (rated_v BETWEEN 12 AND 1000),
  supply_v     numeric(6, 1) NOT NULL CHECK (supply_v BETWEEN 12 AND 1000),
  altitude_m   numeric(6, 1) NOT NULL DEFAULT 0 CHECK (altitude_m BETWEEN -450 AND 6000),
  figures      jsonb NOT NULL CHECK (jsonb_typeof(figures) = 'object' AND octet_length(figures::text) <= 65536),
  content_hash bytea NOT NULL CHECK (octet_length(content_hash) = 32),
  created_at   timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, equipment_id, rev),
  FOREIGN KEY (space_id, equipment_id) REFERENCES equipment (space_id, id)
);

CREATE TABLE shared_brew (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  recipe_id    uuid NOT NULL,
  recipe_rev   int NOT NULL,
  title        text NOT NULL CHECK (length(title) BETWEEN 1 AND 160),
  notes        text NOT NULL DEFAULT '' CHECK (length(notes) <= 20000),
  state        text NOT NULL DEFAULT 'planned' CHECK (state IN ('planned', 'open', 'closed', 'cancelled')),
  planned_at   timestamptz,
  lock_version int NOT NULL DEFAULT 1,
  created_by   uuid NOT NULL,
  created_at   timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, id),
  FOREIGN KEY (space_id, recipe_id, recipe_rev) REFERENCES recipe_revision (space_id, recipe_id, rev)
);

-- A brew keeps what it was planned with: the adapted recipe, the equipment as it was, the surroundings, the run sheet and
-- the predictions, with the version of the calculation that made them. A later change of any of these changes no log.
CREATE TABLE brew (
  space_id           uuid NOT NULL,
  id                 uuid NOT NULL,
  title              text NOT NULL CHECK (length(title) BETWEEN 1 AND 160),
  shared_brew_id     uuid,
  recipe_id          uuid NOT NULL,
  recipe_rev         int NOT NULL,
  recipe_root        uuid NOT NULL,
  equipment_id       uuid NOT NULL,
  equipment_rev      int NOT NULL,
  brewer_user_id     uuid NOT NULL,
  target_volume_l    numeric(9, 3) NOT NULL CHECK (target_volume_l > 0 AND target_volume_l <= 100000),
  recipe             jsonb NOT NULL CHECK (jsonb_typeof(recipe) = 'object' AND octet_length(recipe::text) <= 262144),
  equipment_snapshot jsonb NOT NULL
                     CHECK (jsonb_typeof(equipment_snapshot) = 'object' AND octet_length(equipment_snapshot::text) <= 65536),
  ambient            jsonb NOT NULL CHECK (jsonb_typeof(ambient) = 'object' AND octet_length(ambient::text) <= 4096),
  run_sheet          jsonb NOT NULL CHECK (jsonb_typeof(run_sheet) = 'array' AND octet_length(run_sheet::text) <= 262144),
  predicted          jsonb NOT NULL CHECK (jsonb_typeof(predicted) = 'object' AND octet_length(predicted::text) <= 65536),
  calc_version       text NOT NULL,
  state              text NOT NULL DEFAULT 'planned'
                     CHECK (state IN ('planned', 'on the kettle', 'in the fermenter', 'in package', 'closed')),
  started_at         timestamptz,
  closed_at          timestamptz,
  lock_version       int NOT NULL DEFAULT 1,
  created_at         timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, id),
  FOREIGN KEY (space_id, shared_brew_id) REFERENCES shared_brew (space_id, id),
  FOREIGN KEY (space_id, recipe_id, recipe_rev) REFERENCES recipe_revision (space_id, recipe_id, rev),
  FOREIGN KEY (space_id, equipment_id, equipment_rev) REFERENCES equipment_revision (space_id, equipment_id, rev),
  -- One sheet a kettle: a member with two kettles may brew a shared brew on both.
  CONSTRAINT one_sheet_a_kettle UNIQUE (space_id, shared_brew_id, brewer_user_id, equipment_id),
  CHECK ((state = 'closed') = (closed_at IS NOT NULL)),
  CHECK (closed_at IS NULL OR (started_at IS NOT NULL AND closed_at >= started_at))
);
CREATE INDEX brew_of_revision ON brew (space_id, recipe_id, recipe_rev);

CREATE TABLE brew_collaborator (
  space_id uuid NOT NULL,
  brew_id  uuid NOT NULL,
  user_id  uuid NOT NULL,
  PRIMARY KEY (space_id, brew_id, user_id),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id)
);

-- The log of a brew: events made on a phone, possibly without network, that are only ever added. A phone may send one
-- many times; (device_id, device_seq) and the hash tell a repetition from another event. A correction is an event that
-- names the one it corrects, without a foreign key, because it may arrive first.
CREATE TABLE brew_event (
  space_id             uuid NOT NULL,
  id                   uuid NOT NULL,
  brew_id              uuid NOT NULL,
  device_id            uuid NOT NULL,
  device_seq           bigint NOT NULL CHECK (device_seq > 0),
  actor_id             uuid NOT NULL,
  kind                 text NOT NULL
                       CHECK (kind IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure', 'addition', 'step',
                                       'note', 'photo', 'correct', 'void')),
  occurred_at          timestamptz NOT NULL,
  occurred_precision_s int NOT NULL DEFAULT 0 CHECK (occurred_precision_s >= 0),
  client_sent_at       timestamptz,
  clock_offset_ms      bigint,
  received_at          timestamptz NOT NULL DEFAULT clock_timestamp(),
  value                double precision,
  unit                 text,
  payload              jsonb NOT NULL DEFAULT '{}'
                       CHECK (jsonb_typeof(payload) = 'object' AND octet_length(payload::text) <= 16384),
  target_id            uuid,
  payload_hash         bytea NOT NULL CHECK (octet_length(payload_hash) = 32),
  v                    smallint NOT NULL DEFAULT 1,
  PRIMARY KEY (space_id, id),
  UNIQUE (space_id, device_id, device_seq),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id),
  CHECK ((kind IN ('correct', 'void')) = (target_id IS NOT NULL)),
  CHECK (target_id IS DISTINCT FROM id),
  CHECK (occurred_at >= '2000-01-01'),
  CONSTRAINT value_finite CHECK (value IS NULL OR (value <> 'NaN' AND abs(value) < 1e9)),
  -- A check lets null pass, so the ranges below hold only because a measured event has a value and a unit.
  CONSTRAINT measured_has_value
    CHECK (kind NOT IN ('gravity', 'temperature', 'volume', 'duration', 'ph', 'pressure')
           OR (value IS NOT NULL AND unit IS NOT NULL AND payload ? 'quantity')),
  CONSTRAINT range_gravity CHECK (kind <> 'gravity' OR (unit = 'sg' AND value BETWEEN 0.980 AND 1.200)),
  CONSTRAINT range_temperature CHECK (kind <> 'temperature' OR (unit = 'C' AND value BETWEEN -30 AND 130)),
  CONSTRAINT range_volume CHECK (kind <> 'volume' OR (unit = 'L' AND value BETWEEN 0 AND 100000)),
  CONSTRAINT range_duration CHECK (kind <> 'duration' OR (unit = 'min' AND value BETWEEN 0 AND 100000)),
  CONSTRAINT range_ph CHECK (kind <> 'ph' OR (unit = 'pH' AND value BETWEEN 0 AND 14)),
  CONSTRAINT range_pressure CHECK (kind <> 'pressure' OR (unit = 'kPa' AND value BETWEEN -101 AND 1000))
);
CREATE INDEX brew_event_read ON brew_event (space_id, brew_id, kind, occurred_at) INCLUDE (value);

-- What the log of a brew comes to. It can be made again from the log at any time.
CREATE TABLE brew_summary (
  space_id         uuid NOT NULL,
  brew_id          uuid NOT NULL,
  og               numeric(6, 4),
  fg               numeric(6, 4),
  abv              numeric(5, 2),
  apparent_att     numeric(5, 4),
  ferm_temp_mean   numeric(5, 2),
  days_to_half     numeric(6, 2),
  event_count      int NOT NULL,
  upto_received_at timestamptz NOT NULL,
  calc_version     text NOT NULL,
  PRIMARY KEY (space_id, brew_id),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id)
);

CREATE TABLE vessel (
  space_id   uuid NOT NULL,
  id         uuid NOT NULL,
  name       text NOT NULL CHECK (length(name) BETWEEN 1 AND 160),
  capacity_l numeric(9, 3) CHECK (capacity_l > 0),
  PRIMARY KEY (space_id, id)
);

CREATE TABLE vessel_booking (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  vessel_id    uuid NOT NULL,
  brew_id      uuid,
  during       tstzrange NOT NULL CHECK (NOT isempty(during) AND NOT upper_inf(during) AND NOT lower_inf(during)),
  booked_by    uuid NOT NULL,
  cancelled_at timestamptz,
  PRIMARY KEY (space_id, id),
  FOREIGN KEY (space_id, vessel_id) REFERENCES vessel (space_id, id),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id),
  CONSTRAINT one_booking_at_a_time
    EXCLUDE USING gist (space_id WITH =, vessel_id WITH =, during WITH &&) WHERE (cancelled_at IS NULL)
);

CREATE TABLE tasting (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  title        text NOT NULL CHECK (length(title) BETWEEN 1 AND 160),
  state        text NOT NULL DEFAULT 'draft' CHECK (state IN ('draft', 'open', 'closed', 'revealed')),
  steward_id   uuid NOT NULL,
  revealed_at  timestamptz,
  lock_version int NOT NULL DEFAULT 1,
  PRIMARY KEY (space_id, id),
  CHECK ((state = 'revealed') = (revealed_at IS NOT NULL))
);

-- An entry is a random number and nothing else: no name, time or brew from which a judge could conclude.
CREATE TABLE tasting_entry (
  space_id   uuid NOT NULL,
  tasting_id uuid NOT NULL,
  entry_no   int NOT NULL CHECK (entry_no BETWEEN 100 AND 999),
  PRIMARY KEY (space_id, tasting_id, entry_no),
  FOREIGN KEY (space_id, tasting_id) REFERENCES tasting (space_id, id)
);

CREATE TABLE tasting_identity (
  space_id       uuid NOT NULL,
  tasting_id     uuid NOT NULL,
  entry_no       int NOT NULL,
  brew_id        uuid NOT NULL,
  brewer_user_id uuid NOT NULL,
  PRIMARY KEY (space_id, tasting_id, entry_no),
  UNIQUE (space_id, tasting_id, brew_id),
  FOREIGN KEY (space_id, tasting_id, entry_no) REFERENCES tasting_entry (space_id, tasting_id, entry_no),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id)
);

CREATE TABLE score_sheet (
  space_id     uuid NOT NULL,
  tasting_id   uuid NOT NULL,
  entry_no     int NOT NULL,
  judge_id     uuid NOT NULL,
  scheme       text NOT NULL,
  scores       jsonb NOT NULL CHECK (jsonb_typeof(scores) = 'object' AND octet_length(scores::text) <= 4096),
  total        numeric(5, 1) NOT NULL CHECK (total BETWEEN 0 AND 100),
  notes        text CHECK (length(notes) <= 8000),
  submitted_at timestamptz,
  lock_version int NOT NULL DEFAULT 1,
  PRIMARY KEY (space_id, tasting_id, entry_no, judge_id),
  FOREIGN KEY (space_id, tasting_id, entry_no) REFERENCES tasting_entry (space_id, tasting_id, entry_no)
);

CREATE TABLE order_round (
  space_id     uuid NOT NULL,
  id           uuid NOT NULL,
  title        text NOT NULL CHECK (length(title) BETWEEN 1 AND 160),
  state        text NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'locked', 'placed', 'received', 'cancelled')),
  currency     char(3) NOT NULL,
  closes_at    timestamptz,
  lock_version int NOT NULL DEFAULT 1,
  PRIMARY KEY (space_id, id)
);

CREATE TABLE order_line (
  space_id     uuid NOT NULL,
  round_id     uuid NOT NULL,
  id           uuid NOT NULL,
  user_id      uuid NOT NULL,
  item         text NOT NULL CHECK (length(item) BETWEEN 1 AND 200),
  qty          numeric(12, 3) NOT NULL CHECK (qty > 0 AND qty <= 1000000),
  unit         text NOT NULL CHECK (unit IN ('g', 'kg', 'mL', 'L', 'pcs')),
  -- In the smallest unit of the currency, so that sums are exact.
  price_minor  bigint CHECK (price_minor BETWEEN 0 AND 100000000000),
  received_qty numeric(12, 3) CHECK (received_qty >= 0),
  PRIMARY KEY (space_id, round_id, id),
  FOREIGN KEY (space_id, round_id) REFERENCES order_round (space_id, id)
);

CREATE TABLE attachment (
  space_id    uuid NOT NULL,
  id          uuid NOT NULL,
  brew_id     uuid,
  uploader_id uuid NOT NULL,
  sha256      bytea NOT NULL CHECK (octet_length(sha256) = 32),
  mime        text NOT NULL CHECK (mime IN ('image/webp', 'image/jpeg', 'image/png', 'application/pdf')),
  bytes       int NOT NULL CHECK (bytes BETWEEN 1 AND 10485760),
  width       int CHECK (width BETWEEN 1 AND 8192),
  height      int CHECK (height BETWEEN 1 AND 8192),
  created_at  timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, id),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id)
);
CREATE INDEX attachment_of_brew ON attachment (space_id, brew_id);

CREATE TABLE idempotency (
  space_id     uuid NOT NULL,
  actor_id     uuid NOT NULL,
  key          uuid NOT NULL,
  request_hash bytea NOT NULL CHECK (octet_length(request_hash) = 32),
  status       smallint,
  response     jsonb,
  created_at   timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, actor_id, key)
);

CREATE TABLE outbox (
  space_id    uuid NOT NULL,
  id          uuid NOT NULL,
  topic       text NOT NULL,
  body        jsonb NOT NULL,
  created_at  timestamptz NOT NULL DEFAULT clock_timestamp(),
  done_at     timestamptz,
  attempts    smallint NOT NULL DEFAULT 0,
  next_try_at timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, id)
);
CREATE INDEX outbox_todo ON outbox (space_id, next_try_at) WHERE done_at IS NULL;

-- Commons.

CREATE TABLE public_recipe (
  recipe_root     uuid NOT NULL,
  recipe_id       uuid NOT NULL,
  rev             int NOT NULL,
  source_space_id uuid NOT NULL,
  title           text NOT NULL,
  author_name     text NOT NULL,
  content         jsonb NOT NULL,
  content_hash    bytea NOT NULL CHECK (octet_length(content_hash) = 32),
  published_at    timestamptz NOT NULL DEFAULT now(),
  withdrawn_at    timestamptz,
  doc             tsvector GENERATED ALWAYS AS (to_tsvector('simple', title)) STORED,
  PRIMARY KEY (recipe_root, recipe_id, rev)
);
CREATE INDEX public_recipe_search ON public_recipe USING gin (doc);

-- One brew's contribution to the statistics of a recipe across clubs, under a pseudonym.
CREATE TABLE stat_contrib (
  recipe_root  uuid NOT NULL,
  space_id     uuid NOT NULL,
  brew_id      uuid NOT NULL,
  brewer_hash  bytea NOT NULL,
  og           numeric(6, 4),
  fg           numeric(6, 4),
  abv          numeric(5, 2),
  apparent_att numeric(5, 4),
  days_to_half numeric(6, 2),
  calc_version text NOT NULL,
  updated_at   timestamptz NOT NULL,
  PRIMARY KEY (recipe_root, space_id, brew_id)
);

-- What is written, stays.

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['recipe_revision', 'equipment_revision', 'brew_event', 'audit_log'] LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I
                    FOR EACH ROW EXECUTE FUNCTION forbid_change()', name);
    EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %I
                    FOR EACH STATEMENT EXECUTE FUNCTION forbid_change()', name);
  END LOOP;
END $$;

-- A role without power.
-- The application works as gyle_app, whoever it signs in as: the role owns nothing, changes no table, cannot sign in by
-- itself and is always under row-level security. Roles belong to the whole server, so it may be there already.

DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'gyle_app') THEN
    CREATE ROLE gyle_app NOLOGIN NOINHERIT;
  END IF;
EXCEPTION
  WHEN duplicate_object OR unique_violation THEN
    NULL; -- another database of this server was migrated at the same moment
  WHEN insufficient_privilege THEN
    RAISE EXCEPTION 'The database user % may not create roles. Let an administrator run '
      'CREATE ROLE gyle_app NOLOGIN; GRANT gyle_app TO %; and start again.', current_user, quote_ident(current_user);
END $$;

DO $$
BEGIN
  EXECUTE format('GRANT gyle_app TO %I', current_user);
EXCEPTION
  WHEN insufficient_privilege THEN
    IF NOT pg_has_role(current_user, 'gyle_app', 'MEMBER') THEN
      RAISE EXCEPTION 'The database user % may not act as gyle_app. Let an administrator run '
        'GRANT gyle_app TO %; and start again.', current_user, quote_ident(current_user);
    END IF;
END $$;

DO $$
BEGIN
  IF EXISTS (SELECT FROM pg_roles WHERE rolname = 'gyle_app' AND (rolsuper OR rolbypassrls)) THEN
    RAISE EXCEPTION 'The role gyle_app is a superuser or bypasses row-level security; it must be neither.';
  END IF;
END $$;

REVOKE CREATE ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO gyle_app;

GRANT SELECT, INSERT, UPDATE ON
  app_user, auth_account, auth_session, one_time_token, space, membership, invite, rate_limit,
  recipe, equipment, shared_brew, brew, brew_collaborator, brew_summary, vessel, vessel_booking,
  tasting, tasting_entry, score_sheet, order_round, order_line, attachment, idempotency, outbox,
  public_recipe, stat_contrib
TO gyle_app;

-- Deleting is the exception: things that expire, things taken back before anybody relies on them, and what can be made
-- again. Everything else is archived, closed or withdrawn.
GRANT DELETE ON
  auth_account, auth_session, one_time_token, rate_limit,
  brew_collaborator, brew_summary, tasting_entry, order_line, attachment, idempotency, outbox, stat_contrib
TO gyle_app;

GRANT SELECT, INSERT ON recipe_revision, equipment_revision, brew_event, audit_log, tasting_identity TO gyle_app;

-- Said again although nothing above grants it, so that it also holds where default privileges are wider.
REVOKE UPDATE, DELETE, TRUNCATE ON recipe_revision, equipment_revision, brew_event, audit_log FROM gyle_app;

-- One space at a time.
-- Without a space no row of content is visible and none can be written. Forced, so that it also binds the owner.

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY[
    'recipe', 'recipe_revision', 'equipment', 'equipment_revision', 'shared_brew', 'brew', 'brew_collaborator',
    'brew_event', 'brew_summary', 'vessel', 'vessel_booking', 'tasting', 'tasting_entry', 'score_sheet', 'order_round',
    'order_line', 'attachment', 'idempotency', 'outbox'
  ] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;

-- Who brewed an entry: only the steward knows before the reveal, and only a draft can be filled.
ALTER TABLE tasting_identity ENABLE ROW LEVEL SECURITY;
ALTER TABLE tasting_identity FORCE ROW LEVEL SECURITY;

CREATE POLICY blind ON tasting_identity FOR SELECT USING (
  space_id = (SELECT ctx_space())
  AND EXISTS (
    SELECT 1 FROM tasting t
    WHERE t.space_id = tasting_identity.space_id AND t.id = tasting_identity.tasting_id
      AND (t.state = 'revealed' OR t.steward_id = (SELECT ctx_user()))
  )
);

CREATE POLICY blind_write ON tasting_identity FOR INSERT WITH CHECK (
  space_id = (SELECT ctx_space())
  AND EXISTS (
    SELECT 1 FROM tasting t
    WHERE t.space_id = tasting_identity.space_id AND t.id = tasting_identity.tasting_id
      AND t.state = 'draft' AND t.steward_id = (SELECT ctx_user())
  )
);

-- A judge sees no other sheet before the reveal, and writes only an own one, while the tasting is open.
CREATE POLICY own_sheet ON score_sheet AS RESTRICTIVE FOR ALL
USING (
  judge_id = (SELECT ctx_user())
  OR EXISTS (
    SELECT 1 FROM tasting t
    WHERE t.space_id = score_sheet.space_id AND t.id = score_sheet.tasting_id
      AND (t.state = 'revealed' OR t.steward_id = (SELECT ctx_user()))
  )
)
WITH CHECK (
  judge_id = (SELECT ctx_user())
  AND EXISTS (
    SELECT 1 FROM tasting t
    WHERE t.space_id = score_sheet.space_id AND t.id = score_sheet.tasting_id AND t.state = 'open'
  )
);

-- The commons are read by everybody; each space writes only what came out of it.
ALTER TABLE public_recipe ENABLE ROW LEVEL SECURITY;
ALTER TABLE public_recipe FORCE ROW LEVEL SECURITY;
CREATE POLICY read_by_all ON public_recipe FOR SELECT USING (true);
CREATE POLICY published_by_own_space ON public_recipe FOR INSERT WITH CHECK (source_space_id = (SELECT ctx_space()));
CREATE POLICY changed_by_own_space ON public_recipe FOR UPDATE
  USING (source_space_id = (SELECT ctx_space())) WITH CHECK (source_space_id = (SELECT ctx_space()));

ALTER TABLE stat_contrib ENABLE ROW LEVEL SECURITY;
ALTER TABLE stat_contrib FORCE ROW LEVEL SECURITY;
CREATE POLICY read_by_all ON stat_contrib FOR SELECT USING (true);
CREATE POLICY written_by_own_space ON stat_contrib
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));
