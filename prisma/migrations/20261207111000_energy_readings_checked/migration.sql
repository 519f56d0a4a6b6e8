-- What the migrations before this one left to be looked at; readers and writers go on meanwhile.
ALTER TABLE brew_event VALIDATE CONSTRAINT brew_event_kind_check;
ALTER TABLE brew_event VALIDATE CONSTRAINT measured_has_value;
ALTER TABLE brew_event VALIDATE CONSTRAINT only_measured_has_value;
ALTER TABLE brew_event VALIDATE CONSTRAINT range_energy;
ALTER TABLE brew_event VALIDATE CONSTRAINT range_correction;
ALTER TABLE notice VALIDATE CONSTRAINT notice_kind_check;
