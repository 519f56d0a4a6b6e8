import { randomUUID } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logEventInput } from "@/lib/model/log/log-event-input";
import type { LogEvent } from "@/lib/model/log/log-event";
import { moveBrew } from "@/lib/server/brews/move";
import { dropBrew } from "@/lib/server/brews/drop";
import { inSpace } from "@/lib/server/db";
import { storeEvents } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { listSummaries } from "@/lib/server/summaries/reads";
import { keepSummary, makeSummary, remakeSummary } from "@/lib/server/summaries/remake";
import { remakeStale } from "@/lib/server/summaries/stale";
import { newBrewing } from "../../support/brewing";
import { gravityOf, onDay, pitchOf } from "../../support/cellar";
import { newClub } from "../../support/club";

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

const store = async (member: Member, ...events: readonly LogEvent[]): Promise<void> => {
  const actorId = member.userId;
  const fates = await storeEvents(
    member,
    events.map((event) => ({ event, actorId, sentAt: null, clockOffsetMs: null })),
  );
  expect(fates.map(({ fate }) => fate)).toEqual(events.map(() => "stored"));
};

const anew = ({ spaceId, userId }: Member, brewId: string) =>
  inSpace(spaceId, userId, (tx) => makeSummary(tx, spaceId, brewId));

/** What is kept of the brew, and whether anything was written since. */
const kept = ({ spaceId, userId }: Member, brewId: string) =>
  inSpace(spaceId, userId, async (tx) => {
    const summary = await tx.brewSummary.findUnique({ where: { spaceId_brewId: { spaceId, brewId } } });
    const marks = await tx.brewMark.count({ where: { spaceId, brewId } });
    return { madeRev: 0n, evidence: null, ...summary, marks, isStale: summary === null || marks > 0 };
  });

/** What a reader is shown of the brew. */
async function shown(member: Member, brewId: string) {
  const found = (await listSummaries(member, {}, { withCurves: true })).find(({ id }) => id === brewId);
  if (found === undefined) return null;
  const { evidence } = await kept(member, brewId);
  return { summary: found.summary, curves: found.curves, evidence };
}

/** One of the ledger's numbers, of the same day. */
const readingOf = (brewId: string, value: number, quantity: string, kind: string): LogEvent =>
  gravityOf(brewId, 0, value, { id: randomUUID(), kind, quantity, instrument: "other" });

const changing = (event: LogEvent, change: object): LogEvent =>
  logEventInput.parse({
    ...{ id: randomUUID(), brewId: event.brewId, deviceId: randomUUID(), deviceSeq: 1 },
    ...{ occurredAt: onDay(2).toISOString(), targetId: event.id, seen: [], ...change },
  });

type Write = (member: Member, brewId: string, before: LogEvent[]) => Promise<void>;

/** Writes a reading, keeps in mind what was written, and changes one of those. */
const writes: Readonly<Record<string, (value: number) => Write>> = {
  "a reading": (value) => async (member, brewId, before) => {
    const event = readingOf(brewId, value, "kettle.preBoilGravity", "gravity");
    before.push(event);
    await store(member, event);
  },
  "a volume": (value) => async (member, brewId, before) => {
    const event = readingOf(brewId, value + 10, "kettle.preBoil", "volume");
    before.push(event);
    await store(member, event);
  },
  "a batch of a sensor": (value) => async (member, brewId) => {
    const batch = Array.from({ length: 60 }, (_, i) =>
      gravityOf(brewId, i / 10, value, { kind: "temperature", quantity: "fermenter.temperature" }),
    );
    await store(member, ...batch);
  },
  "a gravity of the beer": (value) => async (member, brewId) => store(member, gravityOf(brewId, value, value)),
  "the pitch": () => async (member, brewId) => store(member, pitchOf(brewId)),
  "a correction": (value) => async (member, _brewId, before) => {
    const target = before.at(value % Math.max(1, before.length));
    if (target === undefined || !("value" in target)) return;
    const { quantity, kind, sd, instrument } = target;
    const measured = { quantity, kind, sd, instrument, value, sampleC: null, note: "", entered: "x", step: null };
    await store(member, changing(target, { kind: "correct", measured }));
  },
  "a void": (value) => async (member, _brewId, before) => {
    const target = before.at(value % Math.max(1, before.length));
    if (target !== undefined) await store(member, changing(target, { kind: "void", why: "wrong glass" }));
  },
  "the next state": () => async (member, brewId) => {
    const { spaceId, userId } = member;
    const { lockVersion } = await inSpace(spaceId, userId, (tx) =>
      tx.brew.findUniqueOrThrow({ where: { spaceId_id: { spaceId, id: brewId } }, select: { lockVersion: true } }),
    );
    await moveBrew(member, { id: brewId, state: "on the kettle", lockVersion }).catch(() => undefined);
  },
};

describe("a summary", () => {
  it("equals one made anew after every write, whatever was written before", async () => {
    const { member, ...first } = await clubWithBrew();
    let brewId: string | null = first.brewId;
    const step = fc.record({ what: fc.constantFrom(...Object.keys(writes)), value: fc.integer({ min: 2, max: 18 }) });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 3, maxLength: 8 }), async (steps) => {
        const club = brewId === null ? await clubWithBrew() : { member, brewId };
        brewId = null;
        const before: LogEvent[] = [];
        for (const { what, value } of steps) {
          await writes[what]?.(value)(club.member, club.brewId, before);
          const made = await anew(club.member, club.brewId);
          expect(await shown(club.member, club.brewId), what).toEqual(made);
          expect((await kept(club.member, club.brewId)).isStale).toBe(false);
        }
      }),
      { numRuns: 6 },
    );
  });

  it.each(["a reading", "a batch of a sensor", "the pitch", "the next state"])(
    "is stale at once after %s",
    async (what) => {
      const { member, brewId } = await clubWithBrew();
      await remakeSummary(member.spaceId, brewId);
      expect((await kept(member, brewId)).isStale).toBe(false);
      await writes[what]?.(12)(member, brewId, []);
      expect((await kept(member, brewId)).isStale).toBe(true);
    },
  );

  it("is marked once a delivery, however many readings that has", async () => {
    const { member, brewId } = await clubWithBrew();
    const before = await kept(member, brewId);
    await writes["a batch of a sensor"]?.(19)(member, brewId, []);
    expect((await kept(member, brewId)).marks - before.marks).toBe(1);
  });

  it("is not made stale by what was refused or was there already", async () => {
    const { member, brewId } = await clubWithBrew();
    const event = readingOf(brewId, 12, "kettle.preBoilGravity", "gravity");
    await store(member, event);
    await remakeSummary(member.spaceId, brewId);
    const again = { event, actorId: member.userId, sentAt: null, clockOffsetMs: null };
    expect(await storeEvents(member, [again])).toEqual([{ id: event.id, fate: "duplicate" }]);
    expect((await kept(member, brewId)).isStale).toBe(false);
  });

  it("loses nothing where many write and many make it at the same time", async () => {
    const { member, organiser, brewId } = await clubWithBrew();
    const write = (who: Member, n: number) => store(who, gravityOf(brewId, n, 12 - n / 4));
    await Promise.all([
      ...Array.from({ length: 12 }, (_, n) => write(n % 2 === 0 ? member : organiser, n)),
      ...Array.from({ length: 6 }, () => remakeSummary(member.spaceId, brewId)),
    ]);
    await remakeStale(member.spaceId, 0);
    const made = await anew(member, brewId);
    expect(made?.summary.counts.series).toBe(12);
    expect(await kept(member, brewId)).toMatchObject({ isStale: false, ...made });
  });

  it("is not put back by a process that began earlier", async () => {
    const { member, brewId } = await clubWithBrew();
    const { spaceId } = member;
    await store(member, gravityOf(brewId, 1, 11));
    await remakeSummary(spaceId, brewId);
    const fresh = await kept(member, brewId);
    const made = await anew(member, brewId);
    if (made === null) throw new Error("there is no such brew");
    const older = { ...made, curves: [] };
    await inSpace(spaceId, member.userId, (tx) =>
      keepSummary(tx, { spaceId, brewId, rev: fresh.madeRev - 1n, made: older }),
    );
    expect(await kept(member, brewId)).toEqual(fresh);
  });

  it("of another version of the program is made anew", async () => {
    const { member, brewId } = await clubWithBrew();
    const { spaceId, userId } = member;
    await remakeSummary(spaceId, brewId);
    await inSpace(spaceId, userId, (tx) =>
      tx.brewSummary.updateMany({ where: { spaceId, brewId }, data: { calcVersion: "older", summary: {} } }),
    );
    expect(await shown(member, brewId)).toEqual(await anew(member, brewId));
  });

  it("of a brew that was dropped is shown to nobody", async () => {
    const { member, brewId } = await clubWithBrew();
    await dropBrew(member, { id: brewId, lockVersion: 1, why: "no malt" });
    expect(await shown(member, brewId)).toBeNull();
    expect((await kept(member, brewId)).isStale).toBe(true);
  });
});
