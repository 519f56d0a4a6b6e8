-- The group order. The foundation had a sketch of it, into which nothing was ever written.

DROP TABLE order_line;

ALTER TABLE order_round
  ADD COLUMN shared_brew_id uuid,
  ADD COLUMN note           text NOT NULL DEFAULT '' CHECK (length(note) <= 2000),
  ADD COLUMN created_by     uuid NOT NULL,
  ADD COLUMN created_at     timestamptz NOT NULL DEFAULT now(),
  ADD FOREIGN KEY (space_id, shared_brew_id) REFERENCES shared_brew (space_id, id),
  ADD CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CHECK (lock_version >= 1),
  DROP CONSTRAINT order_round_state_check,
  ADD CONSTRAINT order_round_state_check
    CHECK (state IN ('open', 'locked', 'placed', 'received', 'handed out', 'cancelled'));

-- One thing that is bought. Amounts everywhere below are whole: grams, millilitres or pieces.
CREATE TABLE order_item (
  space_id         uuid NOT NULL,
  round_id         uuid NOT NULL,
  id               uuid NOT NULL,
  kind             text NOT NULL CHECK (kind IN ('fermentable', 'hop', 'yeast', 'salt', 'acid', 'other')),
  name             text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  -- The name as it is compared: two spellings are one item.
  name_key         text NOT NULL CHECK (name_key = lower(btrim(name))),
  unit             text NOT NULL CHECK (unit IN ('g', 'mL', 'pcs')),
  -- Living cells in one piece of yeast, in billions; null counts one piece a sheet.
  cells_per_piece  int CHECK (cells_per_piece BETWEEN 1 AND 1000000),
  -- Who takes and pays for what is left over; null shares its cost, and the club keeps it.
  left_over_to     uuid,
  received_amount  int CHECK (received_amount BETWEEN 0 AND 100000000),
  -- What was really charged, in the smallest unit of the currency; null is what was ordered.
  paid_minor       bigint CHECK (paid_minor BETWEEN 0 AND 100000000000),
  lock_version     int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, round_id, id),
  FOREIGN KEY (space_id, round_id) REFERENCES order_round (space_id, id),
  CONSTRAINT one_item_a_name UNIQUE (space_id, round_id, kind, unit, name_key),
  CHECK (cells_per_piece IS NULL OR (kind = 'yeast' AND unit = 'pcs'))
);

-- A pack that a supplier offers. A lower price for a larger amount is another pack.
CREATE TABLE order_offer (
  space_id     uuid NOT NULL,
  round_id     uuid NOT NULL,
  item_id      uuid NOT NULL,
  id           uuid NOT NULL,
  size         int NOT NULL CHECK (size BETWEEN 1 AND 5000000),
  price_minor  bigint NOT NULL CHECK (price_minor BETWEEN 0 AND 100000000),
  note         text NOT NULL DEFAULT '' CHECK (length(note) <= 200),
  -- How many are bought, from the lock on.
  count        int CHECK (count BETWEEN 0 AND 5000000),
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, round_id, item_id, id),
  FOREIGN KEY (space_id, round_id, item_id) REFERENCES order_item (space_id, round_id, id)
);

-- What a member wants beside what their sheets need.
CREATE TABLE order_want (
  space_id     uuid NOT NULL,
  round_id     uuid NOT NULL,
  item_id      uuid NOT NULL,
  user_id      uuid NOT NULL,
  amount       int NOT NULL CHECK (amount BETWEEN 1 AND 5000000),
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, round_id, item_id, user_id),
  FOREIGN KEY (space_id, round_id, item_id) REFERENCES order_item (space_id, round_id, id)
);

-- One item in place of another, for one member, who alone agrees to it or declines.
CREATE TABLE order_substitution (
  space_id     uuid NOT NULL,
  round_id     uuid NOT NULL,
  id           uuid NOT NULL,
  user_id      uuid NOT NULL,
  from_item_id uuid NOT NULL,
  to_item_id   uuid NOT NULL,
  -- Amount of the second in place of one of the first.
  ratio        numeric(6, 3) NOT NULL CHECK (ratio BETWEEN 0.01 AND 100),
  proposed_by  uuid NOT NULL,
  proposed_at  timestamptz NOT NULL DEFAULT now(),
  state        text NOT NULL DEFAULT 'proposed' CHECK (state IN ('proposed', 'agreed', 'declined')),
  decided_by   uuid,
  decided_at   timestamptz,
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, round_id, id),
  FOREIGN KEY (space_id, round_id, from_item_id) REFERENCES order_item (space_id, round_id, id),
  FOREIGN KEY (space_id, round_id, to_item_id) REFERENCES order_item (space_id, round_id, id),
  CHECK (from_item_id <> to_item_id),
  CHECK ((state = 'proposed') = (decided_at IS NULL)),
  CHECK ((decided_at IS NULL) = (decided_by IS NULL)),
  CONSTRAINT decided_by_whom_it_concerns CHECK (decided_by = user_id)
);
CREATE UNIQUE INDEX one_substitution_at_a_time
  ON order_substitution (space_id, round_id, user_id, from_item_id) WHERE state <> 'declined';

-- What is bought for a member, as it was at the lock, and what became of it.
CREATE TABLE order_share (
  space_id     uuid NOT NULL,
  round_id     uuid NOT NULL,
  item_id      uuid NOT NULL,
  user_id      uuid NOT NULL,
  -- What the sheets need, of that on hand, wanted beside it, and left over that the member takes.
  needed       int NOT NULL CHECK (needed >= 0),
  on_hand      int NOT NULL CHECK (on_hand BETWEEN 0 AND needed),
  wanted       int NOT NULL CHECK (wanted >= 0),
  extra        int NOT NULL DEFAULT 0 CHECK (extra >= 0),
  amount       int NOT NULL CHECK (amount > 0),
  -- The sheets behind it: [{"label", "brewId", "amount"}].
  sources      jsonb NOT NULL DEFAULT '[]'
               CHECK (jsonb_typeof(sources) = 'array' AND octet_length(sources::text) <= 16384),
  allotted     int CHECK (allotted BETWEEN 0 AND 100000000),
  handed       int CHECK (handed BETWEEN 0 AND 100000000),
  handed_by    uuid,
  handed_at    timestamptz,
  lock_version int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, round_id, item_id, user_id),
  FOREIGN KEY (space_id, round_id, item_id) REFERENCES order_item (space_id, round_id, id),
  CONSTRAINT amount_adds_up CHECK (amount = needed - on_hand + wanted + extra),
  CHECK (num_nulls(handed, handed_by, handed_at) IN (0, 3)),
  CHECK (handed IS NULL OR allotted IS NOT NULL)
);

-- Who did what to an order, for everybody to read.
CREATE TABLE order_event (
  space_id uuid NOT NULL,
  round_id uuid NOT NULL,
  id       uuid NOT NULL,
  at       timestamptz NOT NULL DEFAULT clock_timestamp(),
  actor_id uuid NOT NULL,
  text     text NOT NULL CHECK (length(text) BETWEEN 1 AND 300),
  PRIMARY KEY (space_id, round_id, id),
  FOREIGN KEY (space_id, round_id) REFERENCES order_round (space_id, id)
);

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON order_event FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON order_event FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

-- An order goes on only by these steps.
CREATE FUNCTION order_moves_legally() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (OLD.state, NEW.state) NOT IN (
    ('open', 'locked'), ('locked', 'open'), ('locked', 'placed'), ('placed', 'received'), ('received', 'handed out'),
    ('open', 'cancelled'), ('locked', 'cancelled'), ('placed', 'cancelled')
  ) THEN
    RAISE EXCEPTION 'an order that is % does not become %', OLD.state, NEW.state
      USING ERRCODE = 'check_violation', CONSTRAINT = 'order_moves_legally';
  END IF;
  IF NEW.state = 'received' AND EXISTS (
    SELECT FROM order_share s JOIN order_item i USING (space_id, round_id)
    WHERE s.space_id = NEW.space_id AND s.round_id = NEW.id AND i.id = s.item_id
      AND (i.received_amount IS NULL OR s.allotted IS NULL)
      -- What nobody offered is in the order, but was not bought.
      AND EXISTS (SELECT FROM order_offer o
                  WHERE o.space_id = i.space_id AND o.round_id = i.round_id AND o.item_id = i.id AND o.count > 0)
  ) THEN
    RAISE EXCEPTION 'an order is received once every item is'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'received_wholly';
  END IF;
  IF NEW.state = 'handed out' AND EXISTS (
    SELECT FROM order_share s
    WHERE s.space_id = NEW.space_id AND s.round_id = NEW.id AND s.allotted > 0 AND s.handed IS NULL
  ) THEN
    RAISE EXCEPTION 'an order is handed out once everybody has theirs'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'handed_out_wholly';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER legal_moves BEFORE UPDATE OF state ON order_round
  FOR EACH ROW WHEN (OLD.state IS DISTINCT FROM NEW.state) EXECUTE FUNCTION order_moves_legally();

-- What is asked for changes only while the order is open. The lock on the row of the order makes a late wish wait for
-- whoever is just locking the order, and then be refused.
CREATE FUNCTION order_is_in_state() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  present text;
  changed record;
BEGIN
  IF TG_OP = 'DELETE' THEN changed := OLD; ELSE changed := NEW; END IF;
  SELECT state INTO present FROM order_round
    WHERE space_id = changed.space_id AND id = changed.round_id FOR SHARE;
  IF present <> ALL (TG_ARGV) THEN
    RAISE EXCEPTION 'the order is %', present USING ERRCODE = 'check_violation', CONSTRAINT = 'order_is_in_state';
  END IF;
  RETURN changed;
END $$;
CREATE TRIGGER while_open BEFORE INSERT OR UPDATE OR DELETE ON order_want
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('open');
CREATE TRIGGER while_open BEFORE INSERT OR UPDATE OR DELETE ON order_substitution
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('open');
CREATE TRIGGER while_open BEFORE INSERT OR UPDATE OR DELETE ON order_offer
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('open');
CREATE TRIGGER while_open BEFORE INSERT OR UPDATE OF kind, name, unit, cells_per_piece, left_over_to ON order_item
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('open');
CREATE TRIGGER while_placed BEFORE UPDATE OF received_amount, paid_minor ON order_item
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('placed');
CREATE TRIGGER while_open BEFORE INSERT OR DELETE OR UPDATE OF needed, on_hand, wanted, extra, amount ON order_share
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('open');
CREATE TRIGGER while_placed BEFORE UPDATE OF allotted ON order_share
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('placed');
CREATE TRIGGER while_received BEFORE UPDATE OF handed ON order_share
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('received');

-- No more is allotted than came. Looked at when everything is written, because shares are given one after the other.
CREATE FUNCTION order_allots_what_came() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (
    SELECT FROM order_item i
    WHERE i.space_id = NEW.space_id AND i.round_id = NEW.round_id AND i.id = NEW.item_id
      AND (SELECT coalesce(sum(allotted), 0) FROM order_share s
           WHERE s.space_id = i.space_id AND s.round_id = i.round_id AND s.item_id = i.id) > coalesce(i.received_amount, 0)
  ) THEN
    RAISE EXCEPTION 'more is allotted than was received'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'allotted_within_received';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER allotted_within_received AFTER UPDATE OF allotted ON order_share
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION order_allots_what_came();

GRANT SELECT, INSERT, UPDATE ON order_item, order_offer, order_want, order_substitution, order_share TO gyle_app;
GRANT DELETE ON order_offer, order_want, order_substitution, order_share TO gyle_app;
GRANT SELECT, INSERT ON order_event TO gyle_app;
REVOKE UPDATE, DELETE, TRUNCATE ON order_event FROM gyle_app;

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY[
    'order_item', 'order_offer', 'order_want', 'order_substitution', 'order_share', 'order_event'
  ] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;
