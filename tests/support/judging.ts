import { randomUUID } from "node:crypto";
import { BLANK_SHEET, SHEET_PARTS, type Sheet } from "@/lib/model/tasting/sheet";
import { deliveryInput, type Delivery } from "@/lib/model/log/delivery";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { ingestSheets } from "@/lib/server/tastings/sheets-ingest";
import { join, newClub } from "./club";

export interface Judging {
  readonly organiser: Member;
  readonly steward: Member;
  readonly judges: readonly Member[];
  readonly tastingId: string;
  /** Flight 1 is scored, 2 a triangle, 3 a duo-trio. */
  readonly entryNos: readonly number[];
  /** Of judge j in flight f: glass numbers, in order. */
  readonly glasses: (judge: number, flightNo: 2 | 3) => readonly number[];
}

const glassNo = (judge: number, flightNo: number, position: number): number =>
  100 + judge * 10 + flightNo * 3 + position;

/**
 * A tasting written row by row as its steward: a scored flight that everyone tastes in the order of the codes, a triangle
 * and a duo-trio of its first two entries. In each triangle the second glass is the odd one; in each duo-trio the third is
 * like the reference.
 */
export async function newJudging(
  a: { readonly judges?: number; readonly entries?: number; readonly state?: "draft" | "open" } = {},
): Promise<Judging> {
  const { organiser, steward } = await newClub("steward");
  const judges: Member[] = [];
  for (let at = 0; at < (a.judges ?? 2); at++) judges.push(await join(organiser, "judge"));
  const { spaceId, userId } = steward;
  const tastingId = randomUUID();
  const entryNos = Array.from({ length: a.entries ?? 3 }, (_, at) => 401 + at);
  await inSpace(spaceId, userId, async (tx) => {
    const key = { spaceId, tastingId };
    await tx.tasting.create({
      data: { spaceId, id: tastingId, title: "Autumn tasting", stewardId: userId, createdBy: userId },
    });
    const kinds = ["scored", "triangle", "duo-trio"];
    await tx.tastingFlight.createMany({
      data: kinds.map((kind, at) => ({ ...key, flightNo: at + 1, title: `Flight of ${kind}`, kind })),
    });
    const all = [...entryNos.map((entryNo) => ({ entryNo, flightNo: 1 })), ...pairs()];
    await tx.tastingEntry.createMany({ data: all.map((entry) => ({ ...key, ...entry, styleCode: "18B" })) });
    await tx.tastingIdentity.createMany({
      data: all.map(({ entryNo }) => ({
        ...key,
        entryNo,
        beerName: `Beer behind ${String(entryNo)}`,
        brewerName: "A neighbour",
      })),
    });
    await tx.tastingPanel.createMany({
      data: judges.flatMap(({ userId: judge }) =>
        [1, 2, 3].map((flightNo) => ({ ...key, flightNo, userId: judge, part: "judge" })),
      ),
    });
    await tx.tastingServing.createMany({
      data: judges.flatMap(({ userId: judgeId }) =>
        entryNos.map((entryNo, at) => ({ ...key, flightNo: 1, judgeId, position: at + 1, entryNo })),
      ),
    });
    await tx.tastingGlass.createMany({
      data: judges.flatMap(({ userId: judgeId }, judge) =>
        [2, 3].flatMap((flightNo) =>
          [1, 2, 3].map((position) => ({
            ...key,
            flightNo,
            judgeId,
            position,
            glassNo: glassNo(judge, flightNo, position),
          })),
        ),
      ),
    });
    await tx.tastingGlassKey.createMany({
      data: judges.flatMap((_, judge) =>
        [2, 3].flatMap((flightNo) =>
          [1, 2, 3].map((position) => ({
            ...key,
            glassNo: glassNo(judge, flightNo, position),
            entryNo: (flightNo === 2 ? 501 : 601) + (position === 2 ? 1 : 0),
          })),
        ),
      ),
    });
    if (a.state !== "draft")
      await tx.tasting.update({
        where: { spaceId_id: { spaceId, id: tastingId } },
        data: { state: "open", openedAt: new Date() },
      });
  });
  const glasses = (judge: number, flightNo: 2 | 3): readonly number[] =>
    [1, 2, 3].map((position) => glassNo(judge, flightNo, position));
  return { organiser, steward, judges, tastingId, entryNos, glasses };
}

const pairs = () =>
  [501, 502]
    .map((entryNo) => ({ entryNo, flightNo: 2 }))
    .concat([601, 602].map((entryNo) => ({ entryNo, flightNo: 3 })));

/** Moves a tasting on as its steward. */
export async function moveTasting({ steward, tastingId }: Judging, state: "closed" | "revealed"): Promise<void> {
  const { spaceId, userId } = steward;
  const data =
    state === "closed" ? { state, closedAt: new Date() } : { state, revealedAt: new Date(), revealedBy: userId };
  await inSpace(spaceId, userId, (tx) =>
    tx.tasting.update({ where: { spaceId_id: { spaceId, id: tastingId } }, data }),
  );
}

/** A sheet of so many points, spread over its parts. */
export function sheetOf(total: number, change: Partial<Sheet> = {}): Sheet {
  let left = total;
  const most = { aroma: 12, appearance: 3, flavour: 20, mouthfeel: 5, overall: 10 };
  const scores = Object.fromEntries(
    SHEET_PARTS.map((part) => {
      const given = Math.min(most[part], left);
      left -= given;
      return [part, given];
    }),
  ) as Sheet["scores"];
  return { ...BLANK_SHEET, scores, ...change };
}

let count = 0;

export const DEVICE = "00000000-0000-7000-8000-0000000000bb";

/** A sheet event as a device sends it. */
export function sheetEvent(
  tastingId: string,
  entryNo: number,
  change: Readonly<Record<string, unknown>> = {},
): Record<string, unknown> {
  count += 1;
  return {
    id: randomUUID(),
    tastingId,
    flightNo: 1,
    deviceId: DEVICE,
    deviceSeq: count,
    occurredAt: new Date(Date.now() + count).toISOString(),
    kind: "sheet",
    entryNo,
    isFinal: true,
    payload: sheetOf(30),
    ...change,
  };
}

export function choiceEvent(
  tastingId: string,
  flightNo: number,
  glass: number,
  change: Readonly<Record<string, unknown>> = {},
): Record<string, unknown> {
  const { entryNo: _, ...stamp } = sheetEvent(tastingId, 0);
  return { ...stamp, flightNo, kind: "choice", payload: { glassNo: glass, note: "" }, ...change };
}

export function sheetDelivery(member: Member, events: readonly unknown[], change: Partial<Delivery> = {}): Delivery {
  const sentAt = new Date().toISOString();
  const stated = { space: member.spaceSlug, user: member.userId, sentAt, roundTripMs: 0, unsteady: [] };
  return deliveryInput.parse({ ...stated, events, ...change });
}

export const sendSheets = (member: Member, ...events: readonly unknown[]) =>
  ingestSheets(member, sheetDelivery(member, events));
