-- Preparing a tasting: nobody is asked to tell an own beer from another, whoever is concerned is told, and a draft that
-- nobody relies on can be thrown away.

CREATE FUNCTION glass_of_no_own_beer() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (
    SELECT FROM tasting_glass g
      JOIN tasting_identity i ON i.space_id = g.space_id AND i.tasting_id = g.tasting_id AND i.entry_no = NEW.entry_no
      LEFT JOIN brew_collaborator c ON c.space_id = i.space_id AND c.brew_id = i.brew_id AND c.user_id = g.judge_id
    WHERE g.space_id = NEW.space_id AND g.tasting_id = NEW.tasting_id AND g.glass_no = NEW.glass_no
      AND (i.brewer_user_id = g.judge_id OR c.user_id IS NOT NULL)
  ) THEN
    RAISE EXCEPTION 'nobody tells an own beer from another'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'glass_of_no_own_beer';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER no_own_beer BEFORE INSERT ON tasting_glass_key FOR EACH ROW EXECUTE FUNCTION glass_of_no_own_beer();

ALTER TABLE notice DROP CONSTRAINT notice_kind_check;
ALTER TABLE notice ADD CONSTRAINT notice_kind_check CHECK (kind IN (
  'plan changed', 'entered', 'taken out', 'dry hop', 'diacetyl rest', 'tasting opened', 'tasting revealed'));

-- An organiser closes and reveals where the steward has gone home.
DROP POLICY kept_by_steward ON tasting;
CREATE POLICY kept_by_steward ON tasting AS RESTRICTIVE FOR UPDATE USING (true) WITH CHECK (
  steward_id = (SELECT ctx_user()) OR state IN ('closed', 'revealed'));

GRANT DELETE ON tasting TO gyle_app;
CREATE POLICY thrown_away_as_draft ON tasting AS RESTRICTIVE FOR DELETE USING (
  state = 'draft' AND steward_id = (SELECT ctx_user()));
