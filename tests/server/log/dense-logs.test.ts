import { describe, expect, it } from "vitest";
import { logEventInput } from "@/lib/model/log/log-event-input";
import { findBrew } from "@/lib/server/brews/reads";
import { inSpace } from "@/lib/server/db";
import { storeEvents } from "@/lib/server/log/ingest";
import { eventsRead } from "@/lib/server/log/dense-logs";
import { postReadings } from "@/lib/server/sensors/post-readings";
import { readingsOf } from "@/lib/server/summaries/readings-of";
import type { SensorSender } from "@/lib/server/proof";
import { newBrewing } from "../../support/brewing";
import { gravityOf } from "../../support/cellar";
import { newClub } from "../../support/club";
import { newSender, sentReading } from "../../support/sensors";

const NOW = new Date("2026-04-30T10:00:00Z");
const COUNT = 8000;

/** A saw-tooth between 18 and 19.99 °C, one reading a minute; the mean of a whole tooth is 18.995 by hand. */
const temperatureAt = (minute: number): number => 18 + (minute % 200) / 100;

async function sendReadings(sender: SensorSender, brewId: string, count: number): Promise<void> {
  for (let from = 0; from < count; from += 1000) {
    const readings = Array.from({ length: Math.min(1000, count - from) }, (_, i) =>
      sentReading(brewId, from + i, { value: temperatureAt(from + i) }),
    );
    expect((await postReadings(sender, readings, NOW)).stored).toBe(readings.length);
  }
}

async function newDenseLog() {
  const { organiser, member } = await newClub("member");
  const { brewId } = await newBrewing(organiser, member);
  const sender = await newSender(member, brewId);
  return { member, brewId, sender };
}

describe("the log of a brew with a sensor that reads all the time", () => {
  it("is read as every so-manyth reading, the first and the last, and says how many it left out", async () => {
    const { member, brewId, sender } = await newDenseLog();
    const event = gravityOf(brewId, 0, 12);
    await storeEvents(member, [{ event, actorId: member.userId, sentAt: null, clockOffsetMs: null }]);
    await sendReadings(sender, brewId, COUNT);

    const brew = await findBrew(member, brewId);
    // 2000 of the sensor's, its first besides, and what a person entered.
    expect([brew?.entries.length, brew?.leftOut]).toEqual([2002, COUNT - 2001]);
    const read = brew?.log.readings.filter(({ measured }) => measured.quantity === "fermenter.temperature") ?? [];
    const times = read.map(({ at }) => at).sort((a, b) => a - b);
    const first = Date.parse("2026-03-14T10:00:00Z");
    expect([times[0], times.at(-1)]).toEqual([first, first + (COUNT - 1) * 60_000]);
    // Evenly spread: no gap is longer than the four readings that stand for one.
    expect(Math.max(...times.slice(1).map((at, i) => at - (times[i] ?? at)))).toBe(4 * 60_000);
    const mean = read.reduce((sum, { measured }) => sum + measured.value, 0) / read.length;
    expect(Math.abs(mean - 18.995)).toBeLessThan(0.02);
    expect(brew?.entries.some(({ event: { id } }) => id === event.id)).toBe(true);

    // What is taken out of the log is all of it.
    expect(await readingsOf(member, brewId)).toHaveLength(COUNT + 1);
  });

  it("keeps a reading that somebody corrected", async () => {
    const { member, brewId, sender } = await newDenseLog();
    await sendReadings(sender, brewId, COUNT);
    const skipped = await inSpace(member.spaceId, member.userId, async (tx) => {
      const { where } = await eventsRead(tx, member.spaceId, [brewId]);
      const read = await tx.brewEvent.findMany({ where: { brewId, ...where }, select: { id: true } });
      const ids = new Set(read.map(({ id }) => id));
      const all = await tx.brewEvent.findMany({ where: { brewId }, select: { id: true } });
      return all.find(({ id }) => !ids.has(id))?.id ?? "";
    });
    const { id, deviceId, deviceSeq, occurredAt } = gravityOf(brewId, 0, 12);
    const stamp = { id, brewId, deviceId, deviceSeq, occurredAt };
    const event = logEventInput.parse({ ...stamp, kind: "void", targetId: skipped, seen: [], why: "a splash" });
    const fates = await storeEvents(member, [{ event, actorId: member.userId, sentAt: null, clockOffsetMs: null }]);
    expect(fates).toMatchObject([{ fate: "stored" }]);
    const read = await findBrew(member, brewId);
    expect(read?.entries.some((entry) => entry.event.id === skipped)).toBe(true);
  });

  it("is read whole where nothing reads all the time", async () => {
    const { member, brewId, sender } = await newDenseLog();
    await sendReadings(sender, brewId, 3000);
    expect(await findBrew(member, brewId)).toMatchObject({ leftOut: 0, entries: { length: 3000 } });
  });
});
