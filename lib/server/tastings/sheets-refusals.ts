import "server-only";
import type { TastingEvent } from "@/lib/model/tasting/sheet-event";
import { arrayLiteral } from "../array-literal";
import type { SpaceTransaction } from "../db";

export const NO_SUCH_TASTING = "There is no such tasting here.";
const NOT_YOUR_FLIGHT = "This flight is not judged by you.";

interface PlaceRow {
  readonly id: string;
  readonly state: string | null;
  readonly isJudge: boolean;
  readonly isServed: boolean;
  readonly glassPosition: number | null;
  readonly flightKind: string | null;
}

/**
 * Why events are not taken, by their identifier: another club's tasting, a flight or an entry that this judge is not
 * served. What a judge may not know is answered alike, whether it is there or not.
 */
export async function sheetRefusals(
  tx: SpaceTransaction,
  spaceId: string,
  judgeId: string,
  events: readonly TastingEvent[],
): Promise<ReadonlyMap<string, string>> {
  if (events.length === 0) return new Map();
  const column = (valueOf: (event: TastingEvent) => string | number | null): string =>
    arrayLiteral(events.map(valueOf));
  const rows = await tx.$queryRaw<PlaceRow[]>`
    SELECT r.id::text AS id, t.state, f.kind AS "flightKind", p.user_id IS NOT NULL AS "isJudge",
           s.entry_no IS NOT NULL AS "isServed", g.position AS "glassPosition"
    FROM unnest(${column(({ id }) => id)}::uuid[], ${column(({ tastingId }) => tastingId)}::uuid[],
                ${column(({ flightNo }) => flightNo)}::int[],
                ${column((event) => (event.kind === "sheet" ? event.entryNo : null))}::int[],
                ${column((event) => (event.kind === "choice" ? event.payload.glassNo : null))}::int[]
         ) AS r (id, tasting_id, flight_no, entry_no, glass_no)
    LEFT JOIN tasting t ON t.space_id = ${spaceId}::uuid AND t.id = r.tasting_id
    LEFT JOIN tasting_flight f ON f.space_id = t.space_id AND f.tasting_id = t.id AND f.flight_no = r.flight_no
    LEFT JOIN tasting_panel p ON p.space_id = t.space_id AND p.tasting_id = t.id AND p.flight_no = r.flight_no
      AND p.user_id = ${judgeId}::uuid AND p.part = 'judge'
    LEFT JOIN tasting_serving s ON s.space_id = t.space_id AND s.tasting_id = t.id AND s.flight_no = r.flight_no
      AND s.judge_id = ${judgeId}::uuid AND s.entry_no = r.entry_no
    LEFT JOIN tasting_glass g ON g.space_id = t.space_id AND g.tasting_id = t.id AND g.flight_no = r.flight_no
      AND g.judge_id = ${judgeId}::uuid AND g.glass_no = r.glass_no`;
  const byId = new Map(rows.map((row) => [row.id, row]));
  return new Map(
    events.flatMap((event) => {
      const reason = refusalOf(event, byId.get(event.id));
      return reason === null ? [] : [[event.id, reason] as const];
    }),
  );
}

function refusalOf(event: TastingEvent, place: PlaceRow | undefined): string | null {
  if (place === undefined || place.state === null) return NO_SUCH_TASTING;
  if (place.state === "draft") return "This tasting is not open yet.";
  if (place.state === "revealed") return "This tasting has been revealed and takes no more sheets.";
  if (!place.isJudge) return NOT_YOUR_FLIGHT;
  if (event.kind === "sheet") {
    return place.isServed ? null : `Entry ${String(event.entryNo)} is not served to this judge in this flight.`;
  }
  const glass = `Glass ${String(event.payload.glassNo)}`;
  if (place.glassPosition === null) return `${glass} is not one of this judge’s glasses in this flight.`;
  const isReference = place.flightKind === "duo-trio" && place.glassPosition === 1;
  return isReference ? `${glass} is the reference; choose one of the other two.` : null;
}
