-- Blind tastings. Who brewed an entry and what a glass holds stand in tables of their own, which only the steward of the
-- tasting can read before the reveal; what judges write is only added to.

-- Nothing was kept here before.
DROP TABLE score_sheet;
DROP POLICY blind ON tasting_identity;
DROP POLICY blind_write ON tasting_identity;
DROP TABLE tasting_identity;
DROP TABLE tasting_entry;

ALTER TABLE tasting
  ADD COLUMN shared_brew_id uuid,
  -- The day of the club's own calendar on which it is tasted.
  ADD COLUMN held_on        date,
  -- Chooses the orders of serving; the same number gives the same orders.
  ADD COLUMN seed           int NOT NULL DEFAULT 1 CHECK (seed BETWEEN 0 AND 2147483647),
  ADD COLUMN note           text NOT NULL DEFAULT '' CHECK (length(note) <= 2000),
  ADD COLUMN created_by     uuid NOT NULL,
  ADD COLUMN created_at     timestamptz NOT NULL DEFAULT now(),
  ADD COLUMN opened_at      timestamptz,
  ADD COLUMN closed_at      timestamptz,
  -- The reveal is one act of one organiser.
  ADD COLUMN revealed_by    uuid,
  ADD CONSTRAINT tasting_lock_positive CHECK (lock_version > 0),
  ADD CONSTRAINT opened_once_open CHECK ((state = 'draft') = (opened_at IS NULL)),
  ADD CONSTRAINT closed_once_closed CHECK ((state IN ('closed', 'revealed')) = (closed_at IS NOT NULL)),
  ADD CONSTRAINT revealed_by_somebody CHECK ((revealed_at IS NULL) = (revealed_by IS NULL)),
  ADD FOREIGN KEY (space_id, shared_brew_id) REFERENCES shared_brew (space_id, id);
CREATE INDEX tasting_newest ON tasting (space_id, created_at DESC);

-- What is tasted together: scored on sheets, or told apart by the palate alone.
CREATE TABLE tasting_flight (
  space_id     uuid NOT NULL,
  tasting_id   uuid NOT NULL,
  flight_no    int NOT NULL CHECK (flight_no BETWEEN 1 AND 99),
  title        text NOT NULL CHECK (length(title) BETWEEN 1 AND 160),
  kind         text NOT NULL CHECK (kind IN ('scored', 'triangle', 'duo-trio')),
  -- Most entries that one judge tastes well; null where everyone tastes all.
  palate_limit int CHECK (palate_limit BETWEEN 1 AND 100),
  PRIMARY KEY (space_id, tasting_id, flight_no),
  FOREIGN KEY (space_id, tasting_id) REFERENCES tasting (space_id, id)
);

-- An entry is a random number and the style that it is judged as: no name, time or brew from which a judge could conclude.
CREATE TABLE tasting_entry (
  space_id   uuid NOT NULL,
  tasting_id uuid NOT NULL,
  entry_no   int NOT NULL CHECK (entry_no BETWEEN 100 AND 999),
  flight_no  int NOT NULL,
  style_code text CHECK (length(style_code) BETWEEN 2 AND 8),
  PRIMARY KEY (space_id, tasting_id, entry_no),
  FOREIGN KEY (space_id, tasting_id, flight_no) REFERENCES tasting_flight (space_id, tasting_id, flight_no)
);

-- What an entry is: a brew of the club's log, or a beer from elsewhere by its name and figures.
CREATE TABLE tasting_identity (
  space_id       uuid NOT NULL,
  tasting_id     uuid NOT NULL,
  entry_no       int NOT NULL,
  brew_id        uuid,
  brewer_user_id uuid,
  beer_name      text CHECK (length(beer_name) BETWEEN 1 AND 160),
  brewer_name    text CHECK (length(brewer_name) BETWEEN 1 AND 120),
  -- Of a beer from elsewhere: original and final gravity, alcohol, bitterness, colour, as far as they are known.
  figures        jsonb CHECK (jsonb_typeof(figures) = 'object' AND octet_length(figures::text) <= 2048),
  PRIMARY KEY (space_id, tasting_id, entry_no),
  UNIQUE (space_id, tasting_id, brew_id),
  FOREIGN KEY (space_id, tasting_id, entry_no) REFERENCES tasting_entry (space_id, tasting_id, entry_no) ON DELETE CASCADE,
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id),
  CONSTRAINT brew_or_beer CHECK (
    (brew_id IS NOT NULL AND brewer_user_id IS NOT NULL AND beer_name IS NULL AND brewer_name IS NULL AND figures IS NULL)
    OR (brew_id IS NULL AND beer_name IS NOT NULL))
);

-- Who judges a flight, and who pours it.
CREATE TABLE tasting_panel (
  space_id   uuid NOT NULL,
  tasting_id uuid NOT NULL,
  flight_no  int NOT NULL,
  user_id    uuid NOT NULL,
  part       text NOT NULL CHECK (part IN ('judge', 'pourer')),
  PRIMARY KEY (space_id, tasting_id, flight_no, user_id),
  FOREIGN KEY (space_id, tasting_id, flight_no) REFERENCES tasting_flight (space_id, tasting_id, flight_no)
);

-- In which order a judge tastes the entries of a scored flight.
CREATE TABLE tasting_serving (
  space_id   uuid NOT NULL,
  tasting_id uuid NOT NULL,
  flight_no  int NOT NULL,
  judge_id   uuid NOT NULL,
  position   int NOT NULL CHECK (position BETWEEN 1 AND 100),
  entry_no   int NOT NULL,
  PRIMARY KEY (space_id, tasting_id, flight_no, judge_id, position),
  UNIQUE (space_id, tasting_id, flight_no, judge_id, entry_no),
  FOREIGN KEY (space_id, tasting_id, flight_no, judge_id)
    REFERENCES tasting_panel (space_id, tasting_id, flight_no, user_id),
  FOREIGN KEY (space_id, tasting_id, entry_no) REFERENCES tasting_entry (space_id, tasting_id, entry_no)
);

-- The three glasses of a triangle or a duo-trio (the first of which is then the reference), each with a number of its own.
CREATE TABLE tasting_glass (
  space_id   uuid NOT NULL,
  tasting_id uuid NOT NULL,
  flight_no  int NOT NULL,
  judge_id   uuid NOT NULL,
  position   int NOT NULL CHECK (position BETWEEN 1 AND 3),
  glass_no   int NOT NULL CHECK (glass_no BETWEEN 100 AND 999),
  PRIMARY KEY (space_id, tasting_id, flight_no, judge_id, position),
  UNIQUE (space_id, tasting_id, glass_no),
  FOREIGN KEY (space_id, tasting_id, flight_no, judge_id)
    REFERENCES tasting_panel (space_id, tasting_id, flight_no, user_id)
);

-- What a glass holds: the answer to the test.
CREATE TABLE tasting_glass_key (
  space_id   uuid NOT NULL,
  tasting_id uuid NOT NULL,
  glass_no   int NOT NULL,
  entry_no   int NOT NULL,
  PRIMARY KEY (space_id, tasting_id, glass_no),
  FOREIGN KEY (space_id, tasting_id, glass_no) REFERENCES tasting_glass (space_id, tasting_id, glass_no) ON DELETE CASCADE,
  FOREIGN KEY (space_id, tasting_id, entry_no) REFERENCES tasting_entry (space_id, tasting_id, entry_no)
);

-- What a judge writes. Each save is an event of its own, made on the judge's device, so that none is lost and none is told
-- twice; what counts is the last one.
CREATE TABLE tasting_event (
  space_id        uuid NOT NULL,
  id              uuid NOT NULL,
  tasting_id      uuid NOT NULL,
  flight_no       int NOT NULL,
  judge_id        uuid NOT NULL,
  -- The one who wrote it: the judge, or the steward from a paper sheet.
  actor_id        uuid NOT NULL,
  kind            text NOT NULL CHECK (kind IN ('sheet', 'choice')),
  -- Of a sheet.
  entry_no        int,
  device_id       uuid NOT NULL,
  device_seq      bigint CHECK (device_seq > 0),
  occurred_at     timestamptz NOT NULL CHECK (occurred_at >= '2000-01-01'),
  client_sent_at  timestamptz,
  clock_offset_ms bigint,
  received_at     timestamptz NOT NULL DEFAULT clock_timestamp(),
  -- Given up by the judge: it counts as in.
  is_final        boolean NOT NULL,
  -- Points of a sheet, 0 to 50; null while parts are missing.
  total           numeric(4, 1) CHECK (total BETWEEN 0 AND 50),
  payload         jsonb NOT NULL CHECK (jsonb_typeof(payload) = 'object' AND octet_length(payload::text) <= 16384),
  payload_hash    bytea NOT NULL CHECK (octet_length(payload_hash) = 32),
  PRIMARY KEY (space_id, id),
  UNIQUE (space_id, device_id, device_seq),
  FOREIGN KEY (space_id, tasting_id, flight_no, judge_id)
    REFERENCES tasting_panel (space_id, tasting_id, flight_no, user_id),
  -- A sheet is of an entry that this judge was served.
  FOREIGN KEY (space_id, tasting_id, flight_no, judge_id, entry_no)
    REFERENCES tasting_serving (space_id, tasting_id, flight_no, judge_id, entry_no),
  CONSTRAINT sheet_of_an_entry CHECK ((kind = 'sheet') = (entry_no IS NOT NULL)),
  CONSTRAINT given_up_whole CHECK (kind <> 'sheet' OR NOT is_final OR total IS NOT NULL)
);
CREATE INDEX tasting_event_last ON tasting_event (space_id, tasting_id, flight_no, judge_id, entry_no, occurred_at);
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON tasting_event FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON tasting_event FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

-- A tasting goes on only by these steps, and is revealed as it was closed.
CREATE FUNCTION tasting_moves_legally() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (OLD.state, NEW.state) NOT IN (('draft', 'open'), ('open', 'closed'), ('closed', 'revealed')) THEN
    RAISE EXCEPTION 'a tasting that is % does not become %', OLD.state, NEW.state
      USING ERRCODE = 'check_violation', CONSTRAINT = 'tasting_moves_legally';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER legal_moves BEFORE UPDATE OF state ON tasting
  FOR EACH ROW WHEN (OLD.state IS DISTINCT FROM NEW.state) EXECUTE FUNCTION tasting_moves_legally();
-- Whoever prepared it knows it to the end.
CREATE FUNCTION tasting_keeps_steward() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'a tasting keeps its steward' USING ERRCODE = 'check_violation', CONSTRAINT = 'tasting_keeps_steward';
END $$;
CREATE TRIGGER keeps_steward BEFORE UPDATE OF steward_id ON tasting
  FOR EACH ROW WHEN (OLD.steward_id IS DISTINCT FROM NEW.steward_id) EXECUTE FUNCTION tasting_keeps_steward();

-- What is prepared changes only in a draft. The lock makes a late change wait for whoever is just opening the tasting.
CREATE FUNCTION tasting_is_draft() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  present text;
  changed record;
BEGIN
  changed := CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
  SELECT state INTO present FROM tasting WHERE space_id = changed.space_id AND id = changed.tasting_id FOR SHARE;
  IF present <> 'draft' THEN
    RAISE EXCEPTION 'a tasting that is % is not prepared any more', present
      USING ERRCODE = 'check_violation', CONSTRAINT = 'tasting_is_draft';
  END IF;
  RETURN changed;
END $$;
-- Judges write while it is open; what they wrote without a network may come until it is revealed, and so may paper.
CREATE FUNCTION tasting_takes_sheets() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  present text;
BEGIN
  SELECT state INTO present FROM tasting WHERE space_id = NEW.space_id AND id = NEW.tasting_id FOR SHARE;
  IF present NOT IN ('open', 'closed') THEN
    RAISE EXCEPTION 'a tasting that is % takes no sheets', present
      USING ERRCODE = 'check_violation', CONSTRAINT = 'tasting_takes_sheets';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER while_open BEFORE INSERT ON tasting_event FOR EACH ROW EXECUTE FUNCTION tasting_takes_sheets();

-- Nobody judges what they know: the steward nothing, a pourer not the flight, a brewer not the own beer.
CREATE FUNCTION judge_knows_nothing() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT FROM tasting t WHERE t.space_id = NEW.space_id AND t.id = NEW.tasting_id AND t.steward_id = NEW.user_id)
  THEN
    RAISE EXCEPTION 'the steward does not judge' USING ERRCODE = 'check_violation', CONSTRAINT = 'steward_does_not_judge';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER knows_nothing BEFORE INSERT OR UPDATE ON tasting_panel
  FOR EACH ROW WHEN (NEW.part = 'judge') EXECUTE FUNCTION judge_knows_nothing();
CREATE FUNCTION serves_no_own_beer() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (
    SELECT FROM tasting_identity i LEFT JOIN brew_collaborator c
      ON c.space_id = i.space_id AND c.brew_id = i.brew_id AND c.user_id = NEW.judge_id
    WHERE i.space_id = NEW.space_id AND i.tasting_id = NEW.tasting_id AND i.entry_no = NEW.entry_no
      AND (i.brewer_user_id = NEW.judge_id OR c.user_id IS NOT NULL)
  ) OR EXISTS (
    SELECT FROM tasting_panel p
    WHERE p.space_id = NEW.space_id AND p.tasting_id = NEW.tasting_id AND p.flight_no = NEW.flight_no
      AND p.user_id = NEW.judge_id AND p.part <> 'judge'
  ) THEN
    RAISE EXCEPTION 'nobody judges an own beer or one they pour'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'serves_no_own_beer';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER no_own_beer BEFORE INSERT ON tasting_serving FOR EACH ROW EXECUTE FUNCTION serves_no_own_beer();

GRANT SELECT, INSERT, UPDATE, DELETE ON
  tasting_flight, tasting_entry, tasting_identity, tasting_panel, tasting_serving, tasting_glass, tasting_glass_key
TO gyle_app;
GRANT SELECT, INSERT ON tasting_event TO gyle_app;
REVOKE UPDATE, DELETE, TRUNCATE ON tasting_event FROM gyle_app;

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY[
    'tasting_flight', 'tasting_entry', 'tasting_identity', 'tasting_panel', 'tasting_serving', 'tasting_glass',
    'tasting_glass_key', 'tasting_event'
  ] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY space_only ON %I
                    USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()))', name);
    IF name <> 'tasting_event' THEN
      EXECUTE format('CREATE TRIGGER while_draft BEFORE INSERT OR UPDATE OR DELETE ON %I
                      FOR EACH ROW EXECUTE FUNCTION tasting_is_draft()', name);
    END IF;
  END LOOP;
  -- What would undo blindness: read by the steward, and by everybody of the club after the reveal; written by the steward.
  FOREACH name IN ARRAY ARRAY['tasting_identity', 'tasting_glass_key'] LOOP
    EXECUTE format('CREATE POLICY blind ON %1$I AS RESTRICTIVE FOR ALL USING (
      EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = %1$I.space_id AND t.id = %1$I.tasting_id
              AND (t.state = ''revealed'' OR t.steward_id = (SELECT ctx_user()))))
      WITH CHECK (
      EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = %1$I.space_id AND t.id = %1$I.tasting_id
              AND t.steward_id = (SELECT ctx_user())))', name);
  END LOOP;
  -- Which entries a judge is served, and in which order, says what he or she is not: read by that judge, the steward, the
  -- pourers of the flight, and after the reveal by the club.
  FOREACH name IN ARRAY ARRAY['tasting_serving', 'tasting_glass'] LOOP
    EXECUTE format('CREATE POLICY own_glasses ON %1$I AS RESTRICTIVE FOR ALL USING (
      judge_id = (SELECT ctx_user())
      OR EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = %1$I.space_id AND t.id = %1$I.tasting_id
                 AND (t.state = ''revealed'' OR t.steward_id = (SELECT ctx_user())))
      OR EXISTS (SELECT 1 FROM tasting_panel p WHERE p.space_id = %1$I.space_id AND p.tasting_id = %1$I.tasting_id
                 AND p.flight_no = %1$I.flight_no AND p.user_id = (SELECT ctx_user()) AND p.part = ''pourer''))
      WITH CHECK (
      EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = %1$I.space_id AND t.id = %1$I.tasting_id
              AND t.steward_id = (SELECT ctx_user())))', name);
  END LOOP;
END $$;

-- Nobody sees the entries of a flight as a list but those who serve them: a judge knows those that he or she is served.
CREATE POLICY own_entries ON tasting_entry AS RESTRICTIVE FOR ALL USING (
  EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = tasting_entry.space_id AND t.id = tasting_entry.tasting_id
          AND (t.state = 'revealed' OR t.steward_id = (SELECT ctx_user())))
  OR EXISTS (SELECT 1 FROM tasting_panel p WHERE p.space_id = tasting_entry.space_id AND p.tasting_id = tasting_entry.tasting_id
             AND p.flight_no = tasting_entry.flight_no AND p.user_id = (SELECT ctx_user()) AND p.part = 'pourer')
  OR EXISTS (SELECT 1 FROM tasting_serving s WHERE s.space_id = tasting_entry.space_id
             AND s.tasting_id = tasting_entry.tasting_id AND s.entry_no = tasting_entry.entry_no
             AND s.judge_id = (SELECT ctx_user()))
) WITH CHECK (
  EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = tasting_entry.space_id AND t.id = tasting_entry.tasting_id
          AND t.steward_id = (SELECT ctx_user()))
);

-- A judge sees no other's sheet before the reveal, and writes an own one; the steward also writes one from paper.
CREATE POLICY own_sheet ON tasting_event AS RESTRICTIVE FOR ALL USING (
  judge_id = (SELECT ctx_user())
  OR EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = tasting_event.space_id AND t.id = tasting_event.tasting_id
             AND (t.state = 'revealed' OR t.steward_id = (SELECT ctx_user())))
) WITH CHECK (
  actor_id = (SELECT ctx_user())
  AND (judge_id = actor_id
       OR EXISTS (SELECT 1 FROM tasting t WHERE t.space_id = tasting_event.space_id AND t.id = tasting_event.tasting_id
                  AND t.steward_id = (SELECT ctx_user())))
);

CREATE POLICY kept_by_steward ON tasting AS RESTRICTIVE FOR UPDATE USING (true) WITH CHECK (
  steward_id = (SELECT ctx_user()) OR state = 'revealed');
