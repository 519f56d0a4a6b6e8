import "server-only";
import type { JudgeSheet, ServedFlight, TastingEntry } from "@/lib/model/tasting/judge-sheet";
import { STYLES } from "@/lib/model/styles";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { toTastingEntry, type SheetRow } from "./sheets-row";

const STATES = ["draft", "open", "closed", "revealed"] as const;
const KINDS = ["scored", "triangle", "duo-trio"] as const;

/**
 * What a judge keeps of a tasting, to judge without the server; null for whoever does not judge there. It holds numbers
 * and styles, and nothing of which beer is behind a number.
 */
export async function findJudgeSheet(member: Member, tastingId: string): Promise<JudgeSheet | null> {
  const judged = await findJudged(member, tastingId, member.userId);
  if (judged === null) return null;
  return {
    space: { slug: member.spaceSlug, name: member.spaceName },
    me: { id: member.userId, name: member.displayName },
    preferences: member.preferences,
    ...judged,
  };
}

/** The same of any judge, for the steward who enters sheets from paper. */
export type Judged = Pick<JudgeSheet, "tasting" | "flights" | "entries" | "readAt">;

export async function findJudged(member: Member, tastingId: string, judgeId: string): Promise<Judged | null> {
  if (!isRecordId(tastingId)) return null;
  const { spaceId, userId } = member;
  const readAt = new Date().toISOString();
  const found = await inSpace(spaceId, userId, async (tx) => {
    const tasting = await tx.tasting.findUnique({
      where: { spaceId_id: { spaceId, id: tastingId } },
      select: { id: true, title: true, state: true },
    });
    if (tasting === null) return null;
    const flights = await flightsOf(tx, { spaceId, tastingId, judgeId });
    if (flights.length === 0) return null;
    return { tasting, flights, rows: await lastRows(tx, { spaceId, tastingId, judgeId }) };
  });
  if (found === null) return null;
  const nameOf = await displayNames(
    member,
    found.rows.map(({ actorId }) => actorId),
  );
  const { id, title, state } = found.tasting;
  return {
    tasting: { id, title, state: storedWord(STATES, state) },
    // What is prepared may still change, and an order that was seen before is no secret any more.
    flights: state === "draft" ? [] : found.flights,
    entries: found.rows.map((row): TastingEntry => toTastingEntry(row, nameOf)),
    readAt,
  };
}

interface Of {
  readonly spaceId: string;
  readonly tastingId: string;
  readonly judgeId: string;
}

async function flightsOf(tx: SpaceTransaction, { spaceId, tastingId, judgeId }: Of): Promise<readonly ServedFlight[]> {
  const panel = await tx.tastingPanel.findMany({
    where: { spaceId, tastingId, userId: judgeId, part: "judge" },
    select: {
      flightNo: true,
      flight: { select: { title: true, kind: true } },
      servings: {
        select: { entryNo: true, entry: { select: { styleCode: true } } },
        orderBy: { position: "asc" },
      },
      glasses: { select: { glassNo: true }, orderBy: { position: "asc" } },
    },
    orderBy: { flightNo: "asc" },
  });
  return panel.map(({ flightNo, flight, servings, glasses }) => ({
    flightNo,
    title: flight.title,
    kind: storedWord(KINDS, flight.kind),
    entries: servings.map(({ entryNo, entry }) => ({ entryNo, style: styleName(entry.styleCode) })),
    glasses: glasses.map(({ glassNo }) => glassNo),
  }));
}

/** A style as a judge reads it; a code that is none of the list stands for itself. */
export function styleName(code: string | null): string | null {
  if (code === null) return null;
  const style = STYLES.find((each) => each.code === code);
  return style === undefined ? code : `${code} ${style.name}`;
}

/** Of each sheet and device the last save and the last that was handed in: every other one is behind these. */
async function lastRows(tx: SpaceTransaction, { spaceId, tastingId, judgeId }: Of): Promise<readonly SheetRow[]> {
  return tx.$queryRaw<SheetRow[]>`
    SELECT DISTINCT ON (flight_no, kind, entry_no, device_id, last_of_finals)
           id::text, tasting_id::text AS "tastingId", flight_no AS "flightNo", judge_id::text AS "judgeId",
           actor_id::text AS "actorId", kind, entry_no AS "entryNo", device_id::text AS "deviceId",
           device_seq AS "deviceSeq", occurred_at AS "occurredAt", clock_offset_ms AS "clockOffsetMs",
           received_at AS "receivedAt", is_final AS "isFinal", payload
    FROM tasting_event, LATERAL (VALUES (false), (true)) AS v (last_of_finals)
    WHERE space_id = ${spaceId}::uuid AND tasting_id = ${tastingId}::uuid AND judge_id = ${judgeId}::uuid
      AND (is_final OR NOT last_of_finals)
    ORDER BY flight_no, kind, entry_no, device_id, last_of_finals, device_seq DESC NULLS LAST, occurred_at DESC, id DESC`;
}
