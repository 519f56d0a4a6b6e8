-- A wish in an order that is locked and not placed yet: an organiser lets one member name it, and takes it in or declines.
CREATE TABLE order_late_wish (
  space_id       uuid NOT NULL,
  round_id       uuid NOT NULL,
  id             uuid NOT NULL,
  user_id        uuid NOT NULL,
  reason         text NOT NULL CHECK (length(btrim(reason)) BETWEEN 1 AND 200),
  let_by         uuid NOT NULL,
  let_at         timestamptz NOT NULL DEFAULT now(),
  -- What the member wants beside their sheets in place of what they wanted at the lock; 0 takes it back.
  item_id        uuid,
  amount         int CHECK (amount BETWEEN 0 AND 5000000),
  state          text NOT NULL DEFAULT 'let'
                 CHECK (state IN ('let', 'wished', 'taken in', 'declined', 'withdrawn', 'lapsed')),
  decided_by     uuid,
  decided_at     timestamptz,
  lock_version   int NOT NULL DEFAULT 1 CHECK (lock_version >= 1),
  PRIMARY KEY (space_id, round_id, id),
  FOREIGN KEY (space_id, round_id) REFERENCES order_round (space_id, id),
  FOREIGN KEY (space_id, round_id, item_id) REFERENCES order_item (space_id, round_id, id),
  CHECK (num_nulls(item_id, amount) IN (0, 2)),
  CHECK (num_nulls(decided_by, decided_at) IN (0, 2)),
  CHECK ((state IN ('let', 'wished')) = (decided_at IS NULL)),
  CHECK (state <> 'let' OR item_id IS NULL),
  CHECK (state NOT IN ('wished', 'taken in', 'declined') OR item_id IS NOT NULL)
);
CREATE UNIQUE INDEX one_late_wish_at_a_time
  ON order_late_wish (space_id, round_id, user_id) WHERE state IN ('let', 'wished');

CREATE FUNCTION late_wish_goes_forward() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.state NOT IN ('let', 'wished') THEN
    RAISE EXCEPTION 'this late wish is % for good', OLD.state
      USING ERRCODE = 'check_violation', CONSTRAINT = 'late_wish_goes_forward';
  END IF;
  IF (OLD.user_id, OLD.reason, OLD.let_by, OLD.let_at) IS DISTINCT FROM (NEW.user_id, NEW.reason, NEW.let_by, NEW.let_at) THEN
    RAISE EXCEPTION 'who may wish late, and why, does not change'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'late_wish_goes_forward';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER goes_forward BEFORE UPDATE ON order_late_wish
  FOR EACH ROW EXECUTE FUNCTION late_wish_goes_forward();
CREATE TRIGGER while_locked BEFORE INSERT OR UPDATE OR DELETE ON order_late_wish
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('locked');

-- What is asked for changes while the order is open; and of one item while it is locked, by the transaction that takes a late
-- wish for that item in. decided_at is that transaction's own time, which no other can write.
CREATE FUNCTION order_is_open_or_takes_late() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  present text;
  changed record;
BEGIN
  IF TG_OP = 'DELETE' THEN changed := OLD; ELSE changed := NEW; END IF;
  SELECT state INTO present FROM order_round
    WHERE space_id = changed.space_id AND id = changed.round_id FOR SHARE;
  IF present = 'open' THEN RETURN changed; END IF;
  IF present = 'locked' AND EXISTS (
    SELECT FROM order_late_wish w
    WHERE w.space_id = changed.space_id AND w.round_id = changed.round_id AND w.item_id = changed.item_id
      AND w.state = 'taken in' AND w.decided_at = now()
  ) THEN RETURN changed; END IF;
  RAISE EXCEPTION 'the order is %', present USING ERRCODE = 'check_violation', CONSTRAINT = 'order_is_in_state';
END $$;

DROP TRIGGER while_open ON order_want;
CREATE TRIGGER while_open BEFORE INSERT OR UPDATE OR DELETE ON order_want
  FOR EACH ROW EXECUTE FUNCTION order_is_open_or_takes_late();
DROP TRIGGER while_open ON order_share;
CREATE TRIGGER while_open BEFORE INSERT OR DELETE OR UPDATE OF needed, on_hand, wanted, extra, amount ON order_share
  FOR EACH ROW EXECUTE FUNCTION order_is_open_or_takes_late();
DROP TRIGGER while_open ON order_offer;
CREATE TRIGGER while_open BEFORE INSERT OR DELETE OR UPDATE OF size, price_minor, note ON order_offer
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('open');
CREATE TRIGGER counted_while_open BEFORE UPDATE OF count ON order_offer
  FOR EACH ROW EXECUTE FUNCTION order_is_open_or_takes_late();

-- What an order is called and when it closes is its organisers' to say until it is locked. Its currency and its shared
-- brew are what its prices and amounts are of.
CREATE FUNCTION order_is_renamed_while_open() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.state <> 'open' THEN
    RAISE EXCEPTION 'the order is %', OLD.state USING ERRCODE = 'check_violation', CONSTRAINT = 'order_is_in_state';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER renamed_while_open BEFORE UPDATE OF title, closes_at, note ON order_round
  FOR EACH ROW EXECUTE FUNCTION order_is_renamed_while_open();

GRANT SELECT, INSERT, UPDATE ON order_late_wish TO gyle_app;

ALTER TABLE order_late_wish ENABLE ROW LEVEL SECURITY;
ALTER TABLE order_late_wish FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON order_late_wish
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));
