import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { deliveryInput, type Delivery } from "@/lib/model/log/delivery";
import { findBrew } from "@/lib/server/brews/reads";
import { inSpace } from "@/lib/server/db";
import { ingest } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

let count = 0;

/** An event as a phone sends it. */
function eventOf(brewId: string, change: Readonly<Record<string, unknown>> = {}): Record<string, unknown> {
  count += 1;
  return {
    id: randomUUID(),
    brewId,
    deviceId: "00000000-0000-7000-8000-0000000000aa",
    deviceSeq: count,
    occurredAt: "2026-05-02T10:15:00.000Z",
    kind: "temperature",
    quantity: "kettle.temperature",
    value: 66.5,
    sd: 0.5,
    instrument: "thermometer",
    sampleC: null,
    note: "",
    entered: "66.5 °C",
    step: "rest-1",
    ...change,
  };
}

const stepOf = (brewId: string, step: string, act: string, change: object = {}) => {
  const { id, deviceId, deviceSeq, occurredAt } = eventOf(brewId);
  const said = { kind: "step", step, act, why: "", title: "", minutes: 0, after: null };
  return { id, brewId, deviceId, deviceSeq, occurredAt, ...said, ...change };
};

function deliveryOf(member: Member, events: readonly unknown[], change: Partial<Delivery> = {}): Delivery {
  const sentAt = new Date().toISOString();
  const stated = { space: member.spaceSlug, user: member.userId, sentAt, roundTripMs: 0, unsteady: [] };
  return deliveryInput.parse({ ...stated, events, ...change });
}

const send = (member: Member, ...events: readonly unknown[]) => ingest(member, deliveryOf(member, events));

async function countEvents({ spaceId, userId }: Member, brewId: string): Promise<number> {
  return inSpace(spaceId, userId, (tx) => tx.brewEvent.count({ where: { spaceId, brewId } }));
}

describe("ingest", () => {
  it("names every event of a delivery as stored, duplicate or rejected", async () => {
    const { member, brewId } = await clubWithBrew();
    const [first, second] = [eventOf(brewId), eventOf(brewId)];
    expect((await send(member, first)).stored).toEqual([first["id"]]);
    const wrong = eventOf(brewId, { value: 400 });
    const answer = await send(member, first, second, wrong);
    expect(answer).toMatchObject({ stored: [second["id"]], duplicate: [first["id"]] });
    expect(answer.rejected).toEqual([
      {
        id: wrong["id"],
        reason: "Temperature in the kettle 400 °C is outside -5 to 110 °C",
        isSequenceTaken: false,
      },
    ]);
    expect(await countEvents(member, brewId)).toBe(2);
  });

  it("absorbs the same delivery from many at once", async () => {
    const { member, brewId } = await clubWithBrew();
    const events = Array.from({ length: 30 }, () => eventOf(brewId));
    const answers = await Promise.all(Array.from({ length: 8 }, () => send(member, ...events)));
    expect(answers.flatMap(({ stored }) => stored).sort()).toEqual(events.map((event) => String(event["id"])).sort());
    expect(answers.flatMap(({ duplicate }) => duplicate)).toHaveLength(7 * 30);
    expect(await countEvents(member, brewId)).toBe(30);
  });

  it("never overwrites: another content under a known identifier is rejected, and so is a number used twice", async () => {
    const { member, brewId } = await clubWithBrew();
    const event = eventOf(brewId);
    await send(member, event);
    const altered = await send(member, { ...event, value: 70 });
    expect(altered.rejected[0]?.reason).toMatch(/^Another reading with this identifier/);
    const again = await send(member, { ...event, id: randomUUID() });
    expect(again.rejected[0]).toMatchObject({ isSequenceTaken: true });
    expect((await findBrew(member, brewId))?.log.readings.map(({ measured }) => measured.value)).toEqual([66.5]);
  });

  it("does not let one wrong event hold up the others", async () => {
    const { member, brewId } = await clubWithBrew();
    const right = eventOf(brewId);
    const wrongs = [
      eventOf(brewId, { occurredAt: "1999-12-31T23:59:00Z" }),
      eventOf(brewId, { occurredAt: "2026-05-02T10:15:00" }),
      eventOf(brewId, { quantity: "kettle.weather" }),
      eventOf(brewId, { kind: "gravity" }),
      eventOf(brewId, { value: null }),
      eventOf(brewId, { more: 1 }),
      { id: "no identifier" },
      "not even an event",
    ];
    const answer = await send(member, ...wrongs, right);
    expect(answer.stored).toEqual([right["id"]]);
    expect(answer.rejected).toHaveLength(wrongs.length);
    for (const { reason } of answer.rejected) expect(reason).not.toBe("");
    expect(answer.rejected[0]?.reason).toBe(
      "Time of the entry “1999-12-31T23:59:00Z” is not a time with a zone between the years 2000 and 2200",
    );
    expect(await countEvents(member, brewId)).toBe(1);
  });

  it("answers for another club's brew as for one that does not exist", async () => {
    const { member } = await clubWithBrew();
    const other = await clubWithBrew();
    const { rejected } = await send(member, eventOf(other.brewId), eventOf(randomUUID()));
    expect(rejected.map(({ reason }) => reason)).toEqual([
      "There is no such brew here.",
      "There is no such brew here.",
    ]);
    expect(await countEvents(other.member, other.brewId)).toBe(0);
  });

  it("takes nothing from a member who does not brew it, and everything from who helps", async () => {
    const { organiser, member, brewId } = await clubWithBrew();
    const other = await join(organiser, "member");
    const event = eventOf(brewId);
    expect((await send(other, event)).rejected[0]?.reason).toMatch(/^Only who brews this/);
    await inSpace(member.spaceId, member.userId, (tx) =>
      tx.brewCollaborator.create({ data: { spaceId: member.spaceId, brewId, userId: other.userId } }),
    );
    expect((await send(other, event)).stored).toEqual([event["id"]]);
  });

  it("reads the same log from two phones whatever order their deliveries come in", async () => {
    const readings = async (order: readonly number[]) => {
      const { member, brewId } = await clubWithBrew();
      const target = eventOf(brewId);
      const measured = { kind: "temperature", quantity: "kettle.temperature", value: 64, sd: 0.5 };
      const { instrument, sampleC, note, entered, step, id, deviceSeq } = eventOf(brewId);
      const text = { instrument, sampleC, note, entered, step };
      const events = [
        target,
        {
          ...{ id, brewId, deviceSeq, deviceId: randomUUID(), occurredAt: "2026-05-02T10:20:00.000Z" },
          ...{ kind: "correct", targetId: target["id"], seen: [], measured: { ...measured, ...text } },
        },
        stepOf(brewId, "rest-1", "begun"),
      ];
      for (const i of order) await send(member, events[i]);
      const log = (await findBrew(member, brewId))?.log;
      return {
        values: log?.readings.map((reading) => [reading.measured.value, reading.history.length]),
        begun: log?.steps.get("rest-1")?.begunAt,
      };
    };
    const expected = { values: [[64, 2]], begun: Date.parse("2026-05-02T10:15:00.000Z") };
    expect(await readings([0, 1, 2])).toEqual(expected);
    expect(await readings([2, 1, 0])).toEqual(expected);
  });

  it("measures how far a phone's clock is off, and moves its times where that is more than a minute", async () => {
    const { member, brewId } = await clubWithBrew();
    const now = Date.now();
    const slowMs = 20 * 60_000;
    const onSlow = eventOf(brewId, { occurredAt: new Date(now - slowMs).toISOString() });
    const sentAt = new Date(now - slowMs).toISOString();
    await ingest(member, deliveryOf(member, [onSlow], { sentAt, roundTripMs: 80 }));
    const [entry] = (await findBrew(member, brewId))?.entries ?? [];
    expect(Math.abs((entry?.clockOffsetMs ?? 0) - slowMs)).toBeLessThan(20_000);
    const [reading] = (await findBrew(member, brewId))?.log.readings ?? [];
    expect(Math.abs((reading?.at ?? 0) - now)).toBeLessThan(20_000);
  });

  it("says nothing of the clock for an event from before the clock was set anew", async () => {
    const { member, brewId } = await clubWithBrew();
    const event = eventOf(brewId);
    await ingest(member, deliveryOf(member, [event], { unsteady: [String(event["id"])] }));
    expect((await findBrew(member, brewId))?.entries[0]?.clockOffsetMs).toBeNull();
  });

  it("moves a brew on by what was logged, at the time at which it happened, and never back", async () => {
    const { member, brewId } = await clubWithBrew();
    await send(member, stepOf(brewId, "weigh-out-1", "begun", { occurredAt: "2026-05-02T08:00:00.000Z" }));
    expect(await findBrew(member, brewId)).toMatchObject({
      state: "on the kettle",
      startedAt: new Date("2026-05-02T08:00:00Z"),
    });
    const pitch = { kind: "pitch", yeast: "Ale yeast", cells: 200, starterL: 0, celsius: 18, note: "" };
    const { id, deviceId, deviceSeq, occurredAt } = eventOf(brewId);
    await send(member, { id, brewId, deviceId, deviceSeq, occurredAt, ...pitch });
    await send(member, stepOf(brewId, "boil-1", "done"));
    expect((await findBrew(member, brewId))?.state).toBe("in the fermenter");
  });

  it("keeps what comes late for a brew that is closed", async () => {
    const { member, brewId } = await clubWithBrew();
    const { spaceId, userId } = member;
    await inSpace(spaceId, userId, (tx) =>
      tx.brew.update({
        where: { spaceId_id: { spaceId, id: brewId } },
        data: { state: "closed", startedAt: new Date(0), closedAt: new Date() },
      }),
    );
    const event = eventOf(brewId);
    expect((await send(member, event)).stored).toEqual([event["id"]]);
  });

  it("takes at most a hundred events at once", () => {
    const events = Array.from({ length: 101 }, () => ({}));
    const stated = {
      space: "club",
      user: randomUUID(),
      sentAt: new Date().toISOString(),
      roundTripMs: 0,
      unsteady: [],
    };
    const parsed = deliveryInput.safeParse({ ...stated, events });
    expect(parsed.error?.issues[0]?.message).toBe(
      "There are more than 100 events in this delivery; send them in several",
    );
  });
});
