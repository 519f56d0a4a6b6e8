-- Results of shared brews that a space shows to everybody: the figures as they were when they were published. They are
-- a copy, not a view, so that nothing that is read or corrected afterwards changes what people have cited.

CREATE TABLE public_result (
  source_space_id uuid NOT NULL,
  -- Made by the page that asks, so that the same form sent twice publishes once.
  id              uuid NOT NULL,
  shared_brew_id  uuid NOT NULL,
  recipe_id       uuid NOT NULL,
  title           text NOT NULL CHECK (length(title) <= 160),
  content         jsonb NOT NULL CHECK (jsonb_typeof(content) = 'object' AND octet_length(content::text) <= 1048576),
  calc_version    text NOT NULL,
  address         text NOT NULL UNIQUE CHECK (address ~ '^[a-z0-9-]{8,80}$'),
  published_by    uuid NOT NULL,
  published_at    timestamptz NOT NULL DEFAULT clock_timestamp(),
  withdrawn_at    timestamptz,
  PRIMARY KEY (source_space_id, id),
  -- Withdrawn means gone: what everybody could read is not kept where everybody reads.
  CONSTRAINT withdrawn_is_empty CHECK (
    CASE WHEN withdrawn_at IS NULL THEN title <> '' AND content <> '{}' ELSE title = '' AND content = '{}' END)
);
CREATE INDEX public_result_of_shared_brew ON public_result (source_space_id, shared_brew_id, published_at);

-- What is published, stays or goes; it never becomes something else.
CREATE FUNCTION only_withdrawn() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.withdrawn_at IS NOT NULL OR NEW.withdrawn_at IS NULL
     OR (NEW.source_space_id, NEW.id, NEW.shared_brew_id, NEW.recipe_id, NEW.calc_version, NEW.address,
         NEW.published_by, NEW.published_at)
        IS DISTINCT FROM
        (OLD.source_space_id, OLD.id, OLD.shared_brew_id, OLD.recipe_id, OLD.calc_version, OLD.address,
         OLD.published_by, OLD.published_at) THEN
    RAISE EXCEPTION 'a published result is withdrawn or stays as it is' USING ERRCODE = '55000';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER only_withdrawn BEFORE UPDATE ON public_result FOR EACH ROW EXECUTE FUNCTION only_withdrawn();
CREATE TRIGGER never_deleted BEFORE DELETE ON public_result FOR EACH ROW EXECUTE FUNCTION forbid_change();
CREATE TRIGGER never_emptied BEFORE TRUNCATE ON public_result FOR EACH STATEMENT EXECUTE FUNCTION forbid_change();

GRANT SELECT, INSERT, UPDATE ON public_result TO gyle_app;
REVOKE DELETE, TRUNCATE ON public_result FROM gyle_app;

ALTER TABLE public_result ENABLE ROW LEVEL SECURITY;
ALTER TABLE public_result FORCE ROW LEVEL SECURITY;
CREATE POLICY read_by_all ON public_result FOR SELECT USING (true);
CREATE POLICY published_by_own_space ON public_result FOR INSERT WITH CHECK (source_space_id = (SELECT ctx_space()));
CREATE POLICY changed_by_own_space ON public_result FOR UPDATE
  USING (source_space_id = (SELECT ctx_space())) WITH CHECK (source_space_id = (SELECT ctx_space()));
