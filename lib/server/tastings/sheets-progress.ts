import "server-only";
import { roleMay } from "@/lib/model/roles";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { displayNames } from "../accounts/names";

/** How many sheets of a judge are in; no points, not even to the steward, before the reveal. */
export interface SheetProgress {
  readonly flightNo: number;
  readonly judgeId: string;
  readonly name: string;
  readonly toCome: number;
  readonly handedIn: number;
  readonly begun: number;
}

/** How far judging has come, for the steward and for organisers; null for anybody else. */
export async function findSheetProgress(member: Member, tastingId: string): Promise<readonly SheetProgress[] | null> {
  if (!isRecordId(tastingId)) return null;
  const { spaceId, userId } = member;
  const tasting = await inSpace(spaceId, userId, (tx) =>
    tx.tasting.findUnique({ where: { spaceId_id: { spaceId, id: tastingId } }, select: { stewardId: true } }),
  );
  if (tasting === null || !mayFollowSheets(member, tasting)) return null;
  const rows = await inStewardsName(member, tasting, (tx) => countSheets(tx, { spaceId, tastingId }));
  const nameOf = await displayNames(
    member,
    rows.map(({ judgeId }) => judgeId),
  );
  return rows.map((row) => ({ ...row, name: nameOf(row.judgeId) }));
}

/** Who is told which judges are still writing: an organiser has to know before closing and revealing. */
export function mayFollowSheets({ userId, role }: Member, { stewardId }: { readonly stewardId: string }): boolean {
  return stewardId === userId || roleMay(role, "organise");
}

/**
 * The database shows the sheets of others to the steward alone. What is asked here in the steward's name for an organiser
 * counts them, and neither what is written on them nor what an entry is goes with it.
 */
export function inStewardsName<T>(
  { spaceId }: Member,
  { stewardId }: { readonly stewardId: string },
  run: (tx: SpaceTransaction) => Promise<T>,
): Promise<T> {
  return inSpace(spaceId, stewardId, run);
}

/** The sheets of each judge in each flight, counted. */
export function countSheets(
  tx: SpaceTransaction,
  { spaceId, tastingId }: { readonly spaceId: string; readonly tastingId: string },
): Promise<readonly Omit<SheetProgress, "name">[]> {
  return tx.$queryRaw<Omit<SheetProgress, "name">[]>`
    SELECT p.flight_no AS "flightNo", p.user_id::text AS "judgeId",
           CASE WHEN f.kind = 'scored' THEN (SELECT count(*)::int FROM tasting_serving s
              WHERE s.space_id = p.space_id AND s.tasting_id = p.tasting_id AND s.flight_no = p.flight_no
                AND s.judge_id = p.user_id) ELSE 1 END AS "toCome",
           (count(*) FILTER (WHERE e.is_in))::int AS "handedIn",
           (count(*) FILTER (WHERE NOT e.is_in))::int AS begun
    FROM tasting_panel p
    JOIN tasting_flight f ON f.space_id = p.space_id AND f.tasting_id = p.tasting_id AND f.flight_no = p.flight_no
    LEFT JOIN LATERAL (
      SELECT bool_or(is_final) AS is_in FROM tasting_event v
      WHERE v.space_id = p.space_id AND v.tasting_id = p.tasting_id AND v.flight_no = p.flight_no
        AND v.judge_id = p.user_id GROUP BY v.entry_no) e ON true
    WHERE p.space_id = ${spaceId}::uuid AND p.tasting_id = ${tastingId}::uuid AND p.part = 'judge'
    GROUP BY p.space_id, p.tasting_id, p.flight_no, p.user_id, f.kind
    ORDER BY p.flight_no, p.user_id`;
}
