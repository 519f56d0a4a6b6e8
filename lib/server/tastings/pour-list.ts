import "server-only";
import { FLIGHT_KINDS, type FlightKind, type PanelPerson } from "@/lib/model/tasting/tasting";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

/** One judge's glasses in the order of tasting: blind codes of bottles, or of a test the numbers of the glasses. */
export interface JudgeGlasses {
  readonly judge: PanelPerson;
  readonly codes: readonly number[];
}

export interface PouredFlight {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: FlightKind;
  /** Blind codes of the bottles, ascending. */
  readonly bottles: readonly number[];
  readonly judges: readonly JudgeGlasses[];
  /** Of a test, for the steward who fills the glasses: which bottle goes into which glass. */
  readonly key: ReadonlyMap<number, number> | null;
}

/**
 * What is poured for whom, by numbers alone. The steward is shown every flight, a pourer those that he or she pours, and
 * nobody else any: who is served what says what they are not. It holds from when the tasting is opened.
 */
export async function findPourList(member: Member, id: string): Promise<readonly PouredFlight[] | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, async (tx) => {
    const tasting = await tx.tasting.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: { stewardId: true, state: true },
    });
    if (tasting === null || tasting.state === "draft") return null;
    const isSteward = tasting.stewardId === userId;
    const pours = { panel: { some: { userId, part: "pourer" } } };
    return tx.tastingFlight.findMany({
      where: { spaceId, tastingId: id, ...(isSteward ? {} : pours) },
      select: POURED,
      orderBy: { flightNo: "asc" },
    });
  });
  if (rows === null || rows.length === 0) return null;
  const nameOf = await displayNames(
    member,
    rows.flatMap(({ panel }) => panel.map(({ userId: judge }) => judge)),
  );
  return rows.map((row) => toFlight(row, nameOf));
}

const POURED = {
  ...{ flightNo: true, title: true, kind: true },
  entries: { select: { entryNo: true }, orderBy: { entryNo: "asc" } },
  panel: {
    where: { part: "judge" },
    select: {
      userId: true,
      servings: { select: { entryNo: true }, orderBy: { position: "asc" } },
      // The key is null for whoever may not know it.
      glasses: { select: { glassNo: true, key: { select: { entryNo: true } } }, orderBy: { position: "asc" } },
    },
  },
} as const;

interface PouredRow {
  readonly flightNo: number;
  readonly title: string;
  readonly kind: string;
  readonly entries: readonly { readonly entryNo: number }[];
  readonly panel: readonly {
    readonly userId: string;
    readonly servings: readonly { readonly entryNo: number }[];
    readonly glasses: readonly { readonly glassNo: number; readonly key: { readonly entryNo: number } | null }[];
  }[];
}

function toFlight({ kind, entries, panel, ...flight }: PouredRow, nameOf: (userId: string) => string): PouredFlight {
  const keys = panel.flatMap(({ glasses }) =>
    glasses.flatMap(({ glassNo, key }) => (key === null ? [] : [[glassNo, key.entryNo] as const])),
  );
  return {
    ...flight,
    kind: storedWord(FLIGHT_KINDS, kind),
    bottles: entries.map(({ entryNo }) => entryNo),
    judges: panel
      .map(({ userId, servings, glasses }) => ({
        judge: { userId, name: nameOf(userId) },
        codes: [...servings.map(({ entryNo }) => entryNo), ...glasses.map(({ glassNo }) => glassNo)],
      }))
      .sort((a, b) => a.judge.name.localeCompare(b.judge.name, "en") || (a.judge.userId < b.judge.userId ? -1 : 1)),
    key: keys.length === 0 ? null : new Map(keys),
  };
}
