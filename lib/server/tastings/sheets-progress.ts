import "server-only";
import { inSpace } from "../db";
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

/** How far judging has come, for the steward alone; null for anybody else. */
export async function findSheetProgress(member: Member, tastingId: string): Promise<readonly SheetProgress[] | null> {
  if (!isRecordId(tastingId)) return null;
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, async (tx) => {
    const tasting = await tx.tasting.findUnique({
      where: { spaceId_id: { spaceId, id: tastingId } },
      select: { stewardId: true },
    });
    if (tasting?.stewardId !== userId) return null;
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
  });
  if (rows === null) return null;
  const nameOf = await displayNames(
    member,
    rows.map(({ judgeId }) => judgeId),
  );
  return rows.map((row) => ({ ...row, name: nameOf(row.judgeId) }));
}
