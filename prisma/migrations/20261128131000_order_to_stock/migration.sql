-- What was weighed out for a member can go into their stock, once: as this lot.
ALTER TABLE order_share
  ADD COLUMN lot_id uuid,
  ADD FOREIGN KEY (space_id, lot_id) REFERENCES ingredient_lot (space_id, id),
  ADD CONSTRAINT stock_is_what_was_handed CHECK (lot_id IS NULL OR handed IS NOT NULL);

CREATE TRIGGER once_received BEFORE UPDATE OF lot_id ON order_share
  FOR EACH ROW EXECUTE FUNCTION order_is_in_state('received', 'handed out');
