import "server-only";
import { inSpace } from "../db";
import type { Member } from "../session";

/** Where a brew was judged. */
export interface JudgedBrew {
  readonly tastingId: string;
  readonly title: string;
  readonly entryNo: number;
}

/** The revealed tastings that a brew was entered in; before the reveal its page says nothing, not even to the steward. */
export async function listTastingsOfBrew({ spaceId, userId }: Member, brewId: string): Promise<readonly JudgedBrew[]> {
  return inSpace(
    spaceId,
    userId,
    (tx) => tx.$queryRaw<JudgedBrew[]>`
      SELECT t.id::text AS "tastingId", t.title, i.entry_no AS "entryNo"
      FROM tasting_identity i JOIN tasting t ON t.space_id = i.space_id AND t.id = i.tasting_id
      WHERE i.space_id = ${spaceId}::uuid AND i.brew_id = ${brewId}::uuid AND t.state = 'revealed'
      ORDER BY t.revealed_at`,
  );
}
