-- Yeast, salts and acid are taken from lots as malt and hops are.
ALTER TABLE brew_lot DROP CONSTRAINT brew_lot_row_path_check;
ALTER TABLE brew_lot ADD CONSTRAINT brew_lot_row_path_check
  CHECK (row_path ~ '^((fermentables|hops)\.\d{1,2}|salts\.[A-Za-z]{1,40}|yeast|acid)$');
