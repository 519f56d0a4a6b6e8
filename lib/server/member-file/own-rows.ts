import "server-only";
import { inSpace, rowsNaming, type NamedRow } from "../db";

/**
 * Columns of content that name a person: who wrote, made, decided or is meant. A test walks the catalogue and asks for
 * every other column with an identifier whether it names one too.
 */
export const PERSON_COLUMNS = [
  "accepted_by",
  "actor_id",
  "agreed_by",
  "author_id",
  "begun_by",
  "booked_by",
  "brewer_user_id",
  "changed_by",
  "created_by",
  "decided_by",
  "deleted_by",
  "dropped_by",
  "handed_by",
  "imported_by",
  "joined_by",
  "judge_id",
  "left_over_to",
  "let_by",
  "made_by",
  "owner_user_id",
  "proposed_by",
  "published_by",
  "revealed_by",
  "steward_id",
  "uploader_id",
  "user_id",
] as const;

/** Made anew from the rest at any time, or a note for the machine alone. */
const NOT_TOLD = ["idempotency", "search_document", "search_word", "brew_mark"];

/** What hangs on a record of the person's own and names nobody itself. */
const PARTS_OF_OWN = [
  ["equipment_revision", "equipment", "equipment_id", "owner_user_id"],
  ["brew_lot", "brew", "brew_id", "brewer_user_id"],
  ["brew_summary", "brew", "brew_id", "brewer_user_id"],
] as const;

/** Every row of a space that somebody wrote or that is about them, as that person may see it. */
export function ownRows(spaceId: string, userId: string): Promise<readonly NamedRow[]> {
  return inSpace(spaceId, userId, (tx) =>
    rowsNaming(tx, { spaceId, userId, columns: PERSON_COLUMNS, not: NOT_TOLD, parts: PARTS_OF_OWN }),
  );
}
