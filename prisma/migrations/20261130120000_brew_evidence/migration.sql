-- What a brew says of the figures of its kettle. Made with the summary; null where today's arithmetic refuses the brew.
ALTER TABLE brew_summary
  ADD COLUMN evidence jsonb CONSTRAINT evidence_is_an_object CHECK (jsonb_typeof(evidence) = 'object');
-- The brews of one kettle, in order of time.
CREATE INDEX brew_of_equipment ON brew (space_id, equipment_id, started_at);
