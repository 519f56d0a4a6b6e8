-- What a lot cost and how long it keeps, every change of what is on hand, and which lots a brew was made of.

ALTER TABLE ingredient_lot
  ADD COLUMN best_before date,
  -- In the smallest unit of the currency, for so much of the lot's own unit: 450 EUR cents for 100 g.
  ADD COLUMN price_minor bigint CHECK (price_minor BETWEEN 0 AND 100000000000),
  ADD COLUMN price_for   numeric(12, 3) CHECK (price_for > 0 AND price_for <= 1000000),
  ADD COLUMN currency    char(3) CHECK (currency ~ '^[A-Z]{3}$'),
  ADD COLUMN notes       text NOT NULL DEFAULT '' CHECK (length(notes) <= 4000),
  ADD CONSTRAINT price_whole CHECK (num_nulls(price_minor, price_for, currency) IN (0, 3));

-- The history of what is on hand. Each row is the change that made the lot this version, so no two people make the same
-- one; `on_hand` of the lot is the `after` of its newest row.
CREATE TABLE ingredient_lot_movement (
  space_id uuid NOT NULL,
  lot_id   uuid NOT NULL,
  version  int NOT NULL CHECK (version >= 1),
  kind     text NOT NULL CHECK (kind IN ('counted', 'bought', 'received', 'used', 'returned', 'thrown away')),
  change   numeric(13, 3) NOT NULL,
  after    numeric(12, 3) NOT NULL CHECK (after >= 0 AND after <= 1000000),
  brew_id  uuid,
  why      text NOT NULL DEFAULT '' CHECK (length(why) <= 500),
  actor_id uuid NOT NULL,
  at       timestamptz NOT NULL DEFAULT clock_timestamp(),
  PRIMARY KEY (space_id, lot_id, version),
  FOREIGN KEY (space_id, lot_id) REFERENCES ingredient_lot (space_id, id),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id),
  CHECK (kind NOT IN ('bought', 'received', 'returned') OR change >= 0),
  CHECK (kind NOT IN ('used', 'thrown away') OR change <= 0),
  CHECK (brew_id IS NULL OR kind IN ('used', 'returned')),
  CHECK (kind <> 'returned' OR brew_id IS NOT NULL)
);

-- The lot behind a row of a brew's recipe ("hops.2"), with its figures on the day. The key lets a brew take it once.
CREATE TABLE brew_lot (
  space_id    uuid NOT NULL,
  brew_id     uuid NOT NULL,
  row_path    text NOT NULL CHECK (row_path ~ '^(fermentables|hops)\.\d{1,2}$'),
  lot_id      uuid NOT NULL,
  label       text NOT NULL CHECK (length(label) BETWEEN 1 AND 80),
  figures     jsonb NOT NULL CHECK (jsonb_typeof(figures) = 'object' AND octet_length(figures::text) <= 4096),
  unit        text NOT NULL CHECK (unit IN ('kg', 'g', 'mL', 'L', 'pcs')),
  needed      numeric(12, 3) NOT NULL CHECK (needed >= 0 AND needed <= 1000000),
  taken       numeric(12, 3) NOT NULL CHECK (taken >= 0),
  returned_at timestamptz,
  PRIMARY KEY (space_id, brew_id, row_path),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id),
  FOREIGN KEY (space_id, lot_id) REFERENCES ingredient_lot (space_id, id),
  CHECK (taken <= needed)
);
CREATE INDEX brew_lot_of_lot ON brew_lot (space_id, lot_id);

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON ingredient_lot_movement
  FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON ingredient_lot_movement
  FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

GRANT SELECT, INSERT ON ingredient_lot_movement, brew_lot TO gyle_app;
GRANT UPDATE (returned_at) ON brew_lot TO gyle_app;
REVOKE UPDATE, DELETE, TRUNCATE ON ingredient_lot_movement FROM gyle_app;

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['ingredient_lot_movement', 'brew_lot'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
  END LOOP;
END $$;
