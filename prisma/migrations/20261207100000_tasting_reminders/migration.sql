-- Judges whose sheets are missing are reminded; when they last were stands with the tasting.
ALTER TABLE tasting ADD COLUMN reminded_at timestamptz CHECK (reminded_at IS NULL OR opened_at IS NOT NULL);

ALTER TABLE notice DROP CONSTRAINT notice_kind_check;
ALTER TABLE notice ADD CONSTRAINT notice_kind_check CHECK (kind IN (
  'plan changed', 'entered', 'taken out', 'dry hop', 'diacetyl rest', 'tasting opened', 'tasting reminder',
  'tasting revealed')) NOT VALID;
