-- What a fermentation asks for is told once, by whoever of several processes writes this row first.
CREATE TABLE brew_reminder (
  space_id uuid NOT NULL,
  brew_id  uuid NOT NULL,
  kind     text NOT NULL CHECK (kind IN ('dry hop', 'diacetyl rest')),
  told_at  timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (space_id, brew_id, kind),
  FOREIGN KEY (space_id, brew_id) REFERENCES brew (space_id, id)
);
-- It stays as it was written: nobody is told twice.
GRANT SELECT, INSERT ON brew_reminder TO gyle_app;
ALTER TABLE brew_reminder ENABLE ROW LEVEL SECURITY;
ALTER TABLE brew_reminder FORCE ROW LEVEL SECURITY;
CREATE POLICY space_only ON brew_reminder
  USING (space_id = (SELECT ctx_space())) WITH CHECK (space_id = (SELECT ctx_space()));

-- Fermentations are looked at again and again; of all brews of a club only a few ferment.
CREATE INDEX brew_fermenting ON brew (space_id) WHERE state = 'in the fermenter' AND dropped_at IS NULL;

ALTER TABLE notice DROP CONSTRAINT notice_kind_check;
ALTER TABLE notice ADD CONSTRAINT notice_kind_check
  CHECK (kind IN ('plan changed', 'entered', 'taken out', 'dry hop', 'diacetyl rest'));

-- What went into containers over the pressure that they are made for is in the log with a name and a reason, or not at all.
ALTER TABLE brew_event ADD CONSTRAINT package_is_signed
  CHECK (kind <> 'package' OR (
    payload ?& ARRAY['containers', 'volumesCo2', 'storageC', 'override', 'early']
    AND (jsonb_typeof(payload -> 'override') = 'null' OR payload -> 'override' ?& ARRAY['name', 'why'])
    AND (jsonb_typeof(payload -> 'early') = 'null' OR payload -> 'early' ? 'why')));
