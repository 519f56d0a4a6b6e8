import "server-only";
import type { Choice, Sheet } from "@/lib/model/tasting/sheet";
import type { SpaceTransaction } from "../db";

interface CountedRow {
  readonly flightNo: number;
  readonly judgeId: string;
  readonly actorId: string;
}

/** What counts of a tasting: of each sheet the last that was handed in. */
export interface Counted {
  readonly sheets: readonly (CountedRow & {
    readonly entryNo: number;
    readonly total: number;
    readonly sheet: Sheet;
  })[];
  readonly choices: readonly (CountedRow & { readonly choice: Choice; readonly isRight: boolean })[];
  /** Sheets without any that was handed in. */
  readonly begun: readonly { readonly flightNo: number; readonly judgeId: string; readonly entryNo: number }[];
}

interface Row extends CountedRow {
  readonly entryNo: number | null;
  readonly total: number | null;
  readonly isFinal: boolean;
  readonly payload: unknown;
}

interface Within {
  readonly spaceId: string;
  readonly tastingId: string;
}

/**
 * Reads what counts, by the same rule as a judge's own screen (`lastOf`): the last one of a device by its own count, and
 * between devices the later one, with clocks moved that are more than a minute off.
 */
export async function readCounted(tx: SpaceTransaction, within: Within): Promise<Counted> {
  const { spaceId, tastingId } = within;
  const rows = await tx.$queryRaw<Row[]>`
    SELECT DISTINCT ON (flight_no, judge_id, kind, entry_no)
           flight_no AS "flightNo", judge_id::text AS "judgeId", actor_id::text AS "actorId", entry_no AS "entryNo",
           total::float8 AS total, is_final AS "isFinal", payload
    FROM (
      SELECT DISTINCT ON (flight_no, judge_id, kind, entry_no, is_final, device_id) *,
             occurred_at + CASE WHEN abs(clock_offset_ms) > 60000
                                THEN clock_offset_ms * interval '1 millisecond' ELSE interval '0' END AS effective_at
      FROM tasting_event
      WHERE space_id = ${spaceId}::uuid AND tasting_id = ${tastingId}::uuid
      ORDER BY flight_no, judge_id, kind, entry_no, is_final, device_id, device_seq DESC NULLS LAST
    ) AS of_device
    ORDER BY flight_no, judge_id, kind, entry_no, is_final DESC, effective_at DESC, device_id DESC, device_seq DESC NULLS LAST, id DESC`;
  const right = await rightGlasses(tx, within);
  return {
    sheets: rows.flatMap(({ flightNo, judgeId, actorId, entryNo, total, isFinal, payload }) =>
      entryNo === null || total === null || !isFinal
        ? []
        : [{ flightNo, judgeId, actorId, entryNo, total, sheet: payload as Sheet }],
    ),
    choices: rows.flatMap(({ flightNo, judgeId, actorId, entryNo, isFinal, payload }) => {
      if (entryNo !== null || !isFinal) return [];
      const choice = payload as Choice;
      return [{ flightNo, judgeId, actorId, choice, isRight: right.has(choice.glassNo) }];
    }),
    begun: rows.flatMap(({ flightNo, judgeId, entryNo, isFinal }) =>
      entryNo === null || isFinal ? [] : [{ flightNo, judgeId, entryNo }],
    ),
  };
}

/**
 * The glass of each judge and flight that is the answer: of a triangle the one that holds another beer than both others, of
 * a duo-trio the one that holds the beer of the reference.
 */
async function rightGlasses(tx: SpaceTransaction, within: Within): Promise<ReadonlySet<number>> {
  const rows = await tx.$queryRaw<{ glassNo: number }[]>`
    WITH held AS (
      SELECT g.flight_no, g.judge_id, g.position, g.glass_no, k.entry_no, f.kind
      FROM tasting_glass g
      JOIN tasting_glass_key k ON k.space_id = g.space_id AND k.tasting_id = g.tasting_id AND k.glass_no = g.glass_no
      JOIN tasting_flight f ON f.space_id = g.space_id AND f.tasting_id = g.tasting_id AND f.flight_no = g.flight_no
      WHERE g.space_id = ${within.spaceId}::uuid AND g.tasting_id = ${within.tastingId}::uuid)
    SELECT a.glass_no AS "glassNo" FROM held a
    WHERE CASE a.kind
      WHEN 'triangle' THEN NOT EXISTS (
        SELECT FROM held b WHERE b.flight_no = a.flight_no AND b.judge_id = a.judge_id
          AND b.glass_no <> a.glass_no AND b.entry_no = a.entry_no)
      ELSE a.position > 1 AND EXISTS (
        SELECT FROM held b WHERE b.flight_no = a.flight_no AND b.judge_id = a.judge_id
          AND b.position = 1 AND b.entry_no = a.entry_no) END`;
  return new Set(rows.map(({ glassNo }) => glassNo));
}
