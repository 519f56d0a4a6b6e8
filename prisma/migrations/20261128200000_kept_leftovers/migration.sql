-- What a file left over goes on with copies of its recipe, which are no act of importing.
ALTER TABLE recipe_leftover ALTER COLUMN import_id DROP NOT NULL;

-- It is published with its recipe, so that a copy of what is public has it too; without the names of people and kettles.
ALTER TABLE public_recipe
  ADD COLUMN leftover         jsonb
             CHECK (jsonb_typeof(leftover) = 'array' AND octet_length(leftover::text) <= 262144),
  ADD COLUMN leftover_format  text CHECK (leftover_format IN ('beerjson', 'beerxml')),
  ADD COLUMN leftover_version text CHECK (length(leftover_version) <= 20),
  ADD CONSTRAINT leftover_wholly CHECK (num_nulls(leftover, leftover_format, leftover_version) IN (0, 3)),
  ADD CONSTRAINT withdrawn_without_leftover CHECK (withdrawn_at IS NULL OR leftover IS NULL);

-- Shares that come out of the file of a club are inserted with what is allotted; no more than came, as for those changed.
CREATE CONSTRAINT TRIGGER allotted_within_received_at_first AFTER INSERT ON order_share
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (NEW.allotted IS NOT NULL)
  EXECUTE FUNCTION order_allots_what_came();
