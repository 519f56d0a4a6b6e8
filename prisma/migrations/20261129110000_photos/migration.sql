-- Photos of a brew. The bytes lie outside of the database, under the hash of what they are; here is what belongs to whom.

ALTER TABLE attachment
  -- Of what the phone sent, which is how a repeated delivery is told from another photo under a number that is taken.
  ADD COLUMN sent_sha256  bytea CHECK (octet_length(sent_sha256) = 32),
  ADD COLUMN thumb_sha256 bytea CHECK (octet_length(thumb_sha256) = 32),
  ADD COLUMN thumb_bytes  int CHECK (thumb_bytes BETWEEN 1 AND 10485760),
  -- A picture is a WebP of at most 1600 pixels a side, made here, of a brew, and has a small one beside it.
  ADD CONSTRAINT picture_is_whole
    CHECK (mime NOT LIKE 'image/%'
           OR (mime = 'image/webp' AND num_nulls(brew_id, sent_sha256, thumb_sha256, thumb_bytes, width, height) = 0
               AND width <= 1600 AND height <= 1600));

-- How much a club keeps is one sum over a narrow index.
CREATE INDEX attachment_size ON attachment (space_id) INCLUDE (bytes, thumb_bytes);

-- A photo is taken out of the log by an event of its own, and its row stays what it was.
REVOKE UPDATE, DELETE ON attachment FROM gyle_app;
