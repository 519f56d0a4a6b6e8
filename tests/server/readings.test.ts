import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { readingInput } from "@/lib/model/reading-input";
import { findBrew } from "@/lib/server/brews/reads";
import { inSpace } from "@/lib/server/db";
import { recordReading } from "@/lib/server/readings/writes";
import { newBrewing } from "../support/brewing";
import { join, newClub } from "../support/club";
import { sampleReading } from "../support/sample-reading";

const readingFor = (brewId: string, change: object = {}) => readingInput.parse({ ...sampleReading(brewId), ...change });

async function clubWithBrew() {
  const club = await newClub("member", "judge");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

describe("recordReading", () => {
  it("keeps what was measured and who measured it", async () => {
    const { member, brewId } = await clubWithBrew();
    const reading = readingFor(brewId, { note: "foam on top" });
    expect(await recordReading(member, reading)).toBe("stored");
    const brew = await findBrew(member, brewId);
    const { receivedAt, ...kept } = brew?.readings[0] ?? { receivedAt: null };
    expect(kept).toEqual({ ...reading, actorName: "Some member", replaced: false });
    expect(receivedAt).toBeInstanceOf(Date);
  });

  it("keeps gravity as specific gravity and gives it back as extract", async () => {
    const { member, brewId, organiser } = await clubWithBrew();
    await recordReading(member, readingFor(brewId, { quantity: "fermenter.originalExtract", value: 12, sd: 0.2 }));
    const [event] = await inSpace(organiser.spaceId, organiser.userId, (tx) =>
      tx.brewEvent.findMany({ where: { spaceId: organiser.spaceId, brewId } }),
    );
    // 12 °P is 1.0484 in the sucrose tables: NBS Circular C440 (1942), sp. gr. 20/20.
    expect(event).toMatchObject({ kind: "gravity", unit: "sg" });
    expect(event?.value).toBeCloseTo(1.0484, 4);
    expect((await findBrew(member, brewId))?.readings[0]?.value).toBeCloseTo(12, 9);
  });

  it("absorbs a reading that is delivered again, at once or later", async () => {
    const { member, brewId } = await clubWithBrew();
    const reading = readingFor(brewId);
    const outcomes = await Promise.all(Array.from({ length: 10 }, () => recordReading(member, reading)));
    expect(outcomes.filter((outcome) => outcome === "stored")).toHaveLength(1);
    expect(outcomes.filter((outcome) => outcome === "duplicate")).toHaveLength(9);
    expect(await recordReading(member, reading)).toBe("duplicate");
    expect((await findBrew(member, brewId))?.readings).toHaveLength(1);
  });

  it("never overwrites: the same identifier or number with another value is refused", async () => {
    const { member, brewId } = await clubWithBrew();
    const reading = readingFor(brewId);
    await recordReading(member, reading);
    await expect(recordReading(member, { ...reading, value: 30 })).rejects.toThrow(
      "Another reading with this identifier is in the log already; nothing was changed.",
    );
    await expect(recordReading(member, { ...reading, id: randomUUID() })).rejects.toThrow(
      "This device has already used that number for another reading; nothing was changed.",
    );
    expect((await findBrew(member, brewId))?.readings.map((kept) => kept.value)).toEqual([27.5]);
  });

  it("refuses a reading for somebody else's brew, with the reason for those who may see it", async () => {
    const { organiser, judge, brewId, member } = await clubWithBrew();
    const other = await join(organiser, "member");
    for (const reader of [other, judge]) {
      await expect(recordReading(reader, readingFor(brewId))).rejects.toThrow(
        "Only who brews this, their helpers and organisers write readings to it.",
      );
    }
    const { organiser: outsider } = await newClub();
    await expect(recordReading(outsider, readingFor(brewId))).rejects.toThrow("There is no such brew here.");
    expect((await findBrew(member, brewId))?.readings).toEqual([]);
  });

  it("takes readings from helpers of the brewer and from an organiser", async () => {
    const { organiser, brewId } = await clubWithBrew();
    const helper = await join(organiser, "member");
    await inSpace(organiser.spaceId, organiser.userId, (tx) =>
      tx.brewCollaborator.create({ data: { spaceId: organiser.spaceId, brewId, userId: helper.userId } }),
    );
    expect(await recordReading(helper, readingFor(brewId))).toBe("stored");
    expect(await recordReading(organiser, readingFor(brewId))).toBe("stored");
  });
});
